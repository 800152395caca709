package assize.date;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.stream.Collectors;

/** Days in words, the same whatever language the machine is set to. */
public final class DateRangeFormatter {
  private static final List<String> MONTHS =
      List.of(
          "January",
          "February",
          "March",
          "April",
          "May",
          "June",
          "July",
          "August",
          "September",
          "October",
          "November",
          "December");

  private DateRangeFormatter() {}

  /** Returns a day as in "12 March 1935". */
  public static String of(LocalDate day) {
    return dayAndMonth(day) + " " + day.getYear();
  }

  /** Returns a span as in "May 1934", "from 12 March 1935" or "1 May to 4 June 1934". */
  public static String of(DateRange span) {
    if (span.openStart()) {
      return span.openEnd() ? "any day" : "until " + of(span.last());
    }
    if (span.openEnd()) {
      return "from " + of(span.first());
    }
    LocalDate first = span.first();
    LocalDate last = span.last();
    boolean sameYear = first.getYear() == last.getYear();
    if (first.getDayOfYear() == 1 && last.getDayOfYear() == last.lengthOfYear()) {
      return sameYear ? "" + first.getYear() : first.getYear() + " to " + last.getYear();
    }
    if (first.getDayOfMonth() == 1 && last.getDayOfMonth() == last.lengthOfMonth()) {
      if (YearMonth.from(first).equals(YearMonth.from(last))) {
        return monthAndYear(first);
      }
      return (sameYear ? month(first.getMonthValue()) : monthAndYear(first))
          + " to "
          + monthAndYear(last);
    }
    if (first.equals(last)) {
      return of(first);
    }
    return (sameYear ? dayAndMonth(first) : of(first)) + " to " + of(last);
  }

  /** Returns the spans one after another, as in "May 1924, May 1934 or May 1944". */
  public static String of(DateRangeSet days) {
    List<String> words = days.spans().stream().map(DateRangeFormatter::of).toList();
    if (words.isEmpty()) {
      return "no day";
    }
    int last = words.size() - 1;
    return last == 0
        ? words.get(0)
        : words.stream().limit(last).collect(Collectors.joining(", ")) + " or " + words.get(last);
  }

  /** Returns a day as in "1935-03-12" (ISO 8601), {@code ..} for the end of an open span. */
  public static String iso(LocalDate day) {
    return day.equals(LocalDate.MIN) || day.equals(LocalDate.MAX) ? ".." : day.toString();
  }

  /** Returns a span as in "1934-05-01/1934-06-04" (ISO 8601-2, open ends as {@code ..}). */
  public static String iso(DateRange span) {
    return span.first().equals(span.last())
        ? iso(span.first())
        : iso(span.first()) + "/" + iso(span.last());
  }

  /** Returns the English name of a month, 1 to 12. */
  static String month(int number) {
    return MONTHS.get(number - 1);
  }

  private static String monthAndYear(LocalDate day) {
    return month(day.getMonthValue()) + " " + day.getYear();
  }

  private static String dayAndMonth(LocalDate day) {
    return day.getDayOfMonth() + " " + month(day.getMonthValue());
  }
}
