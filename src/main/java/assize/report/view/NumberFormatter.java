package assize.report.view;

import assize.judgment.ScoreRange;
import assize.measure.Figures;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;

/** Numbers as the report prints them. */
public final class NumberFormatter {
  private static final int MOST_PLACES = 6;

  private NumberFormatter() {}

  /** Returns thousandths of a point as points, exact, without trailing zeros. */
  public static String points(long thousandths) {
    return Figures.plain(BigDecimal.valueOf(thousandths, 3));
  }

  /** Returns thousandths of a point as points, exact where six places suffice. */
  public static String points(BigFraction thousandths) {
    return number(thousandths.divide(1000));
  }

  /** Returns {@code "2"}, or {@code "0 to 2"} where something is open. */
  public static String range(ScoreRange range) {
    return range.isPoint()
        ? points(range.low())
        : points(range.low()) + " to " + points(range.high());
  }

  /** Returns a credit or share: a short decimal, else a fraction, else rounded and marked so. */
  public static String number(BigFraction value) {
    return Figures.number(value);
  }

  /** Returns a mass: exact where six places suffice, else rounded to six. */
  static String exact(BigFraction mass) {
    return Figures.plain(mass.bigDecimalValue(MOST_PLACES, RoundingMode.HALF_EVEN));
  }

  /** Returns a belief, plausibility or share to three places. */
  public static String mass(double value) {
    return BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_EVEN).toPlainString();
  }

  /** Returns a measured value, to four places, without trailing zeros. */
  public static String measure(double value) {
    return Figures.measure(value);
  }

  /** Returns {@code "1 source"} or {@code "2 sources"}. */
  public static String count(long count, String one, String several) {
    return Figures.count(count, one, several);
  }

  /** Returns a file's length: bytes, kilobytes of 1000 bytes, or megabytes to one place. */
  static String bytes(long bytes) {
    if (bytes < 1000) {
      return count(bytes, "byte", "bytes");
    }
    return bytes < 1_000_000
        ? Math.round(bytes / 1000.0) + " KB"
        : Figures.plain(BigDecimal.valueOf(bytes, 6).setScale(1, RoundingMode.HALF_EVEN)) + " MB";
  }
}
