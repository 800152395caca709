package assize.date;

import assize.text.Parsed;
import java.time.LocalDate;
import java.time.Year;
import java.time.YearMonth;
import java.time.temporal.IsoFields;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** Finds the days that a date code can mean; codes repeat, so there are often several spans. */
public final class DateCodeResolver {
  private static final int WEEKS = 53;
  private static final int DAYS_OF_WEEK = 7;
  private static final int DAYS_OF_MONTH = 31;
  private static final int DAYS_OF_YEAR = 366;
  private static final int HORIZON_YEARS = 20_000;

  /** A number that a part gives, or none where the code has no such part. */
  private record Numbers(
      IntPredicate year, Optional<Integer> month, Optional<Integer> week, Optional<Integer> day) {}

  private DateCodeResolver() {}

  /**
   * Returns the days within the horizon that the code can mean, none if it means only others.
   *
   * <p>A year of one digit fits each decade, of two each century. Week numbers are those of ISO
   * 8601, in which a week belongs to the year that holds its Thursday, unless the tables count from
   * 1 January. A part that no year within the horizon can have, such as a day 31 of April, is
   * refused.
   *
   * @param horizon the days to look at, with a first and a last
   */
  public static Parsed<DateRangeSet> days(
      DateCodeParts parts, DateCodeTables tables, DateRange horizon) {
    if (horizon.openStart()
        || horizon.openEnd()
        || horizon.last().getYear() - horizon.first().getYear() > HORIZON_YEARS) {
      return Parsed.bad("a code repeats: it needs a first and a last day to be read between", 0, 0);
    }
    return year(parts.year(), tables.years())
        .then(
            year ->
                number("month", parts.month(), tables.months(), 12)
                    .then(
                        month ->
                            number("week", parts.week(), Map.of(), WEEKS)
                                .then(
                                    week ->
                                        number("day", parts.day(), Map.of(), mostDays(parts))
                                            .map(day -> new Numbers(year, month, week, day)))))
        .then(numbers -> within(numbers, tables.weeksFromJanuaryFirst(), horizon));
  }

  private static int mostDays(DateCodeParts parts) {
    if (parts.month().isPresent()) {
      return DAYS_OF_MONTH;
    }
    return parts.week().isPresent() ? DAYS_OF_WEEK : DAYS_OF_YEAR;
  }

  private static Parsed<IntPredicate> year(Optional<String> text, Map<String, Integer> table) {
    if (text.isEmpty()) {
      return Parsed.ok(year -> true);
    }
    String written = text.get();
    Optional<Integer> listed = Optional.ofNullable(table.get(written));
    if (listed.isPresent()) {
      int value = listed.get();
      return Parsed.ok(repeating(value, value < 0 || value > 99 ? 0 : value < 10 ? 10 : 100));
    }
    return plain(written)
        .filter(value -> written.length() != 3 && written.length() <= 4)
        .map(value -> Parsed.ok(repeating(value, written.length() == 4 ? 0 : power(written))))
        .orElseGet(
            () -> Parsed.bad("year " + written + ": one, two or four digits", 0, written.length()));
  }

  private static int power(String digits) {
    return digits.length() == 1 ? 10 : 100;
  }

  private static IntPredicate repeating(int value, int period) {
    return period == 0 ? year -> year == value : year -> Math.floorMod(year, period) == value;
  }

  private static Parsed<Optional<Integer>> number(
      String part, Optional<String> text, Map<String, Integer> table, int most) {
    if (text.isEmpty()) {
      return Parsed.ok(Optional.empty());
    }
    String written = text.get();
    Optional<Integer> number = Optional.ofNullable(table.get(written)).or(() -> plain(written));
    if (number.isPresent() && number.get() >= 1 && number.get() <= most) {
      return Parsed.ok(number);
    }
    String said = number.isPresent() ? "there are only" : "not listed, and no number from";
    return Parsed.bad(part + " " + written + ": " + said + " 1 to " + most, 0, written.length());
  }

  private static Optional<Integer> plain(String text) {
    boolean digits = text.chars().allMatch(c -> c >= '0' && c <= '9');
    return digits && !text.isEmpty() && text.length() <= 4
        ? Optional.of(Integer.parseInt(text))
        : Optional.empty();
  }

  private static Parsed<DateRangeSet> within(
      Numbers numbers, boolean plainWeeks, DateRange horizon) {
    // A week of ISO 8601 may begin in the year before its own and end in the year after.
    List<Integer> years =
        IntStream.rangeClosed(
                Math.max(horizon.first().getYear() - 1, Year.MIN_VALUE + 1),
                Math.min(horizon.last().getYear() + 1, Year.MAX_VALUE - 1))
            .filter(numbers.year())
            .boxed()
            .toList();
    List<DateRange> found = new ArrayList<>();
    years.forEach(year -> days(numbers, plainWeeks, year).ifPresent(found::add));
    if (found.isEmpty() && !years.isEmpty()) {
      return Parsed.bad(impossible(numbers), 0, 0);
    }
    return Parsed.ok(DateRangeSet.of(found).intersect(DateRangeSet.of(horizon)));
  }

  private static Optional<DateRange> days(Numbers numbers, boolean plainWeeks, int year) {
    Optional<DateRange> month =
        numbers
            .month()
            .map(m -> YearMonth.of(year, m))
            .map(m -> span(m.atDay(1), m.atEndOfMonth()));
    Optional<DateRange> week = numbers.week().flatMap(w -> week(year, w, plainWeeks));
    if (numbers.week().isPresent() && week.isEmpty()) {
      return Optional.empty();
    }
    DateRange whole =
        month.or(() -> week).orElse(span(LocalDate.of(year, 1, 1), LocalDate.of(year, 12, 31)));
    return numbers
        .day()
        .map(day -> DateRange.day(whole.first().plusDays(day - 1L)))
        .or(() -> Optional.of(whole))
        .flatMap(whole::intersect)
        .flatMap(days -> week.isPresent() ? days.intersect(week.get()) : Optional.of(days));
  }

  private static Optional<DateRange> week(int year, int week, boolean plainWeeks) {
    LocalDate first = LocalDate.of(year, 1, 1);
    if (plainWeeks) {
      LocalDate monday = first.plusDays((week - 1L) * DAYS_OF_WEEK);
      return span(first, LocalDate.of(year, 12, 31))
          .intersect(span(monday, monday.plusDays(DAYS_OF_WEEK - 1L)));
    }
    // 4 January is always in week 1 (ISO 8601-1:2019, 5.2.3, from memory).
    LocalDate fourth = LocalDate.of(year, 1, 4);
    LocalDate monday = fourth.minusDays(fourth.getDayOfWeek().getValue() - 1L).plusWeeks(week - 1L);
    return monday.get(IsoFields.WEEK_BASED_YEAR) == year
        ? Optional.of(span(monday, monday.plusDays(DAYS_OF_WEEK - 1L)))
        : Optional.empty();
  }

  private static String impossible(Numbers numbers) {
    List<String> words = new ArrayList<>();
    numbers.day().ifPresent(day -> words.add("day " + day));
    numbers.week().ifPresent(week -> words.add("week " + week));
    numbers.month().ifPresent(month -> words.add(DateRangeFormatter.month(month)));
    return "no year that the code can mean has a " + String.join(" of ", words);
  }

  private static DateRange span(LocalDate first, LocalDate last) {
    return DateRange.of(first, last);
  }
}
