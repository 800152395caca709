package assize.measure;

import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Limits made ready to judge many measured sizes: what is plain is told by doubles, what is close
 * to a limit or to a probability that decides is worked out exactly.
 */
public final class ReadyLimits {
  /** How far doubles are trusted, as a part of the greatest figure that is compared. */
  private static final double CLOSE = 1e-12;

  /** How far a probability worked out by doubles is trusted. */
  private static final double CLOSE_PROBABILITY = 1e-6;

  private final Limits limits;
  private final double lower;
  private final double upper;

  public ReadyLimits(Limits limits) {
    this.limits = limits;
    this.lower = near(limits.lower(), Double.NEGATIVE_INFINITY);
    this.upper = near(limits.upper(), Double.POSITIVE_INFINITY);
  }

  private static double near(Optional<BigFraction> limit, double none) {
    return limit.map(BigFraction::doubleValue).orElse(none);
  }

  /** Says whether a size is of the kind that is limited. */
  public boolean measures(Measured measured) {
    return measured.dimension() == limits.dimension();
  }

  /**
   * Says how probable it is that a size is within, on the right side of {@link Conformity#MEETS}
   * and of {@link Conformity#DEPARTS}; how much on that side is told by {@link Conformity#judge}.
   *
   * @throws IllegalArgumentException if the two measure different things
   */
  public double probability(Measured measured) {
    double value = measured.near();
    double below = value - lower;
    double above = upper - value;
    double close = CLOSE * Math.max(1, Math.abs(value) + finite(lower) + finite(upper));
    boolean trusted = !(Math.abs(below) <= close) && !(Math.abs(above) <= close);
    if (trusted && measures(measured)) {
      if (measured.u() == 0) {
        return below > 0 && above > 0 ? 1 : 0;
      }
      if (lower <= upper && close < CLOSE_PROBABILITY * measured.u()) {
        double near =
            Conformity.probability(
                value, measured.u(), OptionalDouble.of(lower), OptionalDouble.of(upper));
        if (!isClose(near, Conformity.MEETS) && !isClose(near, Conformity.DEPARTS)) {
          return near;
        }
      }
    }
    return Conformity.judge(measured, limits).probability();
  }

  private static boolean isClose(double probability, double deciding) {
    return Math.abs(probability - deciding) < CLOSE_PROBABILITY;
  }

  private static double finite(double limit) {
    return Double.isInfinite(limit) ? 0 : Math.abs(limit);
  }
}
