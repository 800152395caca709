package assize.report.chart;

import java.time.LocalDate;
import java.util.List;

/**
 * What is right over the days of production: a row for each value, bars where it is.
 *
 * @param first the first day of production
 * @param last the last
 */
public record ExpectationChart(LocalDate first, LocalDate last, List<PeriodRow> rows) {
  private static final double MARGIN = 10;
  private static final double TOP = 4;
  private static final double ROW = 54;
  private static final double HATCH = 7;

  public ExpectationChart {
    rows = List.copyOf(rows);
  }

  /** How a value stands; each is drawn in a form of its own, so that no color is needed. */
  public enum Stand {
    /** It is what is judged by: a full bar. */
    RIGHT,
    /** Sources differ, and it is one of those judged by: a hatched bar. */
    OPEN,
    /** Somebody says so, and it is not judged by: a thin line. */
    ASIDE,
    /** No source speaks: a dashed outline. */
    SILENT
  }

  /**
   * One value.
   *
   * @param dates when it is right, in words
   */
  public record PeriodRow(String says, String dates, List<Bar> bars) {
    public PeriodRow {
      bars = List.copyOf(bars);
    }
  }

  /** Days, both ends included. */
  public record Bar(LocalDate first, LocalDate last, Stand stand) {}

  /**
   * Draws it.
   *
   * @param width in drawing units
   */
  public Chart draw(String id, String title, String description, int width) {
    double bottom = TOP + rows.size() * ROW + 4;
    ChartBuilder sketch = new ChartBuilder(width, (int) bottom + 26);
    DayAxis axis = new DayAxis(first, last, MARGIN, width - MARGIN);
    double y = TOP;
    for (PeriodRow row : rows) {
      double room = width - 2 * MARGIN;
      sketch.label(MARGIN, y + 14, "start", "label-row", TextMetrics.fit(row.says(), room));
      sketch.label(MARGIN, y + 29, "start", "label-axis", TextMetrics.fit(row.dates(), room));
      sketch.box(MARGIN, y + 41, width - MARGIN, y + 42, 0, "groove");
      for (Bar bar : row.bars()) {
        draw(sketch, axis.at(bar.first()), axis.at(bar.last().plusDays(1)), y + 36, bar.stand());
      }
      y += ROW;
    }
    axis.ticks(sketch, bottom);
    return sketch.done(id, title, description);
  }

  private static void draw(ChartBuilder sketch, double from, double to, double y, Stand stand) {
    switch (stand) {
      case RIGHT -> sketch.box(from, y, to, y + 11, 2, "sure");
      case OPEN -> {
        sketch.box(from, y, to, y + 11, 2, "open");
        sketch.path(hatched(from, to, y, 11), "hatch");
      }
      case ASIDE -> sketch.box(from, y + 4, to, y + 7, 2, "mark");
      case SILENT -> sketch.path(outline(from, to, y, 11), "gap");
    }
  }

  private static String outline(double from, double to, double y, double tall) {
    return "M"
        + ChartBuilder.at(from)
        + " "
        + ChartBuilder.at(y)
        + "H"
        + ChartBuilder.at(to)
        + "V"
        + ChartBuilder.at(y + tall)
        + "H"
        + ChartBuilder.at(from)
        + "Z";
  }

  /** Lines from the lower left to the upper right, cut off at both ends. */
  private static String hatched(double from, double to, double y, double tall) {
    StringBuilder d = new StringBuilder(outline(from, to, y, tall));
    for (double x = from + HATCH - tall; x < to; x += HATCH) {
      double left = Math.max(x, from);
      double right = Math.min(x + tall, to);
      if (right > left) {
        d.append("M")
            .append(ChartBuilder.at(left))
            .append(' ')
            .append(ChartBuilder.at(y + tall - (left - x)));
        d.append("L").append(ChartBuilder.at(right)).append(' ');
        d.append(ChartBuilder.at(y + tall - (right - x)));
      }
    }
    return d.toString();
  }
}
