package assize.measure;

import assize.text.Parsed;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A size as measured, with how well it is known.
 *
 * @param value the value read, in the base unit of the dimension
 * @param near the double that is nearest to it
 * @param u its standard uncertainty in the same unit, zero where nothing is said of it
 * @param dimension what was measured
 * @param unit the unit in which it was read
 * @param text as written, with spaces and the sign ± made uniform
 */
public record MeasuredSize(
    BigFraction value, double near, double u, Dimension dimension, Unit unit, String text) {

  /** Makes one of what was read. */
  public MeasuredSize(BigFraction value, double u, Dimension dimension, Unit unit, String text) {
    this(value, value.doubleValue(), u, dimension, unit, text);
  }

  public MeasuredSize {
    if (!(u >= 0) || Double.isInfinite(u)) {
      throw new IllegalArgumentException("not a standard uncertainty: " + u);
    }
    if (unit.dimension() != dimension) {
      throw new IllegalArgumentException(unit + " does not measure " + dimension);
    }
  }

  /**
   * Reads a measured size: {@code 5/64 in}, {@code 2.38 mm ± 0.02 mm}, {@code 2.4 mm, to 0.1 mm}.
   *
   * <p>What follows ± is an expanded uncertainty with k = 2 unless another is named: {@code (k=1)}.
   * What follows {@code to} is the instrument's resolution.
   */
  public static Parsed<MeasuredSize> parse(String text) {
    return new SizeReader(text).measured();
  }

  /**
   * Makes a measured size out of its parts.
   *
   * @param value what was read
   * @param plusMinus its expanded uncertainty, k = 2
   * @param resolution the instrument's finest step, used where no uncertainty is given
   * @throws IllegalArgumentException if the parts measure different things or are below zero
   */
  public static MeasuredSize of(
      Quantity value, Optional<Quantity> plusMinus, Optional<Quantity> resolution) {
    Unit unit = value.unit();
    double expanded = plusMinus.map(q -> q.in(unit).inBase().doubleValue() / 2).orElse(0.0);
    double step = resolution.map(q -> ofResolution(q.in(unit).inBase())).orElse(0.0);
    String text =
        value.text()
            + plusMinus.map(q -> " ± " + q.text()).orElse("")
            + (plusMinus.isPresent() ? "" : resolution.map(q -> ", to " + q.text()).orElse(""));
    double u = plusMinus.isPresent() ? expanded : step;
    return new MeasuredSize(value.inBase(), u, unit.dimension(), unit, text);
  }

  /**
   * The standard uncertainty of a value known to one step: a uniform distribution one step wide.
   */
  static double ofResolution(BigFraction step) {
    return step.doubleValue() / Math.sqrt(12);
  }

  /** Returns the value in one of the dimension's units. */
  public Quantity in(Unit other) {
    return Quantity.ofBase(value, other);
  }
}
