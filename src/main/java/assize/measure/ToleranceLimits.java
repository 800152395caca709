package assize.measure;

import assize.text.Parsed;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The sizes that are right, limits included: {@code 3/32 in ± 1/64 in}.
 *
 * @param lower the least, in the base unit of the dimension
 * @param upper the greatest, in the base unit of the dimension
 * @param dimension what is measured
 * @param unit the unit in which the rule set speaks
 * @param text as written, with spaces and the sign ± made uniform
 */
public record ToleranceLimits(
    Optional<BigFraction> lower,
    Optional<BigFraction> upper,
    Dimension dimension,
    Unit unit,
    String text) {
  public ToleranceLimits {
    if (lower.isPresent() && upper.isPresent() && lower.get().compareTo(upper.get()) > 0) {
      throw new IllegalArgumentException("limits run backward: " + text);
    }
    if (unit.dimension() != dimension) {
      throw new IllegalArgumentException(unit + " does not measure " + dimension);
    }
  }

  /**
   * Reads a size and its tolerance, a range, a gauge, or a bound.
   *
   * <p>For example {@code 3/32 in +1/64 in -0 in}, {@code 2 to 3 mm}, {@code 12 V ± 5 %}, {@code 18
   * SWG}, {@code at least 5 mm}. A size alone has to be met exactly. A tolerance is in the size's
   * own unit unless it names another.
   */
  public static Parsed<ToleranceLimits> parse(String text) {
    return new SizeReader(text).limits();
  }

  /** Returns whether an exactly known value, in base units, is within; the limits are. */
  public boolean contains(BigFraction base) {
    return lower.map(l -> base.compareTo(l) >= 0).orElse(true)
        && upper.map(u -> base.compareTo(u) <= 0).orElse(true);
  }

  /** Returns the limits in one of the dimension's units: {@code 5/64 in to 7/64 in}. */
  public String textIn(Unit other) {
    Optional<String> least = lower.map(l -> Quantity.ofBase(l, other).text());
    Optional<String> most = upper.map(u -> Quantity.ofBase(u, other).text());
    if (least.isPresent() && most.isPresent()) {
      return least.equals(most) ? least.get() : least.get() + " to " + most.get();
    }
    return least.map(l -> "at least " + l).or(() -> most.map(m -> "at most " + m)).orElse("any");
  }
}
