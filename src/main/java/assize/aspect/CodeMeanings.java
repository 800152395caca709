package assize.aspect;

import assize.date.DaySet;
import assize.date.DaySpan;
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
  public static List<DaySpan> meanings(DateCodePattern code, String stamped, DaySpan build) {
    return days(code, stamped, build)
        .flatMap(Parsed::toOptional)
        .map(DaySet::spans)
        .orElse(List.of());
  }

  static Optional<Parsed<DaySet>> days(DateCodePattern code, String stamped, DaySpan build) {
    return code.days(stamped, around(build));
  }

  /** Looks around the build days as far as the calendar goes. */
  private static DaySpan around(DaySpan build) {
    int before = Math.min(YEARS_AROUND, build.first().getYear() - Year.MIN_VALUE - 1);
    int after = Math.min(YEARS_AROUND, Year.MAX_VALUE - 1 - build.last().getYear());
    return DaySpan.of(build.first().minusYears(before), build.last().plusYears(after));
  }

  /** Returns the meaning of a code that is nearest to a window, the earlier of two as near. */
  public static Optional<DaySpan> nearest(List<DaySpan> meanings, DaySpan window) {
    return meanings.stream()
        .min(Comparator.comparingLong(made -> distance(made, window.first(), window.last())));
  }

  /**
   * Returns the build days from which on a later meaning of a code is nearer than the day before.
   */
  public static List<LocalDate> turns(DateCodePattern code, List<DaySpan> meanings, DaySpan build) {
    List<LocalDate> turns = new ArrayList<>();
    for (int i = 1; i < meanings.size(); i++) {
      List<DaySpan> two = meanings.subList(i - 1, i + 1);
      Optional<DaySpan> later = Optional.of(meanings.get(i));
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

  private static long distance(DaySpan made, LocalDate from, LocalDate to) {
    return made.last().isBefore(from)
        ? ChronoUnit.DAYS.between(made.last(), from)
        : ChronoUnit.DAYS.between(to, made.first());
  }
}
