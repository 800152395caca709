package assize.date;

import java.time.Year;
import java.util.Optional;

/**
 * A part of a year longer than a month: a season, a quarter, four months or half a year.
 *
 * <p>Codes 21 to 41 of ISO 8601-2:2019. It gives seasons no months; these are our own.
 *
 * @param firstMonth 1 to 12
 * @param months how many months, of which the last may be in the next year
 */
record SubYearGrouping(int firstMonth, int months) {

  /** Returns what a number stands for where a month could stand. */
  static Optional<SubYearGrouping> of(int code) {
    if (code >= 21 && code <= 28) {
      return Optional.of(new SubYearGrouping(3 + (code - 21) % 4 * 3, 3));
    }
    if (code >= 29 && code <= 32) {
      return Optional.of(new SubYearGrouping((8 + (code - 29) * 3) % 12 + 1, 3));
    }
    if (code >= 33 && code <= 36) {
      return Optional.of(new SubYearGrouping(1 + (code - 33) * 3, 3));
    }
    if (code >= 37 && code <= 39) {
      return Optional.of(new SubYearGrouping(1 + (code - 37) * 4, 4));
    }
    return code == 40 || code == 41
        ? Optional.of(new SubYearGrouping(1 + (code - 40) * 6, 6))
        : Optional.empty();
  }

  DateRange in(int year) {
    return DateRange.of(
        Year.of(year).atMonth(firstMonth).atDay(1),
        Year.of(year).atMonth(firstMonth).plusMonths(months - 1L).atEndOfMonth());
  }
}
