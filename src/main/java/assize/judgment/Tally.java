package assize.judgment;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Points earned out of points possible, in thousandths of a point, exact; an item that may apply
 * stands in the likely tally with half of both.
 */
public record Tally(BigFraction earned, BigFraction possible) {
  public static final Tally EMPTY = new Tally(BigFraction.ZERO, BigFraction.ZERO);

  /** Returns the sum of two tallies. */
  public Tally plus(Tally other) {
    return new Tally(earned.add(other.earned), possible.add(other.possible));
  }

  /** Says whether nothing counts. */
  public boolean isEmpty() {
    return possible.signum() == 0;
  }
}
