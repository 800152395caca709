package assize.report.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The drawings of the handbook, their coordinates reckoned by hand. */
class HandbookChartsTest {
  private static final LocalDate FIRST = LocalDate.parse("1934-01-01");

  private static ExpectationChart.Bar bar(int from, int to, ExpectationChart.Stand stand) {
    return new ExpectationChart.Bar(FIRST.plusDays(from), FIRST.plusDays(to - 1), stand);
  }

  /** A hundred days over 200 units between margins of 10: two units a day. */
  private static Chart line() {
    ExpectationChart line =
        new ExpectationChart(
            FIRST,
            FIRST.plusDays(99),
            List.of(
                new ExpectationChart.PeriodRow(
                    "old", "until", List.of(bar(0, 60, ExpectationChart.Stand.RIGHT))),
                new ExpectationChart.PeriodRow(
                    "new",
                    "from",
                    List.of(
                        bar(40, 80, ExpectationChart.Stand.RIGHT),
                        bar(80, 100, ExpectationChart.Stand.OPEN))),
                new ExpectationChart.PeriodRow(
                    "third", "aside", List.of(bar(10, 20, ExpectationChart.Stand.ASIDE))),
                new ExpectationChart.PeriodRow(
                    "No source", "gap", List.of(bar(5, 7, ExpectationChart.Stand.SILENT)))));
    return line.draw("x", "t", "d", 220);
  }

  @Test
  void usedUpStockOverlaps() {
    assertThat(line().boxes())
        .filteredOn(box -> box.look().equals("sure"))
        .extracting(Chart.Box::x, Chart.Box::y, Chart.Box::width, Chart.Box::height)
        .containsExactly(
            // 10 + 2 × 0 to 10 + 2 × 60, in the first row: 4 + 36
            tuple("10", "40", "120", "11"),
            // 10 + 2 × 40 to 10 + 2 × 80, one row of 54 below: both cover 90 to 130
            tuple("90", "94", "80", "11"));
  }

  @Test
  void eachStandHasAFormOfItsOwn() {
    assertThat(line().boxes())
        .extracting(Chart.Box::look, Chart.Box::x, Chart.Box::y)
        .contains(tuple("open", "170", "94"), tuple("mark", "30", "152"));
    assertThat(line().paths())
        .filteredOn(path -> path.look().equals("gap"))
        .extracting(Chart.Path::d)
        .containsExactly("M20 202H24V213H20Z");
    assertThat(line().paths())
        .filteredOn(path -> path.look().equals("hatch"))
        .extracting(Chart.Path::d)
        .allSatisfy(d -> assertThat(d).startsWith("M170 94H210V105H170Z").contains("L"));
  }

  @Test
  void everyRowIsLabeledWithItsDates() {
    assertThat(line().labels())
        .extracting(Chart.Label::text)
        .contains("old", "until", "new", "from", "third", "No source");
  }

  /** p above q and r; q above r: r stands right of both, in a column that no line goes down. */
  @Test
  void whoCopiesStandsBelowAndToTheRight() {
    CopyGraph graph =
        new CopyGraph(
            List.of(
                new CopyGraph.Node("p", List.of()),
                new CopyGraph.Node("q", List.of(0)),
                new CopyGraph.Node("r", List.of(0, 1)),
                new CopyGraph.Node("s", List.of())));
    assertThat(graph.columns()).containsExactly(0, 1, 2, 0);
    Chart drawing = graph.draw("x", "t", "d", 300);
    assertThat(drawing.paths())
        .filteredOn(path -> path.look().equals("axis"))
        .extracting(Chart.Path::d)
        .containsExactly(
            // column 0 at 12, column 1 at 32, column 2 at 52; rows at 15, 45, 75
            "M12 15V38Q12 45 19 45H32", "M12 15V68Q12 75 19 75H52", "M32 45V68Q32 75 39 75H52");
    assertThat(drawing.labels())
        .extracting(Chart.Label::x, Chart.Label::text)
        .containsExactly(tuple("72", "p"), tuple("72", "q"), tuple("72", "r"), tuple("72", "s"));
  }

  @Test
  void aLineThatGoesOnKeepsItsColumn() {
    CopyGraph graph =
        new CopyGraph(
            List.of(
                new CopyGraph.Node("p", List.of()),
                new CopyGraph.Node("q", List.of()),
                new CopyGraph.Node("r", List.of(0)),
                new CopyGraph.Node("s", List.of(1))));
    // q can't stand in column 0, since the line from p goes down there
    assertThat(graph.columns()).containsExactly(0, 1, 2, 2);
    assertThatThrownBy(() -> new CopyGraph(List.of(new CopyGraph.Node("p", List.of(0)))))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void numbersThatDoNotFitAreStrokesAlone() {
    NumberTableChart lines =
        new NumberTableChart(
            FIRST,
            FIRST.plusDays(99),
            List.of(
                new NumberTableChart.SeriesRow(
                    "A…",
                    List.of(
                        new NumberTableChart.Mark(FIRST, "100"),
                        new NumberTableChart.Mark(FIRST.plusDays(1), "200"),
                        new NumberTableChart.Mark(FIRST.plusDays(50), "300")))));
    Chart drawing = lines.draw("x", "t", "d", 220);
    assertThat(drawing.paths()).filteredOn(path -> path.look().equals("stroke-mark")).hasSize(3);
    assertThat(drawing.labels())
        .filteredOn(label -> label.look().equals("label-number"))
        .extracting(Chart.Label::text)
        .containsExactly("100", "300");
  }
}
