package assize.evidence;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * What it would take to settle a dispute on one position by sources of one grade.
 *
 * @param position the position, counted from zero
 * @param gradeWeightThousandths the weight of the further sources' grade, 1 to 990 thousandths
 * @param further the least number of further independent sources that say just this position, 0 to
 *     {@value #MOST}; empty if even so many would not do
 */
public record EvidenceNeeded(int position, int gradeWeightThousandths, OptionalInt further) {
  /** The most further sources that are thought of. */
  public static final int MOST = 99;

  private static final BigInteger THOUSAND = BigInteger.valueOf(1000);

  /**
   * Returns what would settle it, for each position and, within it, for each grade in turn.
   *
   * @param positions how many positions are named
   * @param testimonies the sources there are
   * @param gradeWeights the grades' weights, 1 to 990 thousandths each
   * @param settledAt the belief that settles a dispute, 1 to 1000 thousandths
   */
  public static List<EvidenceNeeded> of(
      int positions, List<SimpleSupport> testimonies, List<Integer> gradeWeights, int settledAt) {
    return of(DempsterCombination.of(positions, testimonies), gradeWeights, settledAt);
  }

  /** Returns the same from evidence that is weighed already. */
  public static List<EvidenceNeeded> of(
      DempsterCombination weighing, List<Integer> gradeWeights, int settledAt) {
    List<EvidenceNeeded> ways = new ArrayList<>();
    for (int position = 0; position < weighing.positions(); position++) {
      for (int weight : gradeWeights) {
        OptionalInt further = further(weighing.exact(), 1L << position, weight, settledAt);
        ways.add(new EvidenceNeeded(position, weight, further));
      }
    }
    return List.copyOf(ways);
  }

  private static OptionalInt further(MassFunction now, long bit, int weight, int settledAt) {
    BigInteger plausibility = now.plausibility(bit);
    BigInteger belief = now.belief(bit);
    BigInteger agreement = now.agreement();
    BigInteger needed = BigInteger.valueOf(settledAt);
    BigInteger doubt = BigInteger.ONE;
    BigInteger whole = BigInteger.ONE;
    for (int further = 0; further <= MOST; further++) {
      // All further sources together give (whole - doubt) to the position and doubt to the frame,
      // so of what was plausible the first part now supports it and of the rest the second stays.
      BigInteger moved = whole.subtract(doubt).multiply(plausibility);
      BigInteger reached = moved.add(doubt.multiply(belief)).multiply(THOUSAND);
      if (reached.compareTo(moved.add(doubt.multiply(agreement)).multiply(needed)) >= 0) {
        return OptionalInt.of(further);
      }
      doubt = doubt.multiply(BigInteger.valueOf(1000 - weight));
      whole = whole.multiply(THOUSAND);
    }
    return OptionalInt.empty();
  }
}
