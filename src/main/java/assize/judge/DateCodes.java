package assize.judge;

import assize.aspect.DateCodePattern;
import assize.date.DaySet;
import assize.date.DaySpan;
import assize.date.DayWords;
import assize.judgment.Comparison;
import assize.judgment.Verdict;
import assize.text.Parsed;
import java.time.LocalDate;
import java.time.Year;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Whether a part was made when it may have been, by the code on it. */
final class DateCodes {
  /** Codes repeat; years this far on both sides of the build days are looked at. */
  private static final int YEARS_AROUND = 20;

  private DateCodes() {}

  /** Returns the days that a code can mean, around the possible build days. */
  static List<DaySpan> meanings(DateCodePattern code, String stamped, DaySpan build) {
    return days(code, stamped, build)
        .flatMap(Parsed::toOptional)
        .map(DaySet::spans)
        .orElse(List.of());
  }

  private static Optional<Parsed<DaySet>> days(
      DateCodePattern code, String stamped, DaySpan build) {
    return code.days(stamped, around(build));
  }

  /** Looks around the build days as far as the calendar goes. */
  private static DaySpan around(DaySpan build) {
    int before = Math.min(YEARS_AROUND, build.first().getYear() - Year.MIN_VALUE - 1);
    int after = Math.min(YEARS_AROUND, Year.MAX_VALUE - 1 - build.last().getYear());
    return DaySpan.of(build.first().minusYears(before), build.last().plusYears(after));
  }

  /** Returns the meaning of a code that is nearest to a window, the earlier of two as near. */
  static Optional<DaySpan> nearest(List<DaySpan> meanings, DaySpan window) {
    return meanings.stream()
        .min(Comparator.comparingLong(made -> distance(made, window.first(), window.last())));
  }

  /**
   * Returns the build days from which on a later meaning of a code is nearer than the day before.
   */
  static List<LocalDate> turns(DateCodePattern code, List<DaySpan> meanings, DaySpan build) {
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

  static Comparison compare(
      DateCodePattern code,
      String stamped,
      LocalDate builtOn,
      DaySpan build,
      BigFraction tooEarly) {
    Optional<Parsed<DaySet>> days = days(code, stamped, build);
    if (days.isEmpty()) {
      return Comparer.departs(() -> stamped + " is not a code of this form");
    }
    return days.get()
        .match(
            set -> compare(code, stamped, builtOn, set.spans(), tooEarly),
            bad -> Comparer.departs(() -> stamped + " means no day: " + bad.reason()));
  }

  private static Comparison compare(
      DateCodePattern code,
      String stamped,
      LocalDate builtOn,
      List<DaySpan> meanings,
      BigFraction tooEarly) {
    DaySpan window = code.made().window(builtOn);
    Optional<DaySpan> fitting =
        meanings.stream().filter(made -> code.made().allows(made, builtOn)).findFirst();
    if (fitting.isPresent()) {
      return Comparer.meets(
          () -> stamped + " is " + DayWords.of(fitting.get()) + repeats(meanings, fitting.get()));
    }
    Optional<DaySpan> nearest = nearest(meanings, window);
    if (nearest.isEmpty()) {
      return Comparer.departs(() -> stamped + " means no day near the build day");
    }
    DaySpan made = nearest.get();
    String others = repeats(meanings, made);
    if (made.first().isAfter(window.last())) {
      boolean afterVehicle = made.first().isAfter(builtOn);
      return Comparer.departs(
          () ->
              stamped
                  + " is "
                  + DayWords.of(made)
                  + (afterVehicle
                      ? ", after the vehicle was built: an anachronism"
                      : ", too late to have been fitted")
                  + others);
    }
    BigFraction credit = tooEarly;
    Verdict verdict = credit.signum() == 0 ? Verdict.DEPARTS : Verdict.PARTLY;
    return new Comparison(
        verdict,
        credit,
        () ->
            stamped
                + " is "
                + DayWords.of(made)
                + ", earlier than the window from "
                + DayWords.of(window.first())
                + " to "
                + DayWords.of(window.last())
                + ": a doubt"
                + others);
  }

  private static long distance(DaySpan made, LocalDate from, LocalDate to) {
    return made.last().isBefore(from)
        ? ChronoUnit.DAYS.between(made.last(), from)
        : ChronoUnit.DAYS.between(to, made.first());
  }

  private static String repeats(List<DaySpan> meanings, DaySpan told) {
    return meanings.stream().anyMatch(other -> !other.equals(told))
        ? "; the code repeats, it could be another decade's"
        : "";
  }
}
