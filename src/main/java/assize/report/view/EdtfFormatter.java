package assize.report.view;

import assize.date.DateRange;
import assize.date.DateRangeFormatter;
import assize.date.Edtf;
import java.time.temporal.ChronoUnit;

/** Dates that people wrote, in words. */
public final class EdtfFormatter {
  private EdtfFormatter() {}

  /** Returns {@code "about May 1934"} of {@code 1934-05~}; a set as the days it may mean. */
  public static String date(Edtf date) {
    boolean several = date.days().spans().size() > 1;
    String days =
        several ? DateRangeFormatter.of(date.days()) : DateRangeFormatter.of(date.stated());
    return (date.approximate() ? "about " : "") + days + (date.uncertain() ? " (uncertain)" : "");
  }

  /** Returns how many days a closed span has. */
  public static long count(DateRange days) {
    return ChronoUnit.DAYS.between(days.first(), days.last()) + 1;
  }
}
