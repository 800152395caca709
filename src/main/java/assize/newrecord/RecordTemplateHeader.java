package assize.newrecord;

import assize.aspect.Control;
import assize.aspect.Control.Choice;
import assize.record.VehicleRecord;
import assize.report.sheet.InspectionView;
import assize.report.sheet.InspectionView.WalkAspect;
import assize.report.sheet.InspectionView.WalkItem;
import assize.ruleset.Model;
import assize.ruleset.NumberTable;
import assize.ruleset.RuleSet;
import assize.yaml.FlowYamlWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What stands before the observations: how to fill them in, which vehicle, the rule set's words.
 */
final class RecordTemplateHeader {
  private final InspectionView view;
  private final VehicleRecord vehicle;
  private final RuleSet rules;
  private final List<String> lines = new ArrayList<>();

  RecordTemplateHeader(InspectionView view, VehicleRecord vehicle, RuleSet rules) {
    this.view = view;
    this.vehicle = vehicle;
    this.rules = rules;
  }

  List<String> lines() {
    how();
    vehicle();
    words();
    return lines;
  }

  private void how() {
    say(
        "A record to fill in, by "
            + view.standard()
            + ", "
            + view.edition()
            + ": "
            + view.items()
            + (view.items() == 1 ? " item" : " items")
            + " to look at. A walk round the vehicle takes "
            + view.time()
            + ".");
    say(
        """

        Put what you find behind the colon, as in `finish: nickel`
        What you leave empty counts as not looked at. A text with a # in it stands in quotes.
        To any item you may add, under its last line and as far in as that:
          note: what else should be known
          evidence: a photo, named under `evidence:` at the end of this file
          departure: {reason: safety, why: what the owner says}

        A color is matched on the thing itself. A photo, a screen or a print is never evidence of
        a color. What is expected is a claim, not an order: write what is there.
        """);
    if (!view.cautions().isEmpty()) {
      say(view.afterCautions());
    }
  }

  private void say(String text) {
    for (String line : text.stripTrailing().split("\n", -1)) {
      String indent = " ".repeat(line.length() - line.stripLeading().length());
      lines.addAll(line.isBlank() ? List.of("#") : YamlComments.of(0, indent, line));
    }
  }

  private void vehicle() {
    lines.add("");
    lines.add("record: " + FlowYamlWriter.text(vehicle.id(), false));
    lines.add("rules: " + FlowYamlWriter.text(vehicle.rules(), false));
    vehicle.edition().ifPresent(it -> lines.add("edition: " + FlowYamlWriter.text(it, false)));
    lines.add("vehicle:");
    lines.add("  name: " + FlowYamlWriter.text(vehicle.name(), false));
    vehicle
        .model()
        .ifPresentOrElse(
            it -> lines.add("  model: " + FlowYamlWriter.text(it, false)),
            () -> {
              Map<String, String> models = new LinkedHashMap<>();
              rules.models().values().forEach((Model it) -> models.put(it.id(), it.name()));
              unknown("  ", "model", "Model", models);
            });
    built();
    numbers();
    vehicle
        .plant()
        .ifPresentOrElse(
            it -> lines.add("plant: " + FlowYamlWriter.text(it, false)),
            () -> unknown("", "plant", "Works", rules.plants()));
    vehicle
        .market()
        .ifPresentOrElse(
            it -> lines.add("market: " + FlowYamlWriter.text(it, false)),
            () -> unknown("", "market", "Market", rules.markets()));
    equipment();
    lines.add("# Who looked, and when.");
    lines.add("#judged: {by: the owner, on: 2026-10-03}");
  }

  /** Says what may be stated; where it is not known it is left out. */
  private void unknown(String indent, String key, String what, Map<String, String> known) {
    if (!known.isEmpty()) {
      lines.addAll(
          YamlComments.of(
              indent.length(), "", what + ", if it is known, one of: " + explained(known)));
      lines.add(indent + "#" + key + ":");
    }
  }

  private static String explained(Map<String, String> known) {
    return known.entrySet().stream()
        .map(entry -> entry.getKey() + " (" + entry.getValue() + ")")
        .collect(Collectors.joining("; "));
  }

  private void built() {
    vehicle
        .built()
        .ifPresentOrElse(
            it -> lines.add("built: " + FlowYamlWriter.text(it.date().text(), false)),
            () -> {
              lines.add("# When it was built, if something says so.");
              lines.add("#built: {date: 1934-05, basis: build plate}");
            });
  }

  private void numbers() {
    Map<String, String> missing = new LinkedHashMap<>();
    rules
        .numbers()
        .values()
        .forEach(
            (NumberTable table) -> {
              if (!vehicle.numbers().containsKey(table.id())) {
                missing.put(table.id(), table.name());
              }
            });
    if (!vehicle.numbers().isEmpty()) {
      lines.add("numbers:");
      vehicle
          .numbers()
          .forEach(
              (table, number) ->
                  lines.add("  " + table + ": " + FlowYamlWriter.text(number, false)));
    } else if (!missing.isEmpty()) {
      lines.add("# Its numbers, as stamped; they tell when it was built.");
      lines.add("#numbers:");
    }
    missing.forEach(
        (table, name) -> {
          lines.addAll(YamlComments.of(0, "  ", name));
          lines.add("#  " + table + ":");
        });
  }

  private void equipment() {
    Map<String, String> missing = new LinkedHashMap<>(rules.equipment());
    missing.keySet().removeAll(vehicle.equipment().keySet());
    if (!vehicle.equipment().isEmpty()) {
      lines.add("equipment:");
      vehicle
          .equipment()
          .forEach((id, fitted) -> lines.add("  " + id + ": " + (fitted ? "yes" : "no")));
    } else if (!missing.isEmpty()) {
      lines.add("# What it is fitted with, each yes or no; leave out what is not known.");
      lines.add("#equipment:");
    }
    missing.forEach(
        (id, name) -> {
          lines.addAll(YamlComments.of(0, "  ", name));
          lines.add("#  " + id + ":");
        });
  }

  /** Says whether the words for an aspect are short names, the same at every item. */
  private static boolean hasNames(WalkAspect aspect) {
    Control control = aspect.control();
    return control.kind() != Control.Kind.YES_NO
        && !control.ofItem()
        && control.choices().stream().anyMatch(it -> !it.id().equals(it.name()));
  }

  /** Says once what short names stand for. */
  private void words() {
    Map<String, List<Choice>> lists = new LinkedHashMap<>();
    view.areas().stream()
        .flatMap(area -> area.items().stream())
        .map(WalkItem::aspects)
        .flatMap(List::stream)
        .filter(RecordTemplateHeader::hasNames)
        .forEach((WalkAspect it) -> lists.putIfAbsent(it.word(), it.control().choices()));
    lists.forEach(
        (word, choices) -> {
          lines.add("#");
          lines.addAll(
              YamlComments.of(
                  0, "", "Words for " + word + ", and what they stand for where that is another:"));
          choices.stream()
              .filter(choice -> !choice.id().equals(choice.name()))
              .forEach(
                  choice ->
                      lines.addAll(YamlComments.of(0, "  " + choice.id() + ": ", choice.name())));
        });
  }
}
