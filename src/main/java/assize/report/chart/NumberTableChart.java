package assize.report.chart;

import java.time.LocalDate;
import java.util.List;

/**
 * Numbers along the days on which they were given out: a line for each series, a stroke for each
 * number that the table names.
 *
 * @param first the first day drawn
 * @param last the last
 */
public record NumberTableChart(LocalDate first, LocalDate last, List<SeriesRow> rows) {
  private static final double MARGIN = 10;
  private static final double TOP = 4;
  private static final double ROW = 52;
  private static final double APART = 8;

  public NumberTableChart {
    rows = List.copyOf(rows);
  }

  /**
   * One series.
   *
   * @param marks in the order of days, at least one
   */
  public record SeriesRow(String name, List<Mark> marks) {
    public SeriesRow {
      marks = List.copyOf(marks);
    }
  }

  /** A number, and the first day on which it was given out. */
  public record Mark(LocalDate day, String number) {}

  /**
   * Draws it.
   *
   * @param width in drawing units
   */
  public Chart draw(String id, String title, String description, int width) {
    double bottom = TOP + rows.size() * ROW + 2;
    ChartBuilder sketch = new ChartBuilder(width, (int) bottom + 26);
    DayAxis axis = new DayAxis(first, last, MARGIN, width - MARGIN);
    double y = TOP;
    for (SeriesRow row : rows) {
      String name = TextMetrics.fit(row.name(), width - 2 * MARGIN);
      sketch.label(MARGIN, y + 14, "start", "label-row", name);
      double from = axis.at(row.marks().get(0).day());
      double to = axis.at(row.marks().get(row.marks().size() - 1).day());
      sketch.box(from, y + 22, to, y + 25, 2, "sure");
      double free = 0;
      for (Mark mark : row.marks()) {
        double x = axis.at(mark.day());
        sketch.line(x, y + 18, x, y + 29, "stroke-mark");
        double half = TextMetrics.wide(mark.number()) / 2;
        double middle = Math.min(Math.max(x, half), width - half);
        if (middle - half >= free) {
          sketch.label(middle, y + 42, "middle", "label-number", mark.number());
          free = middle + half + APART;
        }
      }
      y += ROW;
    }
    axis.ticks(sketch, bottom);
    return sketch.done(id, title, description);
  }
}
