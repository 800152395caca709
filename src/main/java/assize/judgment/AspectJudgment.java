package assize.judgment;

import assize.aspect.Verdict;
import assize.evidence.DisputeState;
import assize.ruleset.AspectRule;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One aspect of one item, within one stretch of build days.
 *
 * @param conflict the conflict mass K of Dempster's rule, 0 to 1
 * @param unassigned the mass that no source assigns, 0 to 1
 * @param positions what sources hold, those judged by first
 * @param sources every source that speaks here, and what it comes to
 * @param low the least credit; likely and high accordingly; allowances included
 * @param allowed the credit that an allowed departure keeps, where one counts
 * @param earned in thousandths of a point, allowances included
 * @param withoutAllowances the same without allowances
 * @param pointsAtStake points that ride on the dispute: between the best and the worst position
 *     judged by
 */
public record AspectJudgment(
    AspectRule rule,
    Verdict verdict,
    DisputeState dispute,
    double conflict,
    double unassigned,
    List<PositionJudgment> positions,
    List<SourceJudgment> sources,
    BigFraction low,
    BigFraction likely,
    BigFraction high,
    Optional<BigFraction> allowed,
    ScoreRange earned,
    ScoreRange withoutAllowances,
    long pointsAtStake) {
  public AspectJudgment {
    positions = List.copyOf(positions);
    sources = List.copyOf(sources);
  }

  /** Returns the points possible, in thousandths. */
  public long possible() {
    return rule.possible();
  }
}
