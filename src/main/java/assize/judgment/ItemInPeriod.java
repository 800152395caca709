package assize.judgment;

import assize.aspect.Verdict;
import assize.evidence.Ternary;
import java.util.List;

/**
 * One item within one stretch of build days.
 *
 * @param aspects those that some source speaks of; empty where the item does not apply
 * @param earned the sum of its aspects
 * @param withoutAllowances the same without allowances
 */
public record ItemInPeriod(
    Ternary applies,
    Verdict verdict,
    List<AspectJudgment> aspects,
    ScoreRange earned,
    ScoreRange withoutAllowances,
    long possible) {
  public ItemInPeriod {
    aspects = List.copyOf(aspects);
  }

  public ItemInPeriod(
      Ternary applies,
      Verdict verdict,
      List<AspectJudgment> aspects,
      ScoreRange earned,
      ScoreRange strict) {
    this(
        applies,
        verdict,
        aspects,
        earned,
        strict,
        aspects.stream().mapToLong(AspectJudgment::possible).sum());
  }
}
