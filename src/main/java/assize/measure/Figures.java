package assize.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Figures as people read them. */
public final class Figures {
  private static final int MOST_PLACES = 6;
  private static final BigInteger PLAIN = BigInteger.valueOf(1000);

  private Figures() {}

  /** Returns a credit or share: a short decimal, else a fraction, else rounded and marked so. */
  public static String number(BigFraction value) {
    Optional<BigDecimal> exact = terminating(value);
    if (exact.isPresent()) {
      return plain(exact.get());
    }
    if (value.getDenominator().compareTo(PLAIN) < 0 && value.getNumerator().compareTo(PLAIN) < 0) {
      return value.getNumerator() + "/" + value.getDenominator();
    }
    return "≈ " + plain(value.bigDecimalValue(4, RoundingMode.HALF_EVEN));
  }

  /** Returns a measured value, to four places, without trailing zeros. */
  public static String measure(double value) {
    return figure(value, 4).replace('-', '−');
  }

  /** Returns a figure with at most so many decimals, without trailing zeros. */
  public static String figure(double value, int decimals) {
    return plain(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN));
  }

  /** Returns a decimal without trailing zeros. */
  public static String plain(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }

  /** Returns {@code "1 source"} or {@code "2 sources"}. */
  public static String count(long count, String one, String several) {
    return count + " " + (count == 1 ? one : several);
  }

  /** Words how probable it is that something uncertain is right; nothing of what is certain. */
  public static String probability(double probability, double u) {
    if (u == 0) {
      return "";
    }
    if (probability > 0.9999) {
      return ", right with probability above 0.9999";
    }
    return probability < 0.0001
        ? ", right with probability below 0.0001"
        : ", right with probability " + figure(probability, 4);
  }

  private static Optional<BigDecimal> terminating(BigFraction value) {
    BigInteger power = BigInteger.TEN.pow(MOST_PLACES);
    BigInteger[] parts =
        value.getNumerator().multiply(power).divideAndRemainder(value.getDenominator());
    return parts[1].signum() == 0
        ? Optional.of(new BigDecimal(parts[0], MOST_PLACES))
        : Optional.empty();
  }
}
