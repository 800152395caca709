package assize.judge;

import assize.aspect.Comparison;
import assize.aspect.Verdict;
import assize.judgment.ScoreRange;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The credit of one aspect over the positions that it is judged by.
 *
 * @param bestPosition the credit under the position that suits the vehicle best
 * @param worstPosition the credit under the one that suits it least
 */
record Credits(
    Verdict verdict,
    BigFraction low,
    BigFraction likely,
    BigFraction high,
    BigFraction bestPosition,
    BigFraction worstPosition) {

  /**
   * Joins what the positions give.
   *
   * @param comparisons at least one
   * @param shares of the same length, adding up to 1
   * @param notShown the likely credit of what was not shown
   */
  static Credits of(List<Comparison> comparisons, List<BigFraction> shares, BigFraction notShown) {
    if (comparisons.size() == 1) {
      return of(comparisons.get(0), notShown);
    }
    BigFraction low = BigFraction.ONE;
    BigFraction likely = BigFraction.ZERO;
    BigFraction high = BigFraction.ZERO;
    BigFraction best = BigFraction.ZERO;
    BigFraction worst = BigFraction.ONE;
    for (int i = 0; i < comparisons.size(); i++) {
      Credits one = of(comparisons.get(i), notShown);
      low = ExactMath.min(low, one.low());
      likely = likely.add(one.likely().multiply(shares.get(i)));
      high = ExactMath.max(high, one.high());
      best = ExactMath.max(best, one.likely());
      worst = ExactMath.min(worst, one.likely());
    }
    return new Credits(verdict(comparisons), low, likely, high, best, worst);
  }

  private static Credits of(Comparison one, BigFraction notShown) {
    boolean undecided = one.verdict() == Verdict.UNDECIDED || one.verdict() == Verdict.NOT_ASSESSED;
    BigFraction middle = one.verdict() == Verdict.NOT_ASSESSED ? notShown : one.credit();
    return new Credits(
        one.verdict(),
        undecided ? BigFraction.ZERO : middle,
        middle,
        undecided ? BigFraction.ONE : middle,
        middle,
        middle);
  }

  private static Verdict verdict(List<Comparison> comparisons) {
    List<Verdict> verdicts = comparisons.stream().map(Comparison::verdict).distinct().toList();
    return verdicts.size() == 1 ? verdicts.get(0) : Verdict.UNDECIDED;
  }

  /** Returns the same with no credit under an allowance. */
  Credits atLeast(BigFraction allowed) {
    return new Credits(
        verdict,
        ExactMath.max(low, allowed),
        ExactMath.max(likely, allowed),
        ExactMath.max(high, allowed),
        bestPosition,
        worstPosition);
  }

  /** Returns the credit as points, each figure rounded once. */
  ScoreRange of(long points) {
    return new ScoreRange(
        ExactMath.part(points, low), ExactMath.part(points, likely), ExactMath.part(points, high));
  }
}
