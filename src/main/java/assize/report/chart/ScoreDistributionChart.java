package assize.report.chart;

import java.util.Arrays;
import java.util.List;

/**
 * The scores of several vehicles along the scale: a dot each, or columns where they are many.
 *
 * @param of the full score
 * @param scores in points, at least one
 * @param thresholds of awards, in any order
 */
public record ScoreDistributionChart(
    double of, double[] scores, List<ScoreRangeChart.Threshold> thresholds) {
  private static final double MARGIN = 14;
  private static final double STEP = 9;
  private static final double TALL = 84;
  private static final double ROW = 15;
  private static final double LETTER = 6.6;

  public ScoreDistributionChart {
    scores = scores.clone();
    thresholds = thresholds.stream().sorted((a, b) -> Double.compare(b.at(), a.at())).toList();
  }

  @Override
  public double[] scores() {
    return scores.clone();
  }

  /**
   * Draws it.
   *
   * @param width in drawing units
   */
  public Chart draw(String id, String title, String description, int width) {
    double floor = floor();
    int bins = (int) ((width - 2 * MARGIN) / STEP);
    double scale = bins * STEP / (of - floor);
    int[] counts = new int[bins];
    for (double score : scores) {
      counts[(int) Math.min(bins - 1, (score - floor) * scale / STEP)]++;
    }
    int most = Arrays.stream(counts).max().orElse(1);
    double top = 6 + thresholds.size() * ROW;
    double axis = top + Math.min(TALL, most * STEP) + 6;
    ChartBuilder sketch = new ChartBuilder(width, (int) Math.ceil(axis + 26));
    sketch.box(MARGIN, top, MARGIN + bins * STEP, axis, 0, "field");
    for (int i = 0; i < thresholds.size(); i++) {
      threshold(sketch, thresholds.get(i), i, floor, scale, axis);
    }
    for (int bin = 0; bin < bins; bin++) {
      double left = MARGIN + bin * STEP;
      if (most * STEP > TALL) {
        double tall = counts[bin] * TALL / most;
        sketch.box(left + 1, axis - tall, left + STEP - 1, axis, 0, "sure");
      } else {
        for (int i = 0; i < counts[bin]; i++) {
          sketch.path(dot(left + STEP / 2, axis - STEP * (i + 0.5), STEP / 2 - 0.8), "dot");
        }
      }
    }
    sketch.line(MARGIN, axis, MARGIN + bins * STEP, axis, "axis");
    double step = Ticks.step(of - floor, (width - 2 * MARGIN) / 55);
    for (double at = Math.ceil(floor / step) * step; at <= of + 1e-9; at += step) {
      double x = MARGIN + (at - floor) * scale;
      sketch.line(x, axis, x, axis + 5, "axis");
      boolean first = x < MARGIN + 12;
      boolean last = x > width - MARGIN - 12;
      sketch.label(
          first ? MARGIN - 4 : last ? width - 4 : x,
          axis + 18,
          first ? "start" : last ? "end" : "middle",
          "label-axis",
          ChartBuilder.at(at));
    }
    return sketch.done(id, title, description);
  }

  /** The highest has the top line, its words left of it, so that no words cross another's line. */
  private static void threshold(
      ChartBuilder sketch,
      ScoreRangeChart.Threshold threshold,
      int row,
      double floor,
      double scale,
      double axis) {
    double x = MARGIN + (threshold.at() - floor) * scale;
    double y = 14 + row * ROW;
    String words = threshold.name() + " " + threshold.points();
    boolean left = x - 4 - words.length() * LETTER > 0;
    sketch.line(x, y - 8, x, axis, "limit-line");
    sketch.label(left ? x - 4 : x + 4, y, left ? "end" : "start", "label-name", words);
  }

  private static String dot(double x, double y, double r) {
    String across = ChartBuilder.at(r * 2);
    String radius = ChartBuilder.at(r);
    return "M"
        + ChartBuilder.at(x - r)
        + " "
        + ChartBuilder.at(y)
        + "a"
        + radius
        + " "
        + radius
        + " 0 1 0 "
        + across
        + " 0a"
        + radius
        + " "
        + radius
        + " 0 1 0 -"
        + across
        + " 0Z";
  }

  /** The scale begins at a round number at or below whatever is least. */
  private double floor() {
    double least = Arrays.stream(scores).min().orElse(0);
    for (ScoreRangeChart.Threshold threshold : thresholds) {
      least = Math.min(least, threshold.at());
    }
    double step = of / 10;
    double floor = Math.min(Math.floor(least / step - 0.2) * step, of - 2 * step);
    return floor < of * 0.25 ? 0 : floor;
  }
}
