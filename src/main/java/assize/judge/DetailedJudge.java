package assize.judge;

import assize.date.DateRange;
import assize.date.DateRangeFormatter;
import assize.judge.PeriodSplitter.Cut;
import assize.judge.ScoreCalculator.StretchScore;
import assize.judgment.AreaJudgment;
import assize.judgment.BuildDate;
import assize.judgment.BuildPeriod;
import assize.judgment.ItemInPeriod;
import assize.judgment.ItemJudgment;
import assize.judgment.Judgment;
import assize.judgment.Notice;
import assize.judgment.ScoreRange;
import assize.record.Inspected;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Judges one vehicle, with everything that a report says of it. */
final class DetailedJudge {
  private final CompiledRuleSet bench;
  private final RuleSet rules;
  private final VehicleRecord vehicle;
  private final Recall recall;
  private final List<Notice> remarks = new ArrayList<>();

  DetailedJudge(CompiledRuleSet bench, VehicleRecord vehicle, Recall recall) {
    this.bench = bench;
    this.rules = bench.rules();
    this.vehicle = vehicle;
    this.recall = recall;
  }

  Judgment judge(Optional<LocalDate> asOf) {
    BuildDate dated = BuildDateResolver.of(rules, vehicle, remarks);
    List<Cut> all = PeriodSplitter.of(bench, vehicle, dated.days());
    List<EqualPeriods> alike = EqualPeriods.joined(all, inStretches(all, dated.days()));
    BuildDate build =
        dated.within(
            DateRange.of(all.get(0).days().first(), all.get(all.size() - 1).days().last()));
    List<Cut> cuts = alike.stream().map(EqualPeriods::cut).toList();
    List<ItemJudgment> items = new ArrayList<>();
    for (int i = 0; i < bench.items(); i++) {
      int number = i;
      List<ItemInPeriod> stretches = alike.stream().map(one -> one.items().get(number)).toList();
      items.add(
          recall.over(
              bench.item(i).id(),
              cuts,
              stretches,
              () -> ItemJudge.over(bench.item(number), cuts, stretches)));
    }
    List<StretchScore> scores = scores(cuts, items, ItemInPeriod::earned);
    List<StretchScore> strict =
        items.stream().anyMatch(DetailedJudge::isAllowed)
            ? scores(cuts, items, ItemInPeriod::withoutAllowances)
            : scores;
    List<BuildPeriod> stretches = new ArrayList<>();
    for (int i = 0; i < cuts.size(); i++) {
      stretches.add(
          new BuildPeriod(cuts.get(i).days(), scores.get(i).score(), strict.get(i).score()));
    }
    List<AreaJudgment> areas = PeriodAggregate.areas(rules, cuts, scores);
    ScoreRange score =
        PeriodAggregate.score(cuts, stretches.stream().map(BuildPeriod::score).toList());
    edition();
    due(asOf);
    return new Judgment(
        rules,
        vehicle,
        build,
        stretches,
        areas,
        items,
        score,
        PeriodAggregate.score(
            cuts, stretches.stream().map(BuildPeriod::withoutAllowances).toList()),
        Awards.of(rules.awards(), scores, score, areas, LargestLoss.of(items, cuts.size())),
        remarks);
  }

  private static boolean isAllowed(ItemJudgment item) {
    return item.stretches().stream().anyMatch(one -> !one.withoutAllowances().equals(one.earned()));
  }

  /** Judges each item in each stretch; one that nothing changes for is judged once. */
  private List<List<ItemInPeriod>> inStretches(List<Cut> cuts, DateRange build) {
    List<List<ItemInPeriod>> all = new ArrayList<>();
    List<PreparedItem> before = List.of();
    for (Cut cut : cuts) {
      List<PreparedItem> asked = bench.lineup(cut.answers());
      ItemJudge judge = new ItemJudge(bench, vehicle, cut, build);
      List<ItemInPeriod> items = new ArrayList<>(asked.size());
      for (int i = 0; i < asked.size(); i++) {
        boolean same = !before.isEmpty() && asked.get(i).steady() && asked.get(i) == before.get(i);
        PreparedItem one = asked.get(i);
        items.add(
            same
                ? all.get(all.size() - 1).get(i)
                : recall.item(one, vehicle, cut.sample(), build, () -> judge.judge(one)));
      }
      all.add(items);
      before = asked;
    }
    return all;
  }

  private List<StretchScore> scores(
      List<Cut> cuts, List<ItemJudgment> items, Function<ItemInPeriod, ScoreRange> points) {
    List<StretchScore> scores = new ArrayList<>();
    for (int i = 0; i < cuts.size(); i++) {
      List<ScoredArea> lots = bench.lots();
      for (int n = 0; n < items.size(); n++) {
        ItemInPeriod one = items.get(n).stretches().get(i);
        if (!one.aspects().isEmpty()) {
          lots.get(bench.area(n))
              .add(ScoredItem.of(bench.item(n), one.applies(), one.possible(), points.apply(one)));
        }
      }
      scores.add(ScoreCalculator.score(rules, lots, recall));
    }
    return scores;
  }

  private void edition() {
    vehicle
        .edition()
        .filter(edition -> !edition.equals(rules.edition()))
        .ifPresent(
            edition ->
                remarks.add(
                    new Notice(
                        Notice.Kind.EDITION,
                        "The record was written for edition "
                            + edition
                            + "; it is judged by edition "
                            + rules.edition()
                            + ".")));
  }

  private void due(Optional<LocalDate> asOf) {
    Optional<LocalDate> day =
        asOf.or(
            () ->
                vehicle
                    .inspected()
                    .flatMap(Inspected::on)
                    .map(on -> on.span())
                    .filter(span -> !span.openEnd())
                    .map(DateRange::last));
    if (day.isEmpty()) {
      return;
    }
    vehicle
        .observations()
        .values()
        .forEach(
            observation ->
                observation
                    .departure()
                    .flatMap(departure -> departure.reviewBy())
                    .map(until -> until.span())
                    .filter(until -> !until.openEnd() && until.last().isBefore(day.get()))
                    .ifPresent(
                        until ->
                            remarks.add(
                                new Notice(
                                    Notice.Kind.DEPARTURE_DUE,
                                    "The departure at "
                                        + rules.title(observation.item())
                                        + " was to be looked at again by "
                                        + DateRangeFormatter.of(until.last())
                                        + "."))));
  }
}
