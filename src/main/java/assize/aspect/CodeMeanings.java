package assize.aspect;

import assize.date.DateRange;
import assize.date.DateRangeSet;
import assize.pattern.DateCodePattern;
import assize.text.Parsed;
import java.time.LocalDate;
import java.time.Year;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The days that the code on a part can mean, around the days on which a vehicle may have been
 * built.
 */
public final class CodeMeanings {
  /** Codes repeat; years this far on both sides of the build days are looked at. */
  private static final int YEARS_AROUND = 20;

  private CodeMeanings() {}

  /** Returns the days that a code can mean, around the possible build days. */
  public static List<DateRange> meanings(DateCodePattern code, String stamped, DateRange build) {
    return days(code, stamped, build)
        .flatMap(Parsed::toOptional)
        .map(DateRangeSet::spans)
        .orElse(List.of());
  }

  static Optional<Parsed<DateRangeSet>> days(
      DateCodePattern code, String stamped, DateRange build) {
    return code.days(stamped, around(build));
  }

  /** Looks around the build days as far as the calendar goes. */
  private static DateRange around(DateRange build) {
    int before = Math.min(YEARS_AROUND, build.first().getYear() - Year.MIN_VALUE - 1);
    int after = Math.min(YEARS_AROUND, Year.MAX_VALUE - 1 - build.last().getYear());
    return DateRange.of(build.first().minusYears(before), build.last().plusYears(after));
  }

  /** Returns the meaning of a code that is nearest to a window, the earlier of two as near. */
  public static Optional<DateRange> nearest(List<DateRange> meanings, DateRange window) {
    return meanings.stream()
        .min(Comparator.comparingLong(made -> distance(made, window.first(), window.last())));
  }

  /**
   * Returns the build days from which on a later meaning of a code is nearer than the day before.
   */
  public static List<LocalDate> turns(
      DateCodePattern code, List<DateRange> meanings, DateRange build) {
    List<LocalDate> turns = new ArrayList<>();
    for (int i = 1; i < meanings.size(); i++) {
      List<DateRange> two = meanings.subList(i - 1, i + 1);
      Optional<DateRange> later = Optional.of(meanings.get(i));
      long from = 0;
      long to = build.days();
      while (from < to) {
        long middle = (from + to) / 2;
        LocalDate built = build.first().plusDays(middle);
        if (nearest(two, code.made().window(built)).equals(later)) {
          to = middle;
        } else {
          from = middle + 1;
        }
      }
      if (from < build.days()) {
        turns.add(build.first().plusDays(from));
      }
    }
    return turns;
  }

  private static long distance(DateRange made, LocalDate from, LocalDate to) {
    return made.last().isBefore(from)
        ? ChronoUnit.DAYS.between(made.last(), from)
        : ChronoUnit.DAYS.between(to, made.first());
  }
}
