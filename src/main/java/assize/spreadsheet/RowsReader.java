package assize.spreadsheet;

import assize.aspect.Aspect;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.diagnostic.Result;
import assize.record.CellFindingReader;
import assize.record.Observation;
import assize.record.VehicleRecord;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import assize.text.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Reads the rows below the headings. */
final class RowsReader {
  private static final String NOTE = Observation.NOTE.name();
  private static final String EVIDENCE = Observation.EVIDENCE.name();

  private final SheetGrid grid;
  private final HeaderRow.HeaderCells headings;
  private final Map<Column, Cell> columns;
  private final RuleSet rules;
  private final VehicleRecord record;
  private final CellSourceText texts;
  private final CellFindingReader findings;
  private final CellIntegrityCheck kinds;
  private final Map<List<String>, FilledSheet.SheetEntry> entries = new LinkedHashMap<>();
  private final Map<String, Set<String>> notes = new HashMap<>();
  private final Map<String, Set<String>> evidence = new HashMap<>();

  RowsReader(
      SheetGrid grid,
      HeaderRow.HeaderCells headings,
      String shown,
      RuleSet rules,
      VehicleRecord record)
      throws UnreadableTableException {
    this.grid = grid;
    this.headings = headings;
    this.columns = headings.columns();
    this.rules = rules;
    this.record = record;
    this.texts = new CellSourceText(shown, grid.sheet(), shownCells());
    this.findings = new CellFindingReader(rules, record.evidence().keySet());
    this.kinds = new CellIntegrityCheck(grid, texts, findings);
  }

  /** Returns the cells that messages may show: the headings, and what is read below them. */
  private List<Cell> shownCells() throws UnreadableTableException {
    List<Cell> shown = new ArrayList<>(headings.cells());
    long length = 0;
    for (NavigableMap<Integer, Cell> row : filledRows()) {
      for (Cell cell : row.values()) {
        if (isRead(cell)) {
          shown.add(cell);
          length += cell.text().length();
        }
      }
    }
    if (length > TableReader.LARGEST_CSV) {
      throw new UnreadableTableException(
          DiagnosticCode.FILE_TOO_LARGE,
          "what is filled in may have at most 4 MiB; this has more",
          "shorten the notes");
    }
    return shown;
  }

  private boolean isRead(Cell cell) {
    return columns.entrySet().stream()
        .anyMatch(it -> it.getKey().isRead() && it.getValue().column() == cell.column());
  }

  /** Returns the rows in which something is filled in. */
  private List<NavigableMap<Integer, Cell>> filledRows() {
    return grid.rows().tailMap(headings.number(), false).values().stream()
        .filter(row -> filled(row).findFirst().isPresent())
        .toList();
  }

  private Stream<Cell> filled(Map<Integer, Cell> row) {
    return Stream.of(Column.FOUND, Column.NOTE, Column.EVIDENCE)
        .flatMap(it -> cell(row, it).stream());
  }

  private Optional<Cell> cell(Map<Integer, Cell> row, Column column) {
    return Optional.ofNullable(columns.get(column))
        .flatMap(it -> Optional.ofNullable(row.get(it.column())));
  }

  Result<FilledSheet> read() {
    Optional<SheetOrigin> madeFor = headings.madeFor();
    if (madeFor.isPresent() && !madeFor.get().ruleSet().equals(rules.id())) {
      return Result.failed(
          List.of(
              Diagnostic.of(
                  DiagnosticCode.SHEET_FOR_OTHER_RULE_SET,
                  madeForAt(),
                  "this table was made for the rule set \""
                      + madeFor.get().ruleSet()
                      + "\"; the record is judged by \""
                      + rules.id()
                      + "\"",
                  "name the record that it belongs to, or write the table anew")));
    }
    findings.checkCharacters(texts.file());
    HeaderRow.check(headings, texts).forEach(findings::add);
    madeFor.ifPresent(this::checkMadeFor);
    if (columns.containsKey(Column.ITEM)) {
      filledRows().forEach(this::row);
    }
    notes.forEach((item, all) -> whole(item, NOTE, CellFindingReader.line(String.join("\n", all))));
    evidence.forEach((item, all) -> whole(item, EVIDENCE, CellFindingReader.line(all)));
    List<Diagnostic> found = findings.diagnostics();
    FilledSheet filled = new FilledSheet(madeFor, List.copyOf(entries.values()));
    boolean good = found.stream().noneMatch(Diagnostic::isError);
    return good ? new Result<>(Optional.of(filled), found) : Result.failed(found);
  }

  private Span madeForAt() {
    return headings.cells().stream()
        .filter(it -> SheetOrigin.of(it.text()).isPresent())
        .findFirst()
        .map(texts::at)
        .orElseThrow();
  }

