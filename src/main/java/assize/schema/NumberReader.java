package assize.schema;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** Numbers as people write them: digits of ASCII, a point, a slash, a percent sign. */
public final class NumberReader {
  private static final Pattern FRACTION = Pattern.compile("([0-9]{1,9})\\s?/\\s?([0-9]{1,9})");
  private static final Pattern DECIMAL = Pattern.compile("[+-]?[0-9]{1,12}(?:\\.[0-9]{1,12})?");
  private static final Pattern WHOLE = Pattern.compile("[0-9]{1,15}");

  private NumberReader() {}

  /** Reads {@code 1/2}, {@code 0.5} or {@code 50 %}, exactly. */
  public static Optional<BigFraction> fraction(String text) {
    String stripped = text.strip();
    if (isPlain(stripped)) {
      return Optional.of(BigFraction.of(Integer.parseInt(stripped)));
    }
    Matcher fraction = FRACTION.matcher(stripped);
    if (fraction.matches()) {
      BigInteger over = new BigInteger(fraction.group(2));
      return over.signum() == 0
          ? Optional.empty()
          : Optional.of(BigFraction.of(new BigInteger(fraction.group(1)), over));
    }
    boolean percent = stripped.endsWith("%");
    String digits = percent ? stripped.substring(0, stripped.length() - 1).strip() : stripped;
    if (!DECIMAL.matcher(digits).matches()) {
      return Optional.empty();
    }
    BigDecimal value = new BigDecimal(digits);
    return Optional.of(
        BigFraction.of(
            value.unscaledValue(), BigInteger.TEN.pow(value.scale() + (percent ? 2 : 0))));
  }

  /** Says whether a text is digits alone, few enough for any number to hold. */
  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) < '0' || text.charAt(i) > '9') {
        return false;
      }
    }
    return !text.isEmpty() && text.length() <= 9;
  }

  /** Reads a decimal number. */
  public static Optional<Double> decimal(String text) {
    String stripped = text.strip();
    return DECIMAL.matcher(stripped).matches()
        ? Optional.of(Double.parseDouble(stripped))
        : Optional.empty();
  }

  /** Reads a whole number, zero or more. */
  public static Optional<Long> whole(String text) {
    String stripped = text.strip();
    return WHOLE.matcher(stripped).matches()
        ? Optional.of(Long.parseLong(stripped))
        : Optional.empty();
  }

  public static String plain(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }
}
