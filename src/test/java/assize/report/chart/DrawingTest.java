package assize.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DrawingTest {
  private static final List<ScoreScale.Threshold> AWARDS =
      List.of(
          new ScoreScale.Threshold("Third award", "330", 330),
          new ScoreScale.Threshold("Second award", "390", 390),
          new ScoreScale.Threshold("First award", "435", 435),
          new ScoreScale.Threshold("Works Fresh", "470", 470));

  private static void liesWithin(Drawing drawing) {
    for (Drawing.Box box : drawing.boxes()) {
      assertThat(Double.parseDouble(box.x())).isGreaterThanOrEqualTo(0);
      assertThat(Double.parseDouble(box.width())).isGreaterThanOrEqualTo(0);
      assertThat(Double.parseDouble(box.height())).isGreaterThanOrEqualTo(0);
      assertThat(Double.parseDouble(box.x()) + Double.parseDouble(box.width()))
          .isLessThanOrEqualTo(drawing.width() + 0.2);
      assertThat(Double.parseDouble(box.y()) + Double.parseDouble(box.height()))
          .isLessThanOrEqualTo(drawing.height() + 0.2);
    }
    for (Drawing.Label label : drawing.labels()) {
      assertThat(Double.parseDouble(label.x())).isBetween(0.0, (double) drawing.width());
      assertThat(Double.parseDouble(label.y())).isBetween(0.0, (double) drawing.height());
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {680, 300})
  void noAwardsNameCrossesAnother(int width) {
    ScoreScale scale =
        new ScoreScale(500, new ScoreScale.Band(147.8, 185.2, 431.8), Optional.empty(), AWARDS);
    Drawing drawing = scale.draw("x", "t", "d", width);
    liesWithin(drawing);
    List<Drawing.Label> names =
        drawing.labels().stream().filter(it -> it.look().equals("label-name")).toList();
    assertThat(names).hasSize(4);
    for (Drawing.Label one : names) {
      for (Drawing.Label other : names) {
        double gap = Double.parseDouble(other.x()) - Double.parseDouble(one.x());
        if (one.y().equals(other.y()) && gap > 0) {
          assertThat(gap).isGreaterThan(one.text().length() * 6.0);
        }
      }
    }
  }

  @Test
  void theScaleBeginsBelowWhateverIsLeast() {
    ScoreScale scale =
        new ScoreScale(500, new ScoreScale.Band(415, 441, 457), Optional.empty(), AWARDS);
    Drawing drawing = scale.draw("x", "t", "d", 680);
    liesWithin(drawing);
    assertThat(drawing.labels())
        .filteredOn(label -> label.look().equals("label-axis"))
        .extracting(Drawing.Label::text)
        .startsWith("300")
        .endsWith("500");
  }

  @Test
  void barsSpanFromNothingToAll() {
    Drawing bar = Bars.belief("t", "d", 0.25, 0.5, 0.9);
    liesWithin(bar);
    assertThat(bar.boxes().stream().filter(box -> box.look().equals("sure")))
        .extracting(Drawing.Box::width)
        .containsExactly("250");
    assertThat(bar.boxes().stream().filter(box -> box.look().equals("may")))
        .extracting(Drawing.Box::x, Drawing.Box::width)
        .containsExactly(org.assertj.core.groups.Tuple.tuple("250", "250"));
    assertThat(bar.stretched()).isTrue();
    liesWithin(Bars.earned("t", "d", 0, 0, 0));
    liesWithin(Bars.earned("t", "d", 1, 1, 1));
  }

  @ParameterizedTest
  @ValueSource(ints = {680, 300})
  void stepsAndDatesStayOnThePaper(int width) {
    LocalDate first = LocalDate.parse("1934-05-07");
    ScoreSteps steps =
        new ScoreSteps(
            List.of(
                new ScoreSteps.Step(first, first, 0, 0, 0, "0"),
                new ScoreSteps.Step(first.plusDays(1), first.plusYears(9), 90, 95, 100, "95")),
            AWARDS);
    liesWithin(steps.draw("x", "t", "d", width));
    ClaimDates dates =
        new ClaimDates(
            first,
            first.plusYears(3),
            first.plusYears(3),
            first.plusYears(3),
            List.of(
                new ClaimDates.Row(
                    "a source with a very long title, which is shortened where it must be, always",
                    "nickel",
                    List.of(new ClaimDates.Bar(first, first.plusYears(3))))));
    Drawing drawing = dates.draw("x", "t", "d", width);
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
