package assize.report.chart;

import java.time.LocalDate;
import java.util.List;

/**
 * For which build days each claim speaks, and the vehicle's own build days across them.
 *
 * @param first the first day drawn
 * @param last the last day drawn
 * @param builtFirst the first day on which the vehicle may have been built
 * @param builtLast the last
 */
public record ClaimDatesChart(
    LocalDate first,
    LocalDate last,
    LocalDate builtFirst,
    LocalDate builtLast,
    List<ClaimRow> rows) {
  private static final double MARGIN = 10;
  private static final double ROW = 42;

  public ClaimDatesChart {
    rows = List.copyOf(rows);
  }

  /** One claim. */
  public record ClaimRow(String who, String says, List<Bar> bars) {
    public ClaimRow {
      bars = List.copyOf(bars);
    }
  }

  /** Days, both ends closed. */
  public record Bar(LocalDate first, LocalDate last) {}

  /**
   * Draws it.
   *
   * @param width in drawing units
   */
  public Chart draw(String id, String title, String description, int width) {
    double bottom = 26 + rows.size() * ROW;
    ChartBuilder sketch = new ChartBuilder(width, (int) bottom + 26);
    DayAxis axis = new DayAxis(first, last, MARGIN, width - MARGIN);
    double from = axis.at(builtFirst);
    double to = axis.at(builtLast.plusDays(1));
    sketch.box(from, 18, to, bottom, 3, "built");
    String anchor = from > width * 0.6 ? "end" : "start";
    sketch.label(
        anchor.equals("end") ? to : from, 12, anchor, "label-name", "this vehicle's build days");
    double y = 22;
    for (ClaimRow row : rows) {
      String words = shorten(row.says() + ": " + row.who(), (int) (width / 6.3));
      sketch.label(MARGIN, y + 14, "start", "label-row", words);
      sketch.box(MARGIN, y + 25, width - MARGIN, y + 28, 0, "groove");
      for (Bar bar : row.bars()) {
        sketch.box(
            axis.at(bar.first()), y + 21, axis.at(bar.last().plusDays(1)), y + 32, 2, "sure");
      }
      y += ROW;
    }
    axis.ticks(sketch, bottom);
    return sketch.done(id, title, description);
  }

  private static String shorten(String words, int most) {
    if (words.codePointCount(0, words.length()) <= most) {
      return words;
    }
    return words.substring(0, words.offsetByCodePoints(0, most - 1)).strip() + "…";
  }
}
