package assize.aspect;

import assize.measure.Lab;
import java.util.Optional;

/**
 * A color of the rule set.
 *
 * @param lab CIELAB (D65, 2°) of a good sample; without it the color is matched by eye alone
 * @param tolerance the greatest CIEDE2000 difference that still passes
 */
public record ColorChip(String id, String name, Optional<Lab> lab, double tolerance) {
  /** The tolerance of a color that says none. */
  public static final double USUAL_TOLERANCE = 3.0;
}
