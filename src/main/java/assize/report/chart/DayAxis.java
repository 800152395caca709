package assize.report.chart;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

/** Where days stand on a line of days. */
final class DayAxis {
  private static final List<String> MONTHS =
      List.of("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec");

  private final LocalDate first;
  private final double left;
  private final double right;
  private final long days;

  DayAxis(LocalDate first, LocalDate last, double left, double right) {
    this.first = first;
    this.left = left;
    this.right = right;
    this.days = ChronoUnit.DAYS.between(first, last) + 1;
  }

  /** Returns where a day begins. */
  double at(LocalDate day) {
    return left + (right - left) * ChronoUnit.DAYS.between(first, day) / days;
  }

  /** Draws ticks below {@code y}: years, or months where there are few days, as many as fit. */
  void ticks(ChartBuilder sketch, double y) {
    sketch.line(left, y, right, y, "axis");
    int months = 1;
    double perMonth = (right - left) * 30.44 / days;
    for (int each : new int[] {1, 2, 3, 6, 12, 24, 60, 120, 240, 600, 1200}) {
      months = each;
      if (perMonth * each >= (each < 12 ? 62 : 44)) {
        break;
      }
    }
    LocalDate at = first.withDayOfMonth(1);
    int skip = Math.floorMod(-(at.getYear() * 12 + at.getMonthValue() - 1), months);
    at = at.plusMonths(skip);
    if (at.isBefore(first)) {
      at = at.plusMonths(months);
    }
    for (; at(at) <= right + 0.5; at = at.plusMonths(months)) {
      double x = at(at);
      sketch.line(x, y, x, y + 5, "axis");
      if (x <= right - (months < 12 ? 24 : 12) && x >= left + (months < 12 ? 20 : 10)) {
        sketch.label(x, y + 18, "middle", "label-axis", words(at, months));
      }
    }
  }

  private static String words(LocalDate day, int months) {
    return months < 12
        ? MONTHS.get(day.getMonthValue() - 1) + " " + day.getYear()
        : Integer.toString(day.getYear());
  }
}
