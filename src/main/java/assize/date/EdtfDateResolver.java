package assize.date;

import assize.text.Parsed;
import java.time.LocalDate;
import java.time.Period;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Finds the days of a date given as year, month and day.
 *
 * @param parts one to three: the year, the month or season, the day
 * @param negative whether the year has a minus sign
 */
record EdtfDateResolver(List<EdtfPart> parts, boolean negative) {
  /** More spans than this are kept as the one from the first to the last. */
  static final int MOST_SPANS = 10_000;

  private static final List<Integer> ALL_MONTHS = IntStream.rangeClosed(1, 12).boxed().toList();

  /** How the parts after the year choose days within one year. */
  private interface Chooser {
    List<DateRange> in(int year);
  }

  EdtfDateResolver {
    parts = List.copyOf(parts);
  }

  Parsed<EdtfDate> read() {
    List<Integer> years = years();
    if (years.isEmpty()) {
      return bad(parts.get(0), "year 0 has no minus sign");
    }
    return chooser().then(chooser -> days(years, chooser)).map(this::qualify);
  }

  private List<Integer> years() {
    List<Integer> numbers = parts.get(0).digits().numbers();
    return negative ? numbers.stream().filter(n -> n > 0).map(n -> -n).sorted().toList() : numbers;
  }

  private Parsed<Chooser> chooser() {
    if (parts.size() == 1) {
      return Parsed.ok(year -> List.of(months(year, 1, 12)));
    }
    EdtfPart month = parts.get(1);
    Optional<SubYearGrouping> season = season();
    if (season.isPresent()) {
      return parts.size() == 2
          ? Parsed.ok(year -> List.of(season.get().in(year)))
          : bad(parts.get(2), month.digits().text() + " is a part of the year, and has no days");
    }
    List<Integer> months = month.digits().numbers(1, 12);
    if (months.isEmpty()) {
      return bad(month, none("month", month));
    }
    if (parts.size() == 2 || parts.get(2).digits().unknown()) {
      return Parsed.ok(year -> wholeMonths(year, months));
    }
    List<Integer> days = parts.get(2).digits().numbers(1, 31);
    return days.isEmpty()
        ? bad(parts.get(2), none("day", parts.get(2)))
        : Parsed.ok(year -> daysOfMonths(year, months, days));
  }

  private Optional<SubYearGrouping> season() {
    return parts.size() > 1 && parts.get(1).digits().known()
        ? SubYearGrouping.of(parts.get(1).digits().numbers().get(0))
        : Optional.empty();
  }

  private static String none(String name, EdtfPart part) {
    String written = part.digits().text();
    return written.equals("00")
        ? name + "s are counted from 01; if it is not known write XX"
        : "there is no " + name + " " + written;
  }

  private static DateRange months(int year, int first, int last) {
    return DateRange.of(
        YearMonth.of(year, first).atDay(1), YearMonth.of(year, last).atEndOfMonth());
  }

  private static List<DateRange> wholeMonths(int year, List<Integer> months) {
    return months.equals(ALL_MONTHS)
        ? List.of(months(year, 1, 12))
        : months.stream().map(month -> months(year, month, month)).toList();
  }

  private static List<DateRange> daysOfMonths(int year, List<Integer> months, List<Integer> days) {
    List<DateRange> spans = new ArrayList<>();
    for (int month : months) {
      int length = YearMonth.of(year, month).lengthOfMonth();
      days.stream()
          .filter(day -> day <= length)
          .forEach(day -> spans.add(DateRange.day(LocalDate.of(year, month, day))));
    }
    return spans;
  }

  private Parsed<DateRangeSet> days(List<Integer> years, Chooser chooser) {
    int leapYear = 2000;
    long spans = (long) years.size() * DateRangeSet.of(chooser.in(leapYear)).spans().size();
    if (spans > MOST_SPANS) {
      // So many days only where most of a year is not known, so its first and last year have some.
      DateRange first = DateRangeSet.of(chooser.in(years.get(0))).hull();
      return Parsed.ok(
          DateRangeSet.of(
              first.hull(DateRangeSet.of(chooser.in(years.get(years.size() - 1))).hull())));
    }
    List<DateRange> found = years.stream().flatMap(year -> chooser.in(year).stream()).toList();
    return found.isEmpty() ? noSuchDay(years) : Parsed.ok(DateRangeSet.of(found));
  }

  private Parsed<DateRangeSet> noSuchDay(List<Integer> years) {
    int month = parts.get(1).digits().numbers(1, 12).get(0);
    int length = YearMonth.of(years.get(0), month).lengthOfMonth();
    String when = DateRangeFormatter.month(month) + (years.size() == 1 ? " " + years.get(0) : "");
    return bad(parts.get(2), when + " has " + length + " days");
  }

  /** Of several approximate parts the first is the coarsest, and asks for most room. */
  private EdtfDate qualify(DateRangeSet stated) {
    Period room =
        IntStream.range(0, parts.size())
            .filter(i -> parts.get(i).approximate())
            .mapToObj(this::unit)
            .findFirst()
            .orElse(Period.ZERO);
    return EdtfDate.of(
        stated,
        room,
        parts.stream().anyMatch(EdtfPart::uncertain),
        parts.stream().anyMatch(EdtfPart::approximate));
  }

  /** A part of which nothing is known is as precise as the one before it. */
  private Period unit(int part) {
    DigitPattern digits = parts.get(part).digits();
    if (part == 0) {
      return Period.ofYears((int) Math.round(Math.pow(10, digits.unknownAtEnd())));
    }
    if (digits.unknown()) {
      return unit(part - 1);
    }
    return part == 1
        ? Period.ofMonths(season().map(SubYearGrouping::months).orElse(1))
        : Period.ofDays(1);
  }

  private static <T> Parsed<T> bad(EdtfPart part, String reason) {
    return Parsed.bad(reason, part.at(), part.digits().text().length());
  }
}