  private void checkMadeFor(SheetOrigin made) {
    if (!made.edition().equals(rules.edition())) {
      findings.add(
          Diagnostic.of(
              DiagnosticCode.RECORD_FOR_OTHER_EDITION,
              madeForAt(),
              "this table was made for edition \""
                  + made.edition()
                  + "\"; the rule set is edition \""
                  + rules.edition()
                  + "\"",
              "write the table anew, or look through what it says"));
    } else if (!made.sha256().equals(SheetOrigin.digest(rules))) {
      findings.add(
          Diagnostic.of(
              DiagnosticCode.RULES_CHANGED,
              madeForAt(),
              "the rule set has changed since this table was made",
              "look through what it says, or write the table anew"));
    }
    if (made.record().isPresent() && !made.record().get().equals(record.id())) {
      findings.add(
          Diagnostic.of(
              DiagnosticCode.SHEET_FOR_OTHER_RECORD,
              madeForAt(),
              "this table was made for the record \""
                  + made.record().get()
                  + "\"; this is \""
                  + record.id()
                  + "\"",
              "look whether it is about this vehicle"));
    }
  }

  private void row(Map<Integer, Cell> row) {
    Optional<Cell> itemCell = cell(row, Column.ITEM).filter(kinds::isName);
    if (itemCell.isEmpty()) {
      if (cell(row, Column.ITEM).isEmpty()) {
        noName(row, Column.ITEM, "which item it is about");
      }
      return;
    }
    findings.item(texts.at(itemCell.get())).ifPresent(item -> row(row, item));
  }

  private void noName(Map<Integer, Cell> row, Column column, String what) {
    filled(row)
        .findFirst()
        .ifPresent(
            it ->
                findings.add(
                    Diagnostic.of(
                        DiagnosticCode.ROW_WITHOUT_NAME,
                        texts.at(it),
                        "something is written here, but the row does not say " + what,
                        "fill in "
                            + Cell.name(it.row(), columns.getOrDefault(column, it).column())
                            + ", in the column \""
                            + column.heading()
                            + "\"")));
  }

  private void row(Map<Integer, Cell> row, Item item) {
    cell(row, Column.FOUND).ifPresent(it -> found(row, item, it));
    cell(row, Column.NOTE).filter(kinds::isText).ifPresent(it -> note(item, it));
    cell(row, Column.EVIDENCE).filter(kinds::isText).ifPresent(it -> evidence(item, it));
  }

  private void found(Map<Integer, Cell> row, Item item, Cell cell) {
    Optional<Cell> named = cell(row, Column.ASPECT);
    if (columns.containsKey(Column.ASPECT) && named.isEmpty()) {
      noName(row, Column.ASPECT, "which aspect it is about");
    }
    Optional<Span> aspectAt = named.filter(kinds::isName).map(texts::at);
    Optional<Aspect> aspect = aspectAt.flatMap(findings::aspect);
    if (aspect.isEmpty() || !kinds.isFinding(cell, aspect.get())) {
      return;
    }
    findings
        .finding(item, aspect.get(), aspectAt.orElseThrow(), texts.at(cell))
        .ifPresent(it -> put(item, aspect.get(), it.yaml(), texts.at(cell)));
  }

  private void put(Item item, Aspect aspect, String yaml, Span at) {
    FilledSheet.SheetEntry entry = new FilledSheet.SheetEntry(item.id(), aspect.word(), yaml, at);
    FilledSheet.SheetEntry before = entries.putIfAbsent(List.of(item.id(), aspect.word()), entry);
    if (before != null && !before.yaml().equals(yaml)) {
      findings.add(
          Diagnostic.of(
                  DiagnosticCode.DUPLICATE_KEY,
                  at,
                  "the "
                      + aspect.spoken()
                      + " of \""
                      + item.id()
                      + "\" is filled in twice, and not the same",
                  "keep one of the two rows")
              .with(before.at(), "filled in here too"));
    }
  }

  /** Takes notes in the rows of one item as one, in their order. */
  private void note(Item item, Cell cell) {
    gather(notes, item, NOTE, cell).add(cell.text());
  }

  private void evidence(Item item, Cell cell) {
    List<String> cited = findings.evidence(texts.at(cell));
    if (!cited.isEmpty()) {
      gather(evidence, item, EVIDENCE, cell).addAll(cited);
    }
  }

  /**
   * Returns what the rows of an item say under a key; it stands where the first of them says it.
   */
  private Set<String> gather(Map<String, Set<String>> said, Item item, String key, Cell cell) {
    return said.computeIfAbsent(
        item.id(),
        id -> {
          entries.put(List.of(id, key), new FilledSheet.SheetEntry(id, key, "", texts.at(cell)));
          return new LinkedHashSet<>();
        });
  }

  private void whole(String item, String key, String yaml) {
    entries.computeIfPresent(
        List.of(item, key), (path, it) -> new FilledSheet.SheetEntry(item, key, yaml, it.at()));
  }
}
