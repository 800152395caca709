package assize.judge;

import java.math.BigInteger;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;

/** Exact figures, and the one place where they are rounded. */
final class Exact {
  private Exact() {}

  /** Rounds to a whole number, half to even. */
  static long round(BigFraction exact) {
    return exact.bigDecimalValue(0, RoundingMode.HALF_EVEN).longValueExact();
  }

  /** Returns a share of points in whole thousandths, rounded half to even. */
  static long part(long points, BigFraction credit) {
    return round(credit.multiply(BigInteger.valueOf(points)));
  }

  /** Returns a probability as a credit of four decimals, as it is printed. */
  static BigFraction credit(double probability) {
    return BigFraction.of(
        BigInteger.valueOf(Math.round(probability * 10_000)), BigInteger.valueOf(10_000));
  }

  static BigFraction of(long numerator, long denominator) {
    return BigFraction.of(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
  }

  static BigFraction max(BigFraction a, BigFraction b) {
    return a.compareTo(b) >= 0 ? a : b;
  }

  static BigFraction min(BigFraction a, BigFraction b) {
    return a.compareTo(b) <= 0 ? a : b;
  }
}
