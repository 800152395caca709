package assize.measure;

import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How probable it is that a measured value is within its limits (JCGM 106:2012, clause 7).
 *
 * @param probability from 0 to 1
 * @param exact whether nothing was uncertain: then the probability is 0 or 1
 */
public record Conformity(double probability, boolean exact) {
  /** At or above this probability, in ten-thousandths, a value meets its limits. */
  private static final long MEETS = 9_500;

  /** At or below this probability, in ten-thousandths, a value departs from its limits. */
  private static final long DEPARTS = 500;

  public Conformity {
    if (!(probability >= 0 && probability <= 1)) {
      throw new IllegalArgumentException("not a probability: " + probability);
    }
  }

  public boolean meets() {
    return meets(probability);
  }

  public boolean departs() {
    return departs(probability);
  }

  /** Returns a probability in ten-thousandths, as it is printed and compared. */
  public static long tenThousandths(double probability) {
    return Math.round(probability * 10_000);
  }

  /** Says whether a value of this probability meets its limits. */
  public static boolean meets(double probability) {
    return tenThousandths(probability) >= MEETS;
  }

  /** Says whether a value of this probability departs from its limits. */
  public static boolean departs(double probability) {
    return tenThousandths(probability) <= DEPARTS;
  }

  /**
   * Returns Φ((U−y)/u) − Φ((L−y)/u); with u = 0, one or zero, limits included.
   *
   * @param y the value measured
   * @param u its standard uncertainty, zero or more
   * @param lower L, the least that is right
   * @param upper U, the greatest that is right
   */
  public static double probability(double y, double u, OptionalDouble lower, OptionalDouble upper) {
    double least = lower.orElse(Double.NEGATIVE_INFINITY);
    double most = upper.orElse(Double.POSITIVE_INFINITY);
    if (!(u >= 0) || !(least <= most)) {
      throw new IllegalArgumentException("u = " + u + ", limits " + least + " to " + most);
    }
    if (u == 0) {
      return least <= y && y <= most ? 1 : 0;
    }
    double share = NormalDistribution.between((least - y) / u, (most - y) / u);
    return Math.max(0, Math.min(1, share));
  }

  /**
   * Judges a measured size; without uncertainty the comparison is exact.
   *
   * @throws IllegalArgumentException if the two measure different things
   */
  public static Conformity judge(MeasuredSize measured, ToleranceLimits limits) {
    if (measured.dimension() != limits.dimension()) {
      throw new IllegalArgumentException(
          measured.dimension() + " measured, " + limits.dimension() + " wanted");
    }
    if (measured.u() == 0) {
      return new Conformity(limits.contains(measured.value()) ? 1 : 0, true);
    }
    // Differences are taken exactly: a large value may have limits very close together.
    OptionalDouble lower = difference(limits.lower(), measured.value());
    OptionalDouble upper = difference(limits.upper(), measured.value());
    return new Conformity(probability(0, measured.u(), lower, upper), false);
  }

  private static OptionalDouble difference(Optional<BigFraction> limit, BigFraction value) {
    return limit
        .map(l -> OptionalDouble.of(l.subtract(value).doubleValue()))
        .orElse(OptionalDouble.empty());
  }
}
