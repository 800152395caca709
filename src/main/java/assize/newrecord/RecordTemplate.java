package assize.newrecord;

import assize.aspect.Control;
import assize.aspect.Control.Kind;
import assize.record.VehicleRecord;
import assize.report.sheet.InspectionView;
import assize.report.sheet.InspectionView.ExpectedValue;
import assize.report.sheet.InspectionView.InspectedArea;
import assize.report.sheet.InspectionView.InspectedAspect;
import assize.report.sheet.InspectionView.InspectedItem;
import assize.report.view.HazardView;
import assize.ruleset.RuleSet;
import assize.yaml.FlowYamlWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The text of a record to fill in. Each thing to look at is a name with a colon and nothing behind
 * it; over it stands, as comments, where to look, what is expected, and what may be written.
 */
public final class RecordTemplate {
  private static final int ITEM = 2;
  private static final int ASPECT = 4;
  private static final String GRADED = "graded: ";

  private final InspectionView view;
  private final List<String> lines = new ArrayList<>();

  private RecordTemplate(InspectionView view) {
    this.view = view;
  }

  /**
   * Writes it.
   *
   * @param view what there is to look at
   * @param vehicle what is known of the vehicle; its observations are not written, but what the
   *     view found of them
   * @param file how the record is called, for what to do next
   */
  public static String text(
      InspectionView view, VehicleRecord vehicle, RuleSet rules, String file) {
    RecordTemplate record = new RecordTemplate(view);
    record.lines.addAll(new RecordTemplateHeader(view, vehicle, rules).lines());
    record.observations();
    record.foot(file);
    return String.join("\n", record.lines) + "\n";
  }

  private void observations() {
    if (view.areas().isEmpty()) {
      lines.add("");
      lines.addAll(YamlComments.of(0, "", "No item of this rule set applies to this vehicle."));
      return;
    }
    lines.add("");
    lines.add(VehicleRecord.OBSERVATIONS.name() + ":");
    view.areas().forEach(this::area);
  }

  private void area(InspectedArea area) {
    lines.add("");
    lines.addAll(YamlComments.of(ITEM, "== ", area.name() + " =="));
    area.items().forEach(this::item);
  }

  private void item(InspectedItem item) {
    lines.add("");
    String points = item.points() + (item.points().equals("1") ? " point" : " points");
    lines.addAll(YamlComments.of(ITEM, item.number() + ". ", item.title() + " (" + points + ")"));
    said("Look: ", item.look());
    said("Note: ", item.notes());
    said("May not apply: ", item.mayApply());
    for (HazardView hazard : item.hazards()) {
      said("Hazard, " + hazard.name() + ": ", hazard.precaution());
    }
    lines.add(" ".repeat(ITEM) + item.id() + ":");
    item.aspects().forEach(this::aspect);
    item.texts().stream()
        .filter(it -> !it.text().isEmpty())
        .map(it -> " ".repeat(ASPECT) + it.word() + ": " + FlowYamlWriter.text(it.text(), false))
        .forEach(lines::add);
  }

  private void said(String lead, String text) {
    if (!text.isBlank()) {
      lines.addAll(YamlComments.of(ITEM, "  ", lead + text.strip()));
    }
  }

  private void aspect(InspectedAspect aspect) {
    for (ExpectedValue expected : aspect.expected()) {
      String line = expected.line();
      boolean graded = line.startsWith(GRADED);
      lines.addAll(
          YamlComments.of(
              ASPECT,
              "",
              graded ? "Earns: " + line.substring(GRADED.length()) : "Expected: " + line));
    }
    String form = form(aspect);
    if (!form.isEmpty()) {
      lines.addAll(YamlComments.of(ASPECT, "", "Write " + form));
    }
    String found = aspect.found().yaml();
    lines.add(" ".repeat(ASPECT) + aspect.word() + ":" + (found.isEmpty() ? "" : " " + found));
  }

  /** Returns what may be written; a choice of the item's own with what each word means. */
  private static String form(InspectedAspect aspect) {
    Control control = aspect.control();
    if (control.choices().isEmpty()) {
      return control.hint();
    }
    if (control.kind() == Kind.YES_NO) {
      return "yes or no";
    }
    return "one of: "
        + control.choices().stream()
            .map(
                choice -> control.ofItem() ? choice.id() + " (" + choice.name() + ")" : choice.id())
            .collect(Collectors.joining("; "));
  }

  private void foot(String file) {
    lines.add("");
    lines.addAll(
        YamlComments.of(
            0,
            "",
            """
            ------------------------------------------------------------------------------------------
            That is all. What is left empty counts as not assessed.
            Next:  assize judge %s
            and open the page that it names. It can be judged at any time, filled in or not.
            ------------------------------------------------------------------------------------------
            """
                .formatted(YamlComments.clean(file))));
  }
}
