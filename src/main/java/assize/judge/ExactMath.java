package assize.judge;

import java.math.BigInteger;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;

/** Exact figures, and the one place where they are rounded. */
final class ExactMath {
  private ExactMath() {}

  /** Rounds to a whole number, half to even. */
  static long round(BigFraction exact) {
    return exact.bigDecimalValue(0, RoundingMode.HALF_EVEN).longValueExact();
  }

  /** Returns a share of points in whole thousandths, rounded half to even. */
  static long part(long points, BigFraction credit) {
    BigInteger numerator = credit.getNumerator();
    BigInteger denominator = credit.getDenominator();
    return numerator.bitLength() < Long.SIZE && denominator.bitLength() < Long.SIZE
        ? part(points, numerator.longValue(), denominator.longValue())
        : round(credit.multiply(BigInteger.valueOf(points)));
  }

  /** Does the same for a share that is told by two whole numbers, the second above zero. */
  static long part(long points, long numerator, long denominator) {
    long high = Math.multiplyHigh(points, numerator);
    long exact = points * numerator;
    if (points < 0 || numerator < 0 || high != 0 || exact < 0) {
      return round(of(numerator, denominator).multiply(BigInteger.valueOf(points)));
    }
    long whole = exact / denominator;
    long twice = Long.compareUnsigned(2 * (exact % denominator), denominator);
    return twice > 0 || twice == 0 && (whole & 1) == 1 ? whole + 1 : whole;
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
