package assize.date;

import assize.text.Parsed;
import java.math.BigInteger;
import java.time.LocalDate;
import java.time.Period;
import java.util.Optional;

/** Reads years that stand alone: those that begin with Y, and those of few significant digits. */
final class EdtfYear {
  /** The calendar here has one year more on each side; those mean "open". */
  private static final int FARTHEST = 999_999_998;

  private static final int MOST_EXPONENT_DIGITS = 2;
  private static final int MOST_DIGITS = 12;

  private EdtfYear() {}

  /** The years a text can mean, and how many it leaves open. */
  record Years(int first, int last, int size) {
    DateRangeSet days() {
      return DateRangeSet.of(DateRange.of(LocalDate.of(first, 1, 1), LocalDate.of(last, 12, 31)));
    }

    Period unit() {
      return Period.ofYears(size);
    }
  }

  /** Reads {@code Y}, perhaps a minus sign, digits, perhaps {@code E} and {@code S} with digits. */
  static Parsed<Years> prefixed(String text) {
    boolean negative = text.startsWith("-", 1);
    int start = negative ? 2 : 1;
    int end = digits(text, start);
    if (end == start) {
      return Parsed.bad("a year is missing after Y", start, 0);
    }
    Optional<String> exponent = after(text, end, 'E');
    int next = end + exponent.map(e -> e.length() + 1).orElse(0);
    Optional<String> significant = after(text, next, 'S');
    int stop = next + significant.map(s -> s.length() + 1).orElse(0);
    if (stop < text.length()) {
      return Parsed.bad(
          "a year written with Y stands alone, without month or day", stop, text.length() - stop);
    }
    String mantissa = text.substring(start, end);
    if (exponent.filter(String::isEmpty).isPresent()) {
      return Parsed.bad("a number is missing after E", next, 0);
    }
    if (mantissa.startsWith("0")) {
      return Parsed.bad("a year written with Y does not begin with 0", start, 1);
    }
    if (exponent.isEmpty() && mantissa.length() < 5) {
      return Parsed.bad("a year of four digits is written without Y", 0, 1);
    }
    if (mantissa.length() > MOST_DIGITS
        || exponent.filter(e -> e.length() > MOST_EXPONENT_DIGITS).isPresent()) {
      return tooFar(text);
    }
    BigInteger value =
        BigInteger.TEN
            .pow(exponent.map(Integer::parseInt).orElse(0))
            .multiply(new BigInteger(mantissa));
    if (value.compareTo(BigInteger.valueOf(FARTHEST)) > 0) {
      return tooFar(text);
    }
    if (value.compareTo(BigInteger.valueOf(9999)) <= 0) {
      return Parsed.bad("a year of four digits is written without Y and E", 0, text.length());
    }
    return significant(value.intValue(), negative, significant, next);
  }

  /** Reads the {@code S2} of {@code 1950S2}, which begins at {@code at}. */
  static Parsed<Years> significant(int year, boolean negative, String text, int at) {
    Optional<String> digits = after(text, at, 'S');
    int stop = at + digits.map(s -> s.length() + 1).orElse(0);
    return stop < text.length()
        ? Parsed.bad("after S comes only a number of digits", stop, text.length() - stop)
        : significant(year, negative, digits, at);
  }

  private static Parsed<Years> significant(
      int year, boolean negative, Optional<String> digits, int at) {
    int length = Integer.toString(year).length();
    if (digits.isEmpty()) {
      return Parsed.ok(years(year, 1, negative));
    }
    String written = digits.get();
    if (written.isEmpty() || written.length() > 1 || written.equals("0")) {
      return Parsed.bad("after S comes a number from 1 to 9", at, written.length() + 1);
    }
    int known = Integer.parseInt(written);
    if (known > length) {
      return Parsed.bad("the year has only " + length + " digits", at + 1, written.length());
    }
    int size = BigInteger.TEN.pow(length - known).intValueExact();
    return Parsed.ok(years(year, size, negative));
  }

  private static Years years(int year, int size, boolean negative) {
    int low = year - year % size;
    int high = Math.min(low + size - 1, FARTHEST);
    return negative ? new Years(-high, -low, size) : new Years(low, high, size);
  }

  private static Parsed<Years> tooFar(String text) {
    return Parsed.bad("years here go from -999999998 to 999999998", 0, text.length());
  }

  private static Optional<String> after(String text, int at, char letter) {
    return at < text.length() && text.charAt(at) == letter
        ? Optional.of(text.substring(at + 1, digits(text, at + 1)))
        : Optional.empty();
  }

  private static int digits(String text, int from) {
    int at = from;
    while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
      at++;
    }
    return at;
  }
}
