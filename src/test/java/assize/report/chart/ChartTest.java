package assize.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ChartTest {
  private static final List<ScoreRangeChart.Threshold> AWARDS =
      List.of(
          new ScoreRangeChart.Threshold("Third award", "330", 330),
          new ScoreRangeChart.Threshold("Second award", "390", 390),
          new ScoreRangeChart.Threshold("First award", "435", 435),
          new ScoreRangeChart.Threshold("Works Fresh", "470", 470));

  private static void liesWithin(Chart drawing) {
    for (Chart.Box box : drawing.boxes()) {
      assertThat(Double.parseDouble(box.x())).isGreaterThanOrEqualTo(0);
      assertThat(Double.parseDouble(box.width())).isGreaterThanOrEqualTo(0);
      assertThat(Double.parseDouble(box.height())).isGreaterThanOrEqualTo(0);
      assertThat(Double.parseDouble(box.x()) + Double.parseDouble(box.width()))
          .isLessThanOrEqualTo(drawing.width() + 0.2);
      assertThat(Double.parseDouble(box.y()) + Double.parseDouble(box.height()))
          .isLessThanOrEqualTo(drawing.height() + 0.2);
    }
    for (Chart.Label label : drawing.labels()) {
      assertThat(Double.parseDouble(label.x())).isBetween(0.0, (double) drawing.width());
      assertThat(Double.parseDouble(label.y())).isBetween(0.0, (double) drawing.height());
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {680, 300})
  void noAwardsNameCrossesAnother(int width) {
    ScoreRangeChart scale =
        new ScoreRangeChart(
            500, new ScoreRangeChart.Band(147.8, 185.2, 431.8), Optional.empty(), AWARDS);
    Chart drawing = scale.draw("x", "t", "d", width);
    liesWithin(drawing);
    List<Chart.Label> names =
        drawing.labels().stream().filter(it -> it.look().equals("label-name")).toList();
    assertThat(names).hasSize(4);
    for (Chart.Label one : names) {
      for (Chart.Label other : names) {
        double gap = Double.parseDouble(other.x()) - Double.parseDouble(one.x());
        if (one.y().equals(other.y()) && gap > 0) {
          assertThat(gap).isGreaterThan(one.text().length() * 6.0);
        }
      }
    }
  }

  @Test
  void theScaleBeginsBelowWhateverIsLeast() {
    ScoreRangeChart scale =
        new ScoreRangeChart(500, new ScoreRangeChart.Band(415, 441, 457), Optional.empty(), AWARDS);
    Chart drawing = scale.draw("x", "t", "d", 680);
    liesWithin(drawing);
    assertThat(drawing.labels())
        .filteredOn(label -> label.look().equals("label-axis"))
        .extracting(Chart.Label::text)
        .startsWith("300")
        .endsWith("500");
  }

  @Test
  void barsSpanFromNothingToAll() {
    Chart bar = RangeBars.belief("t", "d", 0.25, 0.5, 0.9);
    liesWithin(bar);
    assertThat(bar.boxes().stream().filter(box -> box.look().equals("sure")))
        .extracting(Chart.Box::width)
        .containsExactly("250");
    assertThat(bar.boxes().stream().filter(box -> box.look().equals("may")))
        .extracting(Chart.Box::x, Chart.Box::width)
        .containsExactly(org.assertj.core.groups.Tuple.tuple("250", "250"));
    assertThat(bar.stretched()).isTrue();
    liesWithin(RangeBars.earned("t", "d", 0, 0, 0));
    liesWithin(RangeBars.earned("t", "d", 1, 1, 1));
  }

  @ParameterizedTest
  @ValueSource(ints = {680, 300})
  void stepsAndDatesStayOnThePaper(int width) {
    LocalDate first = LocalDate.parse("1934-05-07");
    ScoreByDateChart steps =
        new ScoreByDateChart(
            List.of(
                new ScoreByDateChart.Step(first, first, 0, 0, 0, "0"),
                new ScoreByDateChart.Step(
                    first.plusDays(1), first.plusYears(9), 90, 95, 100, "95")),
            AWARDS);
    liesWithin(steps.draw("x", "t", "d", width));
    ClaimDatesChart dates =
        new ClaimDatesChart(
            first,
            first.plusYears(3),
            first.plusYears(3),
            first.plusYears(3),
            List.of(
                new ClaimDatesChart.ClaimRow(
                    "a source with a very long title, which is shortened where it must be, always",
                    "nickel",
                    List.of(new ClaimDatesChart.Bar(first, first.plusYears(3))))));
    Chart drawing = dates.draw("x", "t", "d", width);
    liesWithin(drawing);
    assertThat(drawing.labels()).anyMatch(label -> label.text().startsWith("nickel: a source"));
  }

  @Test
  void ticksAreRound() {
    assertThat(Ticks.step(200, 10)).isEqualTo(20);
    assertThat(Ticks.step(200, 7)).isEqualTo(50);
    assertThat(Ticks.step(1, 7)).isEqualTo(0.2);
  }
}
