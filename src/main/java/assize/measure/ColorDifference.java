package assize.measure;

import java.util.OptionalDouble;

/**
 * How far one color is from another, by CIEDE2000.
 *
 * @param de00 the whole difference ΔE00, zero or more; about 1 is just seen side by side
 * @param dL ΔL′: above zero, the second is lighter
 * @param dC ΔC′: above zero, the second is stronger
 * @param dH ΔH′: above zero, the second is turned from red toward yellow, green, blue
 */
public record ColorDifference(double de00, double dL, double dC, double dH) {

  /**
   * Returns how probable it is that a difference is within a tolerance.
   *
   * @param de ΔE00 as measured
   * @param u its standard uncertainty; with zero the comparison is plain, the limit included
   * @param tolerance the greatest difference that is right
   */
  public static double withinTolerance(double de, double u, double tolerance) {
    return Conformity.probability(de, u, OptionalDouble.empty(), OptionalDouble.of(tolerance));
  }
}
