package assize.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A number of units, exact: {@code 3/32 in}.
 *
 * @param value how many units
 * @param unit the unit
 */
public record Quantity(BigFraction value, Unit unit) {
  private static final BigInteger FINEST_FRACTION = BigInteger.valueOf(128);
  private static final BigInteger MILLION = BigInteger.TEN.pow(6);

  /** Makes a quantity out of a value in the base unit of the unit's dimension. */
  static Quantity ofBase(BigFraction base, Unit unit) {
    return new Quantity(base.divide(unit.factor()), unit);
  }

  /** Returns the value in the base unit of its dimension, exactly. */
  public BigFraction inBase() {
    return value.multiply(unit.factor());
  }

  /**
   * Returns the same quantity in another unit, exactly.
   *
   * @throws IllegalArgumentException if the unit measures something else
   */
  public Quantity in(Unit other) {
    if (other.dimension() != unit.dimension()) {
      throw new IllegalArgumentException(
          unit + " measures " + unit.dimension() + ", " + other + " " + other.dimension());
    }
    return ofBase(inBase(), other);
  }

  /**
   * Returns the quantity as a judge writes it: {@code 1 1/2 in}, {@code 2.4 mm}, {@code 27°}.
   *
   * <p>Inches, feet and yards stay fractions down to 1/128; other values are decimal, exact up to
   * six places, else rounded half-even to four significant digits and marked {@code ≈}.
   */
  public String text() {
    return number(value, unit.isInch()) + (unit == Unit.DEG ? "" : " ") + unit.symbol();
  }

  static String number(BigFraction value, boolean fractions) {
    BigInteger denominator = value.getDenominator();
    boolean powerOfTwo = denominator.bitCount() == 1;
    if (fractions && powerOfTwo && denominator.compareTo(FINEST_FRACTION) <= 0) {
      return fraction(value);
    }
    BigDecimal numerator = new BigDecimal(value.getNumerator());
    if (MILLION.mod(denominator).signum() == 0) {
      BigDecimal exact = numerator.divide(new BigDecimal(denominator));
      return plain(exact);
    }
    MathContext four = new MathContext(4, RoundingMode.HALF_EVEN);
    return "≈" + plain(numerator.divide(new BigDecimal(denominator), four));
  }

  private static String fraction(BigFraction value) {
    BigInteger[] parts = value.getNumerator().abs().divideAndRemainder(value.getDenominator());
    String sign = value.signum() < 0 ? "-" : "";
    if (parts[1].signum() == 0) {
      return sign + parts[0];
    }
    String whole = parts[0].signum() == 0 ? "" : parts[0] + " ";
    return sign + whole + parts[1] + "/" + value.getDenominator();
  }

  private static String plain(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }
}
