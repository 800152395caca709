package assize.judge;

import assize.aspect.Verdict;
import assize.date.DateRange;
import assize.evidence.DisputeState;
import assize.evidence.Ternary;
import assize.judge.PeriodSplitter.Cut;
import assize.judgment.AspectJudgment;
import assize.judgment.ItemInPeriod;
import assize.judgment.ItemJudgment;
import assize.judgment.ScoreRange;
import assize.record.VehicleRecord;
import assize.ruleset.Item;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/** One item: within a stretch, then over all of them. */
final class ItemJudge {
  private static final ItemInPeriod OUT =
      new ItemInPeriod(
          Ternary.NO, Verdict.NOT_APPLICABLE, List.of(), ScoreRange.ZERO, ScoreRange.ZERO);

  private final AspectJudge judge;

  /** Prepares to judge within one stretch. */
  ItemJudge(CompiledRuleSet bench, VehicleRecord vehicle, Cut cut, DateRange build) {
    this.judge =
        new AspectJudge(bench.grounds(), vehicle, ways(bench, vehicle, cut), cut.sample(), build);
  }

  private static List<AspectJudge.Way> ways(CompiledRuleSet bench, VehicleRecord vehicle, Cut cut) {
    return cut.worlds().isEmpty()
        ? List.of(
            new AspectJudge.Way(
                new VehicleFacts(bench.rules(), vehicle, cut.sample()), BigFraction.ONE))
        : cut.worlds().stream().map(it -> new AspectJudge.Way(it, it.weight())).toList();
  }

  /** Returns the item over all build days, from what it is in each stretch. */
  static ItemJudgment over(Item item, List<Cut> cuts, List<ItemInPeriod> stretches) {
    List<ItemInPeriod> applying =
        stretches.stream().filter(it -> it.applies() != Ternary.NO).toList();
    PeriodMean mean = PeriodMean.of(cuts, stretches);
    return new ItemJudgment(
        item,
        overStretches(stretches.size(), applying.stream().map(ItemInPeriod::verdict).toList()),
        applying.stream()
            .flatMap(it -> it.aspects().stream())
            .map(AspectJudgment::dispute)
            .max(Comparator.comparing(DisputeState::rank))
            .orElse(DisputeState.AGREED),
        mean.earned(),
        mean.possible(),
        stretches);
  }

  /**
   * Joins the verdicts of stretches.
   *
   * @param stretches how many there are
   * @param applying the verdicts of those in which the item applies or may apply
   */
  static Verdict overStretches(int stretches, List<Verdict> applying) {
    if (applying.isEmpty()) {
      return Verdict.NOT_APPLICABLE;
    }
    if (applying.size() < stretches) {
      return Verdict.MAY_APPLY;
    }
    List<Verdict> verdicts = applying.stream().distinct().toList();
    if (verdicts.size() == 1) {
      return verdicts.get(0);
    }
    return verdicts.contains(Verdict.MAY_APPLY) ? Verdict.MAY_APPLY : Verdict.UNDECIDED;
  }

  /** Returns the item within the stretch. */
  ItemInPeriod judge(PreparedItem asked) {
    List<AspectJudgment> aspects =
        asked.matters().stream()
            .flatMap(matter -> judge.judge(asked.item(), matter).stream())
            .toList();
    if (aspects.isEmpty()) {
      return OUT;
    }
    return new ItemInPeriod(
        asked.applies(),
        asked.applies() == Ternary.UNKNOWN
            ? Verdict.MAY_APPLY
            : ofAspects(aspects.stream().map(AspectJudgment::verdict).toList()),
        aspects,
        sum(aspects, AspectJudgment::earned),
        sum(aspects, AspectJudgment::withoutAllowances));
  }

  private static ScoreRange sum(
      List<AspectJudgment> aspects, Function<AspectJudgment, ScoreRange> which) {
    return aspects.stream().map(which).reduce(ScoreRange.ZERO, ScoreRange::plus);
  }

  /** Joins the verdicts of aspects; what was not shown counts only where all shown meets. */
  static Verdict ofAspects(List<Verdict> aspects) {
    List<Verdict> shown =
        aspects.stream().filter(verdict -> verdict != Verdict.NOT_ASSESSED).distinct().toList();
    boolean allShown = !aspects.contains(Verdict.NOT_ASSESSED);
    if (shown.isEmpty()) {
      return Verdict.NOT_ASSESSED;
    }
    if (shown.contains(Verdict.UNDECIDED)) {
      return Verdict.UNDECIDED;
    }
    if (shown.equals(List.of(Verdict.CORRECT))) {
      return allShown ? Verdict.CORRECT : Verdict.NOT_ASSESSED;
    }
    return shown.equals(List.of(Verdict.INCORRECT)) && allShown
        ? Verdict.INCORRECT
        : Verdict.PARTLY_CORRECT;
  }
}
