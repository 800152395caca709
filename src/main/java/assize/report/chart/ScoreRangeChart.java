package assize.report.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The score as a band against the awards' thresholds.
 *
 * @param of the full score
 * @param score allowances included
 * @param withoutAllowances without allowances, where that differs
 * @param thresholds in any order
 */
public record ScoreRangeChart(
    double of, Band score, Optional<Band> withoutAllowances, List<Threshold> thresholds) {
  private static final double MARGIN = 14;
  private static final double LEVEL = 30;

  public ScoreRangeChart {
    thresholds = List.copyOf(thresholds);
  }

  /** A range of points. */
  public record Band(double low, double likely, double high) {}

  /**
   * From where on an award is reached.
   *
   * @param at in points
   */
  public record Threshold(String name, String points, double at) {}

  /**
   * Draws it.
   *
   * @param width in drawing units
   */
  public Chart draw(String id, String title, String description, int width) {
    double floor = floor();
    double right = right(floor, width);
    double scale = (right - MARGIN) / (of - floor);
    List<Placed> placed = place(floor, scale, width);
    int levels = placed.stream().mapToInt(Placed::level).max().orElse(-1) + 1;
    double top = 10 + levels * LEVEL;
    double axis = top + (withoutAllowances.isPresent() ? 74 : 46);
    ChartBuilder sketch = new ChartBuilder(width, (int) Math.ceil(axis + 30));
    sketch.box(MARGIN, top + 6, right, axis, 0, "field");
    for (Placed one : placed) {
      double y = 20 + (levels - 1 - one.level()) * LEVEL;
      sketch.line(one.x(), y - 16, one.x(), axis, "limit-line");
      sketch.label(one.textX(), y - 7, one.anchor(), "label-name", one.threshold().name());
      sketch.label(one.textX(), y + 6, one.anchor(), "label-number", one.threshold().points());
    }
    band(sketch, score, floor, scale, top + 18, 18, "");
    withoutAllowances.ifPresent(it -> band(sketch, it, floor, scale, top + 50, 12, "-second"));
    sketch.line(MARGIN, axis, right, axis, "axis");
    double step = Ticks.step(of - floor, (right - MARGIN) / 55);
    for (double at = Math.ceil(floor / step) * step; at <= of + 1e-9; at += step) {
      double x = MARGIN + (at - floor) * scale;
      sketch.line(x, axis, x, axis + 5, "axis");
      sketch.label(
          x, axis + 18, x < MARGIN + 2 ? "start" : "middle", "label-axis", ChartBuilder.at(at));
    }
    return sketch.done(id, title, description);
  }

  /** Leaves room for the names that stand right of the last thresholds, a third of it at most. */
  private double right(double floor, int width) {
    double right = width - MARGIN;
    for (Threshold threshold : thresholds) {
      double share = (threshold.at() - floor) / (of - floor);
      double fits = MARGIN + (width - 8 - wide(threshold) - MARGIN) / Math.max(share, 0.01);
      right = Math.min(right, Math.max(fits, width * 2 / 3.0));
    }
    return right;
  }

  private static double wide(Threshold threshold) {
    return Math.max(threshold.name().length(), threshold.points().length()) * 6.6;
  }

  private static void band(
      ChartBuilder sketch,
      Band band,
      double floor,
      double scale,
      double y,
      double tall,
      String look) {
    double low = MARGIN + (band.low() - floor) * scale;
    double likely = MARGIN + (band.likely() - floor) * scale;
    double high = MARGIN + (band.high() - floor) * scale;
    sketch.box(low, y, high, y + tall, 3, "range" + look);
    double middle = y + tall / 2;
    double r = tall / 2 + 4;
    sketch.path(
        "M"
            + ChartBuilder.at(likely)
            + " "
            + ChartBuilder.at(middle - r)
            + "L"
            + ChartBuilder.at(likely + r * 0.7)
            + " "
            + ChartBuilder.at(middle)
            + "L"
            + ChartBuilder.at(likely)
            + " "
            + ChartBuilder.at(middle + r)
            + "L"
            + ChartBuilder.at(likely - r * 0.7)
            + " "
            + ChartBuilder.at(middle)
            + "Z",
        "diamond" + look);
  }

  /** The scale begins a little below whatever is least, at a round number. */
  private double floor() {
    double least = thresholds.stream().mapToDouble(Threshold::at).reduce(score.low(), Math::min);
    least =
        withoutAllowances.map(Band::low).map(low -> low).orElse(least) < least
            ? withoutAllowances.get().low()
            : least;
    double step = of / 10;
    double below = Math.floor((least - (of - least) * 0.12) / step) * step;
    double floor = Math.min(below, of - 2 * step);
    return floor < of * 0.25 ? 0 : floor;
  }

  private record Placed(Threshold threshold, double x, double textX, String anchor, int level) {}

  /** Puts each label at the lowest level on which it crosses no line and no other label. */
  private List<Placed> place(double floor, double scale, int width) {
    List<Placed> placed = new ArrayList<>();
    List<Threshold> sorted =
        thresholds.stream().sorted(Comparator.comparingDouble(Threshold::at).reversed()).toList();
    for (Threshold threshold : sorted) {
      double x = MARGIN + (threshold.at() - floor) * scale;
      boolean left = x + 4 + wide(threshold) > width;
      double end = left ? x : x + 10 + wide(threshold);
      int level = 0;
      while (crosses(placed, level, end)) {
        level++;
      }
      placed.add(new Placed(threshold, x, left ? x - 4 : x + 4, left ? "end" : "start", level));
    }
    return placed;
  }

  private static boolean crosses(List<Placed> placed, int level, double end) {
    return placed.stream()
        .anyMatch(
            other ->
                other.level() >= level
                    && (other.anchor().equals("end")
                            ? other.x() - wide(other.threshold())
                            : other.x())
                        < end);
  }
}
