package assize.date;

import assize.text.Parsed;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;

/** Reads one date of an EDTF text: a year, a month, a season or a day, with its qualifiers. */
final class EdtfDateReader {
  private static final String QUALIFIERS = "?~%";

  private EdtfDateReader() {}

  /** Reads a date that may have a time behind it. */
  static Parsed<EdtfDate> dateOrTime(String text) {
    int t = text.indexOf('T');
    if (t < 0) {
      return date(text);
    }
    String day = text.substring(0, t);
    String digits = day.startsWith("-") ? day.substring(1) : day;
    if (digits.length() != 10 || !digits.chars().allMatch(c -> c == '-' || digit((char) c))) {
      return Parsed.bad("only a whole day, as in 1985-04-12, has a time", 0, t);
    }
    return date(day)
        .then(
            date ->
                EdtfTime.read(text.substring(t + 1))
                    .match(
                        time -> Parsed.ok(date),
                        bad -> Parsed.bad(bad.reason(), t + 1, text.length() - t - 1)));
  }

  /** Reads a date without a time. */
  static Parsed<EdtfDate> date(String text) {
    int time = text.indexOf('T');
    if (time >= 0) {
      return Parsed.bad("intervals and sets are made of days, without times", time, 1);
    }
    int y = text.indexOf('Y');
    if (y >= 0) {
      return y == 0
          ? longYear(text)
          : Parsed.bad("Y comes first, before a year of more than four digits", y, 1);
    }
    int sign = text.length() > 0 && QUALIFIERS.indexOf(text.charAt(0)) >= 0 ? 1 : 0;
    boolean negative = text.startsWith("-", sign);
    int significant = text.indexOf('S');
    if (significant >= 0) {
      return shortYear(text, sign, negative, significant);
    }
    List<EdtfPart> parts = new ArrayList<>();
    int at = 0;
    while (at < text.length() || parts.isEmpty()) {
      if (parts.size() == 3) {
        return Parsed.bad("a date ends with its day", at, text.length() - at);
      }
      if (!parts.isEmpty()) {
        if (text.charAt(at) != '-') {
          return Parsed.bad(misplaced(text, at, parts.size()), at, 1);
        }
        at++;
      }
      int start = at;
      at = skip(text, at, QUALIFIERS);
      int minus = parts.isEmpty() && negative ? 1 : 0;
      int digits = at + minus;
      at = Math.min(digits, text.length());
      while (at < text.length() && (digit(text.charAt(at)) || text.charAt(at) == 'X')) {
        at++;
      }
      int end = at;
      int wanted = parts.isEmpty() ? 4 : 2;
      if (end - digits != wanted) {
        return Parsed.bad(length(parts.size(), end - digits), start, at - start);
      }
      at = skip(text, at, QUALIFIERS);
      parts.add(
          new EdtfPart(
              new DigitPattern(text.substring(digits, end)),
              digits,
              text.substring(start, digits - minus),
              text.substring(end, at)));
    }
    return new EdtfDateResolver(parts, negative).read();
  }

  private static Parsed<EdtfDate> longYear(String text) {
    int end = unqualified(text);
    return EdtfYear.prefixed(text.substring(0, end)).map(years -> year(years, text));
  }

  private static Parsed<EdtfDate> shortYear(
      String text, int sign, boolean negative, int significant) {
    int start = sign + (negative ? 1 : 0);
    boolean plain =
        significant == start + 4
            && text.substring(start, significant).chars().allMatch(c -> digit((char) c));
    if (!plain) {
      return Parsed.bad("S follows a year of four digits, as in 1950S2", significant, 1);
    }
    int year = Integer.parseInt(text, start, significant, 10);
    if (year == 0) {
      return Parsed.bad("year 0 has no significant digits", start, 4);
    }
    return EdtfYear.significant(year, negative, text.substring(0, unqualified(text)), significant)
        .map(years -> year(years, text));
  }

  private static EdtfDate year(EdtfYear.Years years, String text) {
    boolean approximate = text.indexOf('~') >= 0 || text.indexOf('%') >= 0;
    return EdtfDate.of(
        years.days(),
        approximate ? years.unit() : Period.ZERO,
        text.indexOf('?') >= 0 || text.indexOf('%') >= 0,
        approximate);
  }

  private static int unqualified(String text) {
    int end = text.length() - 1;
    return QUALIFIERS.indexOf(text.charAt(end)) >= 0 ? end : end + 1;
  }

  private static String misplaced(String text, int at, int parts) {
    char c = text.charAt(at);
    if (c == '.') {
      return "dots stand for an open end: ../1985, 1985/.. or, in a set, 1985..";
    }
    return "a "
        + (parts == 1 ? "year" : parts == 2 ? "month" : "day")
        + " cannot be followed by "
        + c;
  }

  private static String length(int part, int length) {
    if (part > 0) {
      return length == 0
          ? (part == 1 ? "a month" : "a day") + " is missing here"
          : (part == 1 ? "a month" : "a day") + " has two digits";
    }
    if (length == 0) {
      return "a year is missing here";
    }
    return length > 4
        ? "a year of more than four digits begins with Y, as in Y12345"
        : "a year has four digits";
  }

  private static int skip(String text, int at, String of) {
    return at < text.length() && of.indexOf(text.charAt(at)) >= 0 ? at + 1 : at;
  }

  private static boolean digit(char c) {
    return c >= '0' && c <= '9';
  }
}
