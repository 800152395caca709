package assize.judge;

import assize.aspect.Verdict;
import assize.judgment.AspectJudgment;
import assize.judgment.ScoreRange;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One aspect judged several times, since a fact is not known on which it depends whether a source
 * speaks: the least, the mean and the greatest of what each case gives, the cases equally likely.
 */
final class UnknownFactCases {
  private UnknownFactCases() {}

  /** Joins the cases; the positions shown are those of the first that is most disputed. */
  static Optional<AspectJudgment> joined(List<AspectJudgment> cases) {
    if (cases.isEmpty()) {
      return Optional.empty();
    }
    AspectJudgment first =
        cases.stream()
            .reduce((a, b) -> b.dispute().rank() > a.dispute().rank() ? b : a)
            .orElseThrow();
    List<Verdict> verdicts = cases.stream().map(AspectJudgment::verdict).distinct().toList();
    BigFraction low = cases.stream().map(AspectJudgment::low).reduce(ExactMath::min).orElseThrow();
    BigFraction high =
        cases.stream().map(AspectJudgment::high).reduce(ExactMath::max).orElseThrow();
    BigFraction likely =
        cases.stream()
            .map(AspectJudgment::likely)
            .reduce(BigFraction::add)
            .orElseThrow()
            .divide(cases.size());
    return Optional.of(
        new AspectJudgment(
            first.rule(),
            verdicts.size() == 1 ? verdicts.get(0) : Verdict.UNDECIDED,
            first.dispute(),
            first.conflict(),
            first.unassigned(),
            first.positions(),
            first.sources(),
            low,
            likely,
            high,
            first.allowed(),
            points(cases, AspectJudgment::earned),
            points(cases, AspectJudgment::withoutAllowances),
            cases.stream().mapToLong(AspectJudgment::pointsAtStake).max().orElse(0)));
  }

  private static ScoreRange points(
      List<AspectJudgment> cases, Function<AspectJudgment, ScoreRange> which) {
    List<ScoreRange> ranges = cases.stream().map(which).toList();
    long sum = ranges.stream().mapToLong(ScoreRange::likely).sum();
    return new ScoreRange(
        ranges.stream().map(ScoreRange::low).min(Comparator.naturalOrder()).orElse(0L),
        ExactMath.round(ExactMath.of(sum, ranges.size())),
        ranges.stream().map(ScoreRange::high).max(Comparator.naturalOrder()).orElse(0L));
  }
}
