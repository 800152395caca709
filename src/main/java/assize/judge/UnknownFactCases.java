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
 * speaks: the least, the mean by weight and the greatest of what each case gives.
 */
final class UnknownFactCases {
  private UnknownFactCases() {}

  /**
   * What one case gives.
   *
   * @param weight of the ways in which the vehicle can be in this case
   */
  record Weighed(AspectJudgment aspect, BigFraction weight) {}

  /** Joins the cases; the positions shown are those of the first that is most disputed. */
  static Optional<AspectJudgment> joined(List<Weighed> cases) {
    if (cases.isEmpty()) {
      return Optional.empty();
    }
    AspectJudgment first =
        cases.stream()
            .map(Weighed::aspect)
            .reduce((a, b) -> b.dispute().rank() > a.dispute().rank() ? b : a)
            .orElseThrow();
    List<AspectJudgment> aspects = cases.stream().map(Weighed::aspect).toList();
    List<Verdict> verdicts = aspects.stream().map(AspectJudgment::verdict).distinct().toList();
    BigFraction low =
        aspects.stream().map(AspectJudgment::low).reduce(ExactMath::min).orElseThrow();
    BigFraction high =
        aspects.stream().map(AspectJudgment::high).reduce(ExactMath::max).orElseThrow();
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
            mean(cases, AspectJudgment::likely),
            high,
            first.allowed(),
            points(cases, AspectJudgment::earned),
            points(cases, AspectJudgment::withoutAllowances),
            aspects.stream().mapToLong(AspectJudgment::pointsAtStake).max().orElse(0)));
  }

  private static BigFraction mean(
      List<Weighed> cases, Function<AspectJudgment, BigFraction> figure) {
    BigFraction weights = BigFraction.ZERO;
    BigFraction sum = BigFraction.ZERO;
    for (Weighed one : cases) {
      weights = weights.add(one.weight());
      sum = sum.add(figure.apply(one.aspect()).multiply(one.weight()));
    }
    return sum.divide(weights);
  }

  private static ScoreRange points(
      List<Weighed> cases, Function<AspectJudgment, ScoreRange> which) {
    List<ScoreRange> ranges = cases.stream().map(it -> which.apply(it.aspect())).toList();
    return new ScoreRange(
        ranges.stream().map(ScoreRange::low).min(Comparator.naturalOrder()).orElse(0L),
        ExactMath.round(mean(cases, it -> ExactMath.of(which.apply(it).likely(), 1))),
        ranges.stream().map(ScoreRange::high).max(Comparator.naturalOrder()).orElse(0L));
  }
}
