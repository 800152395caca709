package assize.judge;

import assize.judgment.Comparison;
import assize.measure.Conformity;
import assize.measure.GlossRange;
import assize.measure.GlossReading;
import assize.measure.Limits;
import assize.measure.Measured;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Measured values against limits (JCGM 106:2012). */
final class Sizes {
  private Sizes() {}

  static Comparison size(Measured found, Limits limits) {
    if (found.dimension() != limits.dimension()) {
      return Comparer.notShown(() -> found.text() + " is not a size of this kind");
    }
    double probability = Conformity.judge(found, limits).probability();
    return Comparer.probably(
        probability,
        () -> "measured " + found.text() + limits(found, limits) + probability(probability, found));
  }

  static Comparison gloss(GlossReading found, GlossRange range) {
    double probability = range.judge(found).probability();
    return Comparer.probably(
        probability,
        () ->
            "found: "
                + found.spoken()
                + side(found, range, probability)
                + (found.u() == 0 ? "" : ", standard uncertainty " + figure(found.u(), 3))
                + probability(probability, found.u()));
  }

  private static String side(GlossReading found, GlossRange range, double probability) {
    if (probability >= Conformity.MEETS) {
      return "";
    }
    boolean open = probability > Conformity.DEPARTS;
    if (range.isTooGlossy(found)) {
      return open ? ", may be too glossy" : ", too glossy: over-restored";
    }
    return !range.isTooDull(found) ? "" : open ? ", may be too dull" : ", too dull";
  }

  /** Words the limits in the unit of the finding, where that is another. */
  private static String limits(Measured found, Limits limits) {
    return found.unit() == limits.unit() ? "" : ", expected " + limits.textIn(found.unit());
  }

  private static String probability(double probability, Measured found) {
    return found.u() == 0
        ? ""
        : ", standard uncertainty "
            + figure(found.u() / found.unit().factor().doubleValue(), 5)
            + " "
            + found.unit().symbol()
            + probability(probability, found.u());
  }

  static String probability(double probability, double u) {
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

  /** Words a figure with at most so many decimals, without trailing zeros. */
  static String figure(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
