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
   * What one position gives.
   *
   * @param best the greatest credit that it lists, which it may turn out to give where nothing was
   *     assessed
   * @param share its part of the likely credit
   */
  record Position(Comparison comparison, BigFraction best, BigFraction share) {}

  /**
   * Joins what the positions give.
   *
   * @param positions at least one, their shares adding up to 1
   * @param notAssessed the likely part of the best credit of what was not assessed
   * @param floor the least credit that a position can give, by what is allowed for a departure
   */
  static Credits of(List<Position> positions, BigFraction notAssessed, BigFraction floor) {
    if (positions.size() == 1) {
      return of(positions.get(0), notAssessed, floor);
    }
    BigFraction low = BigFraction.ONE;
    BigFraction likely = BigFraction.ZERO;
    BigFraction high = BigFraction.ZERO;
    BigFraction best = BigFraction.ZERO;
    BigFraction worst = BigFraction.ONE;
    for (Position position : positions) {
      Credits one = of(position, notAssessed, floor);
      low = ExactMath.min(low, one.low());
      likely = likely.add(one.likely().multiply(position.share()));
      high = ExactMath.max(high, one.high());
      best = ExactMath.max(best, one.likely());
      worst = ExactMath.min(worst, one.likely());
    }
    return new Credits(verdict(positions), low, likely, high, best, worst);
  }

  private static Credits of(Position position, BigFraction notAssessed, BigFraction floor) {
    Comparison one = position.comparison();
    BigFraction credit = one.credit();
    return switch (one.verdict()) {
      case NOT_ASSESSED ->
          floored(
              one.verdict(),
              BigFraction.ZERO,
              notAssessed.multiply(position.best()),
              position.best(),
              floor);
      case UNDECIDED -> floored(one.verdict(), BigFraction.ZERO, credit, BigFraction.ONE, floor);
      default -> floored(one.verdict(), credit, credit, credit, floor);
    };
  }

  private static Credits floored(
      Verdict verdict, BigFraction low, BigFraction likely, BigFraction high, BigFraction floor) {
    BigFraction middle = ExactMath.max(likely, floor);
    return new Credits(
        verdict, ExactMath.max(low, floor), middle, ExactMath.max(high, floor), middle, middle);
  }

  private static Verdict verdict(List<Position> positions) {
    List<Verdict> verdicts =
        positions.stream().map(it -> it.comparison().verdict()).distinct().toList();
    return verdicts.size() == 1 ? verdicts.get(0) : Verdict.UNDECIDED;
  }

  /** Returns the credit as points, each figure rounded once. */
  ScoreRange of(long points) {
    return new ScoreRange(
        ExactMath.part(points, low), ExactMath.part(points, likely), ExactMath.part(points, high));
  }
}
