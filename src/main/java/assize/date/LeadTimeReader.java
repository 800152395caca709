package assize.date;

import assize.text.Parsed;
import java.time.LocalDate;
import java.time.Period;

/** Reads lead times: ISO 8601 durations of whole years, months, weeks and days. */
final class LeadTimeReader {
  private static final String UNITS = "YMWD";
  private static final int MOST_DIGITS = 4;

  private LeadTimeReader() {}

  static Parsed<LeadTime> read(String text) {
    int dots = text.indexOf("..");
    if (dots < 0) {
      return Parsed.bad("write two lengths with .. between, as in P6M..P0D", 0, text.length());
    }
    Parsed<Period> longest = period(text.substring(0, dots));
    Parsed<Period> shortest =
        period(text.substring(dots + 2)).match(Parsed::ok, bad -> bad.<Period>within(dots + 2));
    return longest.then(a -> shortest.then(b -> pair(text, a, b)));
  }

  private static Parsed<LeadTime> pair(String text, Period longest, Period shortest) {
    LocalDate from = LocalDate.of(2000, 1, 1);
    boolean ordered =
        from.datesUntil(from.plusYears(4))
            .noneMatch(built -> built.minus(longest).isAfter(built.minus(shortest)));
    return ordered
        ? Parsed.ok(new LeadTime(longest, shortest))
        : Parsed.bad("write the longer of the two first, as in P6M..P0D", 0, text.length());
  }

  private static Parsed<Period> period(String text) {
    if (!text.startsWith("P")) {
      return Parsed.bad(
          text.isEmpty() ? "a length is missing here" : "a length begins with P, as in P6M",
          0,
          Math.min(1, text.length()));
    }
    Period total = Period.ZERO;
    int nextUnit = 0;
    int at = 1;
    do {
      int start = at;
      while (at < text.length() && digit(text.charAt(at))) {
        at++;
      }
      if (at == start) {
        return Parsed.bad(
            "a number is missing here, as in P6M", at, Math.min(1, text.length() - at));
      }
      if (at - start > MOST_DIGITS) {
        return Parsed.bad("the number is too large", start, at - start);
      }
      if (at == text.length()) {
        return Parsed.bad("a unit is missing here: Y, M, W or D", at, 0);
      }
      int unit = UNITS.indexOf(text.charAt(at));
      if (unit < 0) {
        return Parsed.bad("the units are Y, M, W and D, in capitals", at, 1);
      }
      if (unit < nextUnit) {
        return Parsed.bad("each unit comes once, in the order Y, M, W, D", at, 1);
      }
      total = total.plus(of(Integer.parseInt(text, start, at, 10), unit));
      nextUnit = unit + 1;
      at++;
    } while (at < text.length());
    return Parsed.ok(total);
  }

  private static Period of(int number, int unit) {
    return switch (unit) {
      case 0 -> Period.ofYears(number);
      case 1 -> Period.ofMonths(number);
      case 2 -> Period.ofWeeks(number);
      default -> Period.ofDays(number);
    };
  }

  private static boolean digit(char c) {
    return c >= '0' && c <= '9';
  }
}
