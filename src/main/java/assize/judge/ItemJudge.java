package assize.judge;

import assize.date.DaySpan;
import assize.evidence.DisputeState;
import assize.evidence.Kleene;
import assize.judge.Stretches.Cut;
import assize.judgment.AspectJudgment;
import assize.judgment.ItemInStretch;
import assize.judgment.ItemJudgment;
import assize.judgment.ScoreRange;
import assize.judgment.Verdict;
import assize.record.VehicleRecord;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** One item: in each stretch, then over all of them. */
final class ItemJudge {
  private final RuleSet rules;
  private final VehicleRecord vehicle;
  private final DaySpan build;

  ItemJudge(RuleSet rules, VehicleRecord vehicle, DaySpan build) {
    this.rules = rules;
    this.vehicle = vehicle;
    this.build = build;
  }

  /** Returns the item over all build days, from what it is in each stretch. */
  static ItemJudgment over(Item item, List<Cut> cuts, List<ItemInStretch> stretches) {
    List<ItemInStretch> applying =
        stretches.stream().filter(it -> it.applies() != Kleene.NO).toList();
    Mean mean = Mean.of(cuts, stretches);
    return new ItemJudgment(
        item,
        verdict(stretches, applying),
        applying.stream()
            .flatMap(it -> it.aspects().stream())
            .map(AspectJudgment::dispute)
            .max(Comparator.comparing(DisputeState::rank))
            .orElse(DisputeState.AGREED),
        mean.earned(),
        mean.possible(),
        stretches);
  }

  private static Verdict verdict(List<ItemInStretch> all, List<ItemInStretch> applying) {
    if (applying.isEmpty()) {
      return Verdict.DOES_NOT_APPLY;
    }
    if (applying.size() < all.size()) {
      return Verdict.MAY_APPLY;
    }
    List<Verdict> verdicts = applying.stream().map(ItemInStretch::verdict).distinct().toList();
    if (verdicts.size() == 1) {
      return verdicts.get(0);
    }
    return verdicts.contains(Verdict.MAY_APPLY) ? Verdict.MAY_APPLY : Verdict.OPEN;
  }

  /** Returns the item within one stretch. */
  ItemInStretch judge(Item item, Cut cut) {
    VehicleFacts facts = new VehicleFacts(rules, vehicle, cut.sample());
    Kleene applies = item.scope().holds(facts);
    List<AspectJudgment> aspects = new ArrayList<>();
    if (applies != Kleene.NO) {
      AspectJudge judge = new AspectJudge(rules, vehicle, facts, cut.sample(), build);
      item.aspects().stream()
          .map(rule -> judge.judge(item.id(), rule))
          .flatMap(Optional::stream)
          .forEach(aspects::add);
    }
    if (aspects.isEmpty()) {
      return new ItemInStretch(
          Kleene.NO, Verdict.DOES_NOT_APPLY, List.of(), ScoreRange.ZERO, ScoreRange.ZERO);
    }
    return new ItemInStretch(
        applies,
        applies == Kleene.UNKNOWN ? Verdict.MAY_APPLY : ofAspects(aspects),
        aspects,
        sum(aspects, AspectJudgment::earned),
        sum(aspects, AspectJudgment::strict));
  }

  private static ScoreRange sum(
      List<AspectJudgment> aspects, Function<AspectJudgment, ScoreRange> which) {
    return aspects.stream().map(which).reduce(ScoreRange.ZERO, ScoreRange::plus);
  }

  /** What was not shown counts only where all that was shown meets. */
  static Verdict ofAspects(List<AspectJudgment> aspects) {
    List<Verdict> shown =
        aspects.stream()
            .map(AspectJudgment::verdict)
            .filter(verdict -> verdict != Verdict.NOT_SHOWN)
            .distinct()
            .toList();
    boolean allShown = aspects.stream().noneMatch(aspect -> aspect.verdict() == Verdict.NOT_SHOWN);
    if (shown.isEmpty()) {
      return Verdict.NOT_SHOWN;
    }
    if (shown.contains(Verdict.OPEN)) {
      return Verdict.OPEN;
    }
    if (shown.equals(List.of(Verdict.MEETS))) {
      return allShown ? Verdict.MEETS : Verdict.NOT_SHOWN;
    }
    return shown.equals(List.of(Verdict.DEPARTS)) && allShown ? Verdict.DEPARTS : Verdict.PARTLY;
  }
}
