package assize.judge;

import assize.date.DaySpan;
import assize.date.DayWords;
import assize.judge.Lot.Bound;
import assize.judge.Mean.Figures;
import assize.judge.Scoring.AreaScore;
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
import assize.record.VehicleRecord;
import assize.ruleset.Area;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Judges a vehicle by a rule set: rule set and record in, judgment out.
 *
 * <p>The possible build days are cut into stretches; each item is judged in each; the points of
 * each stretch make a score; low and high are the least and the greatest of these, likely the mean
 * over the days.
 */
public final class Judge {
  private final RuleSet rules;
  private final VehicleRecord vehicle;
  private final List<Remark> remarks = new ArrayList<>();

  private Judge(RuleSet rules, VehicleRecord vehicle) {
    this.rules = rules;
    this.vehicle = vehicle;
  }

  /**
   * Judges a vehicle.
   *
   * @param asOf the day on which departures with a date are looked at; without one the day of the
   *     record counts, if it says one
   */
  public static Judgment judge(RuleSet rules, VehicleRecord vehicle, Optional<LocalDate> asOf) {
    return new Judge(rules, vehicle).judge(asOf);
  }

  private Judgment judge(Optional<LocalDate> asOf) {
    Build build = BuildDays.of(rules, vehicle, remarks);
    List<Cut> all = Stretches.of(rules, vehicle, build.days());
    ItemJudge judge = new ItemJudge(rules, vehicle, build.days());
    List<Item> asked = rules.items().toList();
    List<Alike> alike =
        Alike.joined(
            all,
            all.stream()
                .map(cut -> asked.stream().map(item -> judge.judge(item, cut)).toList())
                .toList());
    List<Cut> cuts = alike.stream().map(Alike::cut).toList();
    List<ItemJudgment> items = new ArrayList<>();
    for (int i = 0; i < asked.size(); i++) {
      int number = i;
      items.add(
          ItemJudge.over(
              asked.get(i), cuts, alike.stream().map(one -> one.items().get(number)).toList()));
    }
    List<StretchScore> scores = scores(cuts, items, ItemInStretch::earned);
    List<StretchScore> strict =
        items.stream().anyMatch(Judge::isAllowed)
            ? scores(cuts, items, ItemInStretch::strict)
            : scores;
    List<Stretch> stretches = new ArrayList<>();
    for (int i = 0; i < cuts.size(); i++) {
      stretches.add(new Stretch(cuts.get(i).days(), scores.get(i).score(), strict.get(i).score()));
    }
    List<AreaJudgment> areas = areas(cuts, scores);
    ScoreRange score = over(cuts, stretches.stream().map(Stretch::score).toList());
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
        over(cuts, stretches.stream().map(Stretch::strict).toList()),
        Awards.of(rules.awards(), scores, score, areas, items),
        remarks);
  }

  private static boolean isAllowed(ItemJudgment item) {
    return item.stretches().stream().anyMatch(one -> !one.strict().equals(one.earned()));
  }

  private List<StretchScore> scores(
      List<Cut> cuts, List<ItemJudgment> items, Function<ItemInStretch, ScoreRange> points) {
    List<StretchScore> scores = new ArrayList<>();
    for (int i = 0; i < cuts.size(); i++) {
      Map<String, List<Lot>> lots = new LinkedHashMap<>();
      for (ItemJudgment item : items) {
        ItemInStretch one = item.stretches().get(i);
        if (!one.aspects().isEmpty()) {
          lots.computeIfAbsent(item.item().area(), area -> new ArrayList<>())
              .add(
                  new Lot(
                      item.item().id(),
                      one.applies(),
                      one.possible(),
                      points.apply(one),
                      item.item().cause()));
        }
      }
      scores.add(Scoring.score(rules, lots));
    }
    return scores;
  }

  private List<AreaJudgment> areas(List<Cut> cuts, List<StretchScore> scores) {
    List<AreaJudgment> areas = new ArrayList<>();
    for (int a = 0; a < rules.areas().size(); a++) {
      Area area = rules.areas().get(a);
      List<Figures> figures = new ArrayList<>();
      List<AreaJudgment.AreaInStretch> stretches = new ArrayList<>();
      for (int i = 0; i < cuts.size(); i++) {
        AreaScore score = scores.get(i).areas().get(a);
        stretches.add(score.inStretch());
        figures.add(
            new Figures(
                cuts.get(i).days().days(),
                score.meanLow(),
                score.inStretch().likely().earned(),
                score.meanHigh(),
                score.inStretch().likely().possible()));
      }
      Mean mean = Mean.of(figures);
      areas.add(new AreaJudgment(area, mean.earned(), mean.possible(), stretches));
    }
    return areas;
  }

  /** The least, the mean over the days, and the greatest. */
  private static ScoreRange over(List<Cut> cuts, List<ScoreRange> scores) {
    long days = 0;
    BigFraction likely = BigFraction.ZERO;
    for (int i = 0; i < cuts.size(); i++) {
      long of = cuts.get(i).days().days();
      days += of;
      likely = likely.add(Exact.of(Bound.LIKELY.of(scores.get(i)), 1).multiply(Exact.of(of, 1)));
    }
    return new ScoreRange(
        scores.stream().mapToLong(ScoreRange::low).min().orElse(0),
        Exact.round(likely.divide(Exact.of(days, 1))),
        scores.stream().mapToLong(ScoreRange::high).max().orElse(0));
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
                    .flatMap(VehicleRecord.Judged::on)
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
                                        + new Names(rules).item(observation.item())
                                        + " was to be looked at again by "
                                        + DayWords.of(until.last())
                                        + "."))));
  }
}
