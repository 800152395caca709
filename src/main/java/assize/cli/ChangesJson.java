package assize.cli;

import assize.compare.Change;
import assize.compare.EditionComparison;
import assize.compare.VehicleComparison;
import assize.compare.VehicleComparison.ItemDifference;
import assize.judgment.ItemJudgment;
import assize.judgment.Judgment;
import assize.judgment.ScoreRange;
import assize.report.changes.ChangesView;
import assize.ruleset.Award;
import assize.ruleset.RuleSet;
import assize.text.Json;
import java.util.List;
import java.util.Optional;

/** What changed between two editions, for other programs. */
final class ChangesJson {
  private ChangesJson() {}

  static String of(
      EditionComparison editions, ChangesView view, Optional<VehicleComparison> vehicle) {
    Json json =
        Json.object()
            .object("before", edition(editions.before()))
            .object("after", edition(editions.after()))
            .objects("changes", " ", view.told(), ChangesJson::change)
            .objects("expectations", " ", view.expectations(), ChangesJson::expectation)
            .objects("rename_candidates", " ", view.renamed(), ChangesJson::renamed);
    vehicle.ifPresent(it -> json.object("vehicle", vehicle(it, view)));
    return json.toString();
  }

  private static Json edition(RuleSet rules) {
    return Json.object().text("rule_set", rules.id()).text("edition", rules.edition());
  }

  private static void change(Json json, ChangesView.ChangeDetails told) {
    json.text("part", told.part())
        .text("kind", told.kind())
        .text("id", told.id())
        .text("name", told.name())
        .text("what", told.what())
        .orNull("before", told.before())
        .orNull("after", told.after())
        .flag("affects_score", told.alters())
        .texts("items", told.items());
  }

  private static void expectation(Json json, ChangesView.Expected expected) {
    json.text("item", expected.item())
        .text("aspect", expected.aspect())
        .text("vehicles", expected.vehicles())
        .text("days", expected.days())
        .text("before", expected.before())
        .text("after", expected.after());
  }

  private static void renamed(Json json, ChangesView.Renamed renamed) {
    json.text("part", renamed.part())
        .text("before", renamed.before())
        .text("after", renamed.after());
  }

  private static Json vehicle(VehicleComparison difference, ChangesView view) {
    return Json.object()
        .text("record", difference.after().vehicle().id())
        .object("before", judged(difference.before()))
        .object("after", judged(difference.after()))
        .objects("items", "  ", difference.items(), ChangesJson::item)
        .texts("left_out", view.vehicle().map(ChangesView.VehicleView::left).orElse(List.of()));
  }

  private static Json judged(Judgment judgment) {
    return score(Json.object(), judgment.score())
        .thousandths("of", judgment.rules().scale().outOf())
        .orNull("award", judgment.award().reached().map(Award::id));
  }

  private static Json score(Json json, ScoreRange range) {
    return json.thousandths("low", range.low())
        .thousandths("likely", range.likely())
        .thousandths("high", range.high());
  }

  private static void item(Json json, ItemDifference one) {
    json.text("id", one.id())
        .flag("newly_applies", one.newlyApplies())
        .flag("no_longer_applies", one.noLongerApplies())
        .object("before", one.before().map(ChangesJson::item).orElseGet(Json::object))
        .object("after", one.after().map(ChangesJson::item).orElseGet(Json::object))
        .texts("reasons", one.because().stream().map(ChangesJson::name).distinct().toList());
  }

  private static Json item(ItemJudgment judged) {
    return score(Json.object().text("verdict", judged.verdict().id()), judged.earned())
        .thousandths("possible", judged.possible());
  }

  private static String name(Change change) {
    return change.part().word()
        + (change.id().isEmpty() ? "" : " " + change.id())
        + (change.what().isEmpty() ? "" : ": " + change.what());
  }
}
