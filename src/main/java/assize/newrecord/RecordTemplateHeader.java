package assize.newrecord;

import assize.aspect.Control;
import assize.aspect.Control.Choice;
import assize.record.VehicleRecord;
import assize.report.sheet.InspectionView;
import assize.report.sheet.InspectionView.InspectedAspect;
import assize.report.sheet.InspectionView.InspectedItem;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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
    if (!view.hazards().isEmpty()) {
      say(view.afterHazards());
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
    lines.addAll(RecordHead.withHints(vehicle, rules));
    lines.add("# Who looked, and when.");
    lines.add("#" + VehicleRecord.INSPECTED.name() + ": {by: the owner, on: 2026-10-03}");
  }

  /** Says whether the words for an aspect are short names, the same at every item. */
  private static boolean hasNames(InspectedAspect aspect) {
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
        .map(InspectedItem::aspects)
        .flatMap(List::stream)
        .filter(RecordTemplateHeader::hasNames)
        .forEach((InspectedAspect it) -> lists.putIfAbsent(it.word(), it.control().choices()));
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
