package assize.report.handbook;

import assize.evidence.Grade;
import assize.report.handbook.HandbookScoringView.AreaRow;
import assize.report.handbook.HandbookScoringView.AwardRow;
import assize.report.handbook.HandbookScoringView.Cause;
import assize.report.handbook.HandbookView.Fact;
import assize.report.view.AnchorIds;
import assize.report.view.LinkView;
import assize.report.view.NumberFormatter;
import assize.ruleset.Area;
import assize.ruleset.Award;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import assize.ruleset.Scale;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How a vehicle is scored, in words. */
final class HandbookScoringViewFactory {
  private final RuleSet rules;
  private final Scale scale;

  HandbookScoringViewFactory(RuleSet rules) {
    this.rules = rules;
    this.scale = rules.scale();
  }

  HandbookScoringView view() {
    return new HandbookScoringView(
        method(),
        columns(),
        rules.areas().stream().map(this::area).toList(),
        rules.awards().stream().map(this::award).toList(),
        Arrays.stream(Grade.values())
            .filter(grade -> scale.grades().containsKey(grade))
            .map(
                grade ->
                    new Fact(
                        grade.name(),
                        NumberFormatter.points(scale.grades().getOrDefault(grade, 0))))
            .toList(),
        "Where exactly one position stands under every source, it is agreed. Else the sources are"
            + " weighed together, and a position that is believed by "
            + NumberFormatter.points(scale.settledAt())
            + " or more is settled: it alone is judged by. Below that the matter is disputed, and"
            + " the vehicle is judged by every position that is still plausible. Whoever meets all"
            + " of them loses nothing. A source that copies another and says the same adds"
            + " nothing.",
        scale.allowances().entrySet().stream()
            .sorted(Map.Entry.comparingByKey())
            .map(one -> new Fact(one.getKey(), NumberFormatter.number(one.getValue())))
            .toList(),
        causes(),
        new WorkedExample(rules).steps());
  }

  private List<String> method() {
    String of = NumberFormatter.points(scale.outOf());
    List<String> method = new ArrayList<>();
    method.add(
        switch (scale.method()) {
          case SUM ->
              "The full score is "
                  + of
                  + ". The points earned in all areas are divided by those that could be earned on"
                  + " the vehicle; the score is that share of "
                  + of
                  + ".";
          case AREAS ->
              "The full score is "
                  + of
                  + ". Each area gives the share of its own points that was earned. These shares"
                  + " are weighed by the areas' points; the score is their mean, as a share of "
                  + of
                  + ".";
          case DEDUCTIONS ->
              "A vehicle begins with " + of + ". Points lost are taken off, never below zero.";
        });
    method.add(
        "An item's points are shared among what is looked at. Each part earns its points times a"
            + " credit from 0 (incorrect) to 1 (correct). Items that do not apply to a vehicle count"
            + " for nothing, neither earned nor possible.");
    method.add(
        "What is not assessed can turn out either way: it counts nothing in the low score, all in the"
            + " high one and "
            + NumberFormatter.number(scale.notAssessed())
            + " of its points in the likely one. What is left open by a dispute, by a measurement"
            + " that is too coarse or by an uncertain build date makes a range likewise.");
    method.add(
        "A part made after the vehicle is incorrect. One made earlier than it should have been earns "
            + NumberFormatter.number(scale.earlyPartCredit())
            + " of its points.");
    if (scale.allowances().isEmpty()) {
      method.add("A departure loses its points whatever its reason.");
    } else {
      method.add(
          "A departure for a reason listed below keeps that part of its points. Such a score is"
              + " always told with and without these allowances.");
    }
    return method;
  }

  private List<String> columns() {
    List<String> columns = new ArrayList<>(List.of("Items", "Points"));
    if (scale.method() == Scale.Method.AREAS) {
      columns.add("Weight");
    }
    if (limited()) {
      columns.add("Loses at most");
    }
    return columns;
  }

  private boolean limited() {
    return rules.areas().stream().anyMatch(area -> area.maxLoss().isPresent());
  }

  private AreaRow area(Area area) {
    List<String> cells = new ArrayList<>();
    cells.add(Integer.toString(area.items().size()));
    cells.add(NumberFormatter.points(area.items().stream().mapToLong(Item::points).sum()));
    if (scale.method() == Scale.Method.AREAS) {
      cells.add(NumberFormatter.points(area.points()));
    }
    if (limited()) {
      cells.add(
          area.maxLoss().isPresent() ? NumberFormatter.points(area.maxLoss().getAsLong()) : "all");
    }
    return new AreaRow(new LinkView(AnchorIds.area(area.id()), area.name()), cells);
  }

  private AwardRow award(Award award) {
    List<String> conditions = new ArrayList<>();
    award
        .minAreaShare()
        .ifPresent(
            share ->
                conditions.add(
                    "every area earns "
                        + NumberFormatter.number(share.multiply(100))
                        + " % of its points or more"));
    if (award.maxItemLoss().isPresent()) {
      conditions.add(
          "no item loses more than "
              + NumberFormatter.points(award.maxItemLoss().getAsLong())
              + " points by departing");
    }
    return new AwardRow(
        award.id(), award.name(), NumberFormatter.points(award.minScore()), conditions);
  }

  private List<Cause> causes() {
    Map<String, List<LinkView>> items = new LinkedHashMap<>();
    rules
        .items()
        .forEach(
            item ->
                item.cause()
                    .ifPresent(
                        cause ->
                            items
                                .computeIfAbsent(cause, it -> new ArrayList<>())
                                .add(HandbookContext.link(item))));
    return items.entrySet().stream().map(one -> new Cause(one.getKey(), one.getValue())).toList();
  }
}
