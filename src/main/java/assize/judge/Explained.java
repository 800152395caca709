package assize.judge;

import assize.date.DaySpan;
import assize.date.DayWords;
import assize.judge.Scoring.StretchScore;
import assize.judge.Stretches.Cut;
import assize.judgment.AreaJudgment;
import assize.judgment.Build;
import assize.judgment.ItemInStretch;
import assize.judgment.ItemJudgment;
import assize.judgment.Judgment;
import assize.judgment.Remark;
import assize.judgment.ScoreRange;
import assize.judgment.Stretch;
import assize.record.Judged;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Judges one vehicle, with everything that a report says of it. */
final class Explained {
  private final Bench bench;
  private final RuleSet rules;
  private final VehicleRecord vehicle;
  private final Recall recall;
  private final List<Remark> remarks = new ArrayList<>();

  Explained(Bench bench, VehicleRecord vehicle, Recall recall) {
    this.bench = bench;
    this.rules = bench.rules();
    this.vehicle = vehicle;
    this.recall = recall;
  }

  Judgment judge(Optional<LocalDate> asOf) {
    Build build = BuildDays.of(rules, vehicle, remarks);
    List<Cut> all = Stretches.of(bench, vehicle, build.days());
    List<Alike> alike = Alike.joined(all, inStretches(all, build.days()));
    List<Cut> cuts = alike.stream().map(Alike::cut).toList();
    List<ItemJudgment> items = new ArrayList<>();
    for (int i = 0; i < bench.items(); i++) {
      int number = i;
      List<ItemInStretch> stretches = alike.stream().map(one -> one.items().get(number)).toList();
      items.add(
          recall.over(
              bench.item(i).id(),
              cuts,
              stretches,
              () -> ItemJudge.over(bench.item(number), cuts, stretches)));
    }
    List<StretchScore> scores = scores(cuts, items, ItemInStretch::earned);
    List<StretchScore> strict =
        items.stream().anyMatch(Explained::isAllowed)
            ? scores(cuts, items, ItemInStretch::strict)
            : scores;
    List<Stretch> stretches = new ArrayList<>();
    for (int i = 0; i < cuts.size(); i++) {
      stretches.add(new Stretch(cuts.get(i).days(), scores.get(i).score(), strict.get(i).score()));
    }
    List<AreaJudgment> areas = Overall.areas(rules, cuts, scores);
    ScoreRange score = Overall.score(cuts, stretches.stream().map(Stretch::score).toList());
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
        Overall.score(cuts, stretches.stream().map(Stretch::strict).toList()),
        Awards.of(rules.awards(), scores, score, areas, Worst.of(items, cuts.size())),
        remarks);
  }

  private static boolean isAllowed(ItemJudgment item) {
    return item.stretches().stream().anyMatch(one -> !one.strict().equals(one.earned()));
  }

  /** Judges each item in each stretch; one that nothing changes for is judged once. */
  private List<List<ItemInStretch>> inStretches(List<Cut> cuts, DaySpan build) {
    List<List<ItemInStretch>> all = new ArrayList<>();
    List<Asked> before = List.of();
    for (Cut cut : cuts) {
      List<Asked> asked = bench.lineup(cut.answers());
      ItemJudge judge = new ItemJudge(bench, vehicle, cut, build);
      List<ItemInStretch> items = new ArrayList<>(asked.size());
      for (int i = 0; i < asked.size(); i++) {
        boolean same = !before.isEmpty() && asked.get(i).steady() && asked.get(i) == before.get(i);
        Asked one = asked.get(i);
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
      List<Cut> cuts, List<ItemJudgment> items, Function<ItemInStretch, ScoreRange> points) {
    List<StretchScore> scores = new ArrayList<>();
    for (int i = 0; i < cuts.size(); i++) {
      List<Lots> lots = bench.lots();
      for (int n = 0; n < items.size(); n++) {
        ItemInStretch one = items.get(n).stretches().get(i);
        if (!one.aspects().isEmpty()) {
          lots.get(bench.area(n))
              .add(Lot.of(bench.item(n), one.applies(), one.possible(), points.apply(one)));
        }
      }
      scores.add(Scoring.score(rules, lots, recall));
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
                    new Remark(
                        Remark.Kind.EDITION,
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
                    .judged()
                    .flatMap(Judged::on)
                    .map(on -> on.span())
                    .filter(span -> !span.openEnd())
                    .map(DaySpan::last));
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
                    .flatMap(departure -> departure.until())
                    .map(until -> until.span())
                    .filter(until -> !until.openEnd() && until.last().isBefore(day.get()))
                    .ifPresent(
                        until ->
                            remarks.add(
                                new Remark(
                                    Remark.Kind.DEPARTURE_DUE,
                                    "The departure at "
                                        + rules.title(observation.item())
                                        + " was to be looked at again by "
                                        + DayWords.of(until.last())
                                        + "."))));
  }
}
