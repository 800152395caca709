package assize.report.chart;

import java.time.LocalDate;
import java.util.List;

/**
 * The score against the build day, as steps.
 *
 * @param steps in the order of days, at least one
 * @param thresholds of awards, in any order
 */
public record ScoreByDateChart(List<Step> steps, List<ScoreRangeChart.Threshold> thresholds) {
  private static final double LEFT = 44;
  private static final double RIGHT = 12;
  private static final double TOP = 14;
  private static final double TALL = 220;

  public ScoreByDateChart {
    steps = List.copyOf(steps);
    thresholds = List.copyOf(thresholds);
  }

  /** Build days of one score. */
  public record Step(
      LocalDate first, LocalDate last, double low, double likely, double high, String words) {}

  /**
   * Draws it.
   *
   * @param width in drawing units
   */
  public Chart draw(String id, String title, String description, int width) {
    double least = steps.stream().mapToDouble(Step::low).min().orElse(0);
    double most = steps.stream().mapToDouble(Step::high).max().orElse(1);
    double pad = Math.max((most - least) * 0.15, 1);
    double floor = Math.max(0, least - pad);
    double top = most + pad;
    double bottom = TOP + TALL;
    ChartBuilder sketch = new ChartBuilder(width, (int) bottom + 28);
    DayAxis axis =
        new DayAxis(steps.get(0).first(), steps.get(steps.size() - 1).last(), LEFT, width - RIGHT);
    sketch.box(LEFT, TOP, width - RIGHT, bottom, 0, "field");
    for (ScoreRangeChart.Threshold threshold : thresholds) {
      if (threshold.at() > floor && threshold.at() < top) {
        double y = y(threshold.at(), floor, top);
        sketch.line(LEFT, y, width - RIGHT, y, "limit-line");
        sketch.label(
            width - RIGHT - 3,
            y - 4,
            "end",
            "label-name",
            threshold.name() + " " + threshold.points());
      }
    }
    for (Step step : steps) {
      sketch.box(
          axis.at(step.first()),
          y(step.high(), floor, top),
          axis.at(step.last().plusDays(1)),
          y(step.low(), floor, top),
          1,
          "range");
    }
    sketch.path(stairs(axis, floor, top), "stairs");
    for (Step step : steps) {
      double from = axis.at(step.first());
      double to = axis.at(step.last().plusDays(1));
      if (to - from > step.words().length() * 7.5) {
        sketch.label(
            (from + to) / 2,
            y(step.likely(), floor, top) - 6,
            "middle",
            "label-value",
            step.words());
      }
    }
    sketch.line(LEFT, TOP, LEFT, bottom, "axis");
    double tick = Ticks.step(top - floor, TALL / 34);
    for (double at = Math.ceil(floor / tick) * tick; at <= top; at += tick) {
      double y = y(at, floor, top);
      sketch.line(LEFT - 4, y, LEFT, y, "axis");
      sketch.label(LEFT - 8, y + 4, "end", "label-axis", ChartBuilder.at(at));
    }
    axis.ticks(sketch, bottom);
    return sketch.done(id, title, description);
  }

  private static double y(double value, double floor, double top) {
    return TOP + TALL * (top - value) / (top - floor);
  }

  private String stairs(DayAxis axis, double floor, double top) {
    StringBuilder d = new StringBuilder();
    for (Step step : steps) {
      String y = ChartBuilder.at(y(step.likely(), floor, top));
      d.append(d.isEmpty() ? "M" : "L").append(ChartBuilder.at(axis.at(step.first()))).append(' ');
      d.append(y).append('H').append(ChartBuilder.at(axis.at(step.last().plusDays(1))));
    }
    return d.toString();
  }
}
