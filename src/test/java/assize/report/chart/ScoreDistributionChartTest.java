package assize.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ScoreDistributionChartTest {
  private static final List<ScoreRangeChart.Threshold> AWARDS =
      List.of(
          new ScoreRangeChart.Threshold("Silver", "80", 80),
          new ScoreRangeChart.Threshold("Gold", "95", 95),
          new ScoreRangeChart.Threshold("Bronze", "70", 70));

  private static Chart draw(double... scores) {
    return new ScoreDistributionChart(100, scores, AWARDS).draw("spread", "title", "words", 300);
  }

  private static long dots(Chart drawing) {
    return drawing.paths().stream().filter(path -> path.look().equals("dot")).count();
  }

  private static long columns(Chart drawing) {
    return drawing.boxes().stream()
        .filter(box -> box.look().equals("sure") && !box.height().equals("0"))
        .count();
  }

  @Test
  void drawsADotEach() {
    assertThat(dots(draw(75, 75, 75, 90, 100))).isEqualTo(5);
    assertThat(dots(draw(0))).isEqualTo(1);
    assertThat(columns(draw(75))).isZero();
  }

  @Test
  void drawsColumnsWhereTheyAreManyTheTallestForTheMost() {
    double[] scores = IntStream.range(0, 1000).mapToDouble(i -> i < 600 ? 75 : 90).toArray();
    Chart drawing = draw(scores);
    assertThat(dots(drawing)).isZero();
    assertThat(columns(drawing)).isEqualTo(2);
    List<Double> tall =
        drawing.boxes().stream()
            .filter(box -> box.look().equals("sure") && !box.height().equals("0"))
            .map(box -> Double.valueOf(box.height()))
            .toList();
    // by hand: 84 units for 600, so 56 for 400
    assertThat(tall).containsExactly(84.0, 56.0);
  }

  @Test
  void keepsAllWithinItsWidthAndEachAwardOnALineOfItsOwn() {
    Chart drawing = draw(0, 50, 100);
    assertThat(drawing.boxes())
        .allSatisfy(
            box ->
                assertThat(Double.parseDouble(box.x()) + Double.parseDouble(box.width()))
                    .isLessThanOrEqualTo(300));
    List<String> names =
        drawing.labels().stream()
            .filter(label -> label.look().equals("label-name"))
            .map(Chart.Label::text)
            .toList();
    assertThat(names).containsExactly("Gold 95", "Silver 80", "Bronze 70");
    assertThat(
            drawing.labels().stream()
                .filter(label -> label.look().equals("label-name"))
                .map(Chart.Label::y))
        .doesNotHaveDuplicates();
  }
}
