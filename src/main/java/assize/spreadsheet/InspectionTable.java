package assize.spreadsheet;

import assize.aspect.Control.Choice;
import assize.aspect.Control.Kind;
import assize.record.CellFindingReader;
import assize.record.Observation;
import assize.record.VehicleRecord;
import assize.report.sheet.InspectionView;
import assize.report.sheet.InspectionView.ExpectedValue;
import assize.report.sheet.InspectionView.InspectedArea;
import assize.report.sheet.InspectionView.InspectedAspect;
import assize.report.sheet.InspectionView.InspectedItem;
import assize.report.view.HazardView;
import assize.report.view.ReportHeaderView;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The inspection sheet as a table: a row for each aspect of each item.
 *
 * @param facts what is said of the vehicle and of the table, in two columns
 * @param lists the words that may be used, each list once
 */
record InspectionTable(
    SheetOrigin madeFor, List<TableRow> rows, List<List<String>> facts, List<Words> lists) {
  /** The name of the sheet that is filled in. */
  static final String NAME = "Inspection";

  /** Spreadsheets keep no longer text in a cell. */
  static final int LONGEST = 32_767;

  private static final int SHOWN_IN_CELL = 6;

  InspectionTable {
    rows = List.copyOf(rows);
    facts = List.copyOf(facts);
    lists = List.copyOf(lists);
  }

  /**
   * One row.
   *
   * @param cells in the order of {@link Column}
   * @param list the number of the list that its words are taken from
   */
  record TableRow(List<String> cells, Optional<Integer> list) {
    TableRow {
      cells = List.copyOf(cells);
    }
  }

  /**
   * A list of words.
   *
   * @param of what they are of: an aspect, or an item for its choices
   */
  record Words(String of, List<Choice> choices) {
    Words {
      choices = List.copyOf(choices);
    }
  }

  static InspectionTable of(InspectionView view, RuleSet rules, VehicleRecord record) {
    SheetOrigin madeFor = SheetOrigin.of(rules, view.record());
    Map<List<Choice>, Integer> numbers = new LinkedHashMap<>();
    List<Words> lists = new ArrayList<>();
    List<TableRow> rows = new ArrayList<>();
    for (InspectedArea area : view.areas()) {
      for (InspectedItem item : area.items()) {
        for (InspectedAspect aspect : item.aspects()) {
          boolean first = aspect.equals(item.aspects().get(0));
          List<Choice> choices = aspect.control().choices();
          Optional<Integer> list =
              choices.isEmpty()
                  ? Optional.empty()
                  : Optional.of(
                      numbers.computeIfAbsent(
                          choices,
                          it -> {
                            lists.add(new Words(listName(item, aspect), it));
                            return lists.size() - 1;
                          }));
          rows.add(new TableRow(cells(area, item, aspect, first, evidence(record, item)), list));
        }
      }
    }
    return new InspectionTable(madeFor, rows, facts(view, madeFor), lists);
  }

  private static String listName(InspectedItem item, InspectedAspect aspect) {
    if (aspect.control().ofItem()) {
      return item.id();
    }
    return aspect.control().kind() == Kind.YES_NO ? "yes or no" : aspect.spoken();
  }

  private static List<String> evidence(VehicleRecord record, InspectedItem item) {
    return Optional.ofNullable(record.observations().get(item.id()))
        .map(Observation::evidence)
        .orElse(List.of());
  }

  private static List<String> cells(
      InspectedArea area,
      InspectedItem item,
      InspectedAspect aspect,
      boolean first,
      List<String> evidence) {
    List<String> cells = new ArrayList<>();
    for (Column column : Column.values()) {
      cells.add(
          switch (column) {
            case NUMBER -> Integer.toString(item.number());
            case AREA -> area.name();
            case TITLE -> item.title();
            case ASPECT -> aspect.spoken();
            case LOOK -> look(item);
            case HAZARD -> hazards(item, first);
            case RIGHT ->
                aspect.expected().stream()
                    .map(ExpectedValue::line)
                    .collect(Collectors.joining("\n"));
            case FOUND -> found(aspect);
            case NOTE -> first && item.note().length() <= LONGEST ? item.note() : "";
            case EVIDENCE -> first ? String.join(", ", evidence) : "";
            case HOW -> how(aspect);
            case ITEM -> item.id();
          });
    }
    return cells;
  }

  private static String look(InspectedItem item) {
    return item.mayApply().isEmpty()
        ? item.look()
        : (item.look() + "\nMay apply: " + item.mayApply()).strip();
  }

  /** Returns the hazards in full in an item's first row, by name in the others. */
  private static String hazards(InspectedItem item, boolean first) {
    return item.hazards().stream()
        .map(it -> first ? it.name() + ": " + it.precaution() : it.name())
        .collect(Collectors.joining(first ? "\n" : ", "));
  }

  /** Returns what the record says, as it is typed; in double quotes where space would be lost. */
  private static String found(InspectedAspect aspect) {
    String yaml = aspect.found().yaml();
    if (yaml.isEmpty()) {
      return "";
    }
    String typed = aspect.found().typed();
    boolean group = aspect.control().kind() == Kind.COLOR && yaml.startsWith("{");
    String text = group ? yaml : CellFindingReader.inCell(typed);
    return text.length() <= LONGEST ? text : "";
  }

  private static String how(InspectedAspect aspect) {
    List<Choice> choices = aspect.control().choices();
    if (choices.isEmpty()) {
      return aspect.control().hint();
    }
    String words =
        choices.stream()
            .limit(SHOWN_IN_CELL)
            .map(Choice::id)
            .collect(Collectors.joining(", ", "one of: ", ""));
    return choices.size() <= SHOWN_IN_CELL
        ? words
        : words + " and " + (choices.size() - SHOWN_IN_CELL) + " more";
  }

  private static List<List<String>> facts(InspectionView view, SheetOrigin madeFor) {
    List<List<String>> facts = new ArrayList<>();
    facts.add(List.of("Vehicle", view.vehicle()));
    view.facts().stream().map(InspectionTable::named).forEach(facts::add);
    facts.add(List.of("To look at", view.items() + " items, " + view.time()));
    facts.add(List.of("", ""));
    facts.add(List.of("Standard", view.standard() + ", " + view.edition()));
    facts.add(List.of("Rule set", madeFor.ruleSet()));
    facts.add(List.of("SHA-256", madeFor.sha256()));
    madeFor.record().ifPresent(it -> facts.add(List.of("Record", it)));
    facts.add(List.of("", ""));
    facts.add(
        List.of(
            "To fill in",
            "Write into the columns Found, Note and Evidence. Leave empty what was not looked at."
                + " Keep the headings and the columns Aspect and Item; rows may be sorted, hidden"
                + " or deleted, and columns of your own stand beside them."));
    facts.add(
        List.of(
            "To read it in",
            "assize merge RECORD.yaml TABLE.xlsx shows what would change; --write changes it."));
    if (!view.hazards().isEmpty()) {
      facts.add(List.of("", ""));
      view.hazards().stream().map(InspectionTable::hazard).forEach(facts::add);
      facts.add(List.of("", view.afterHazards()));
    }
    return facts;
  }

  private static List<String> named(ReportHeaderView.Named fact) {
    return List.of(fact.name(), fact.value());
  }

  private static List<String> hazard(HazardView hazard) {
    return List.of("Hazard: " + hazard.name(), hazard.precaution());
  }
}
