package assize.spreadsheet;

import assize.aspect.Aspect;
import assize.aspect.Kind.Holds;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.record.CellFindingReader;
import java.util.Optional;
import java.util.regex.Pattern;

/** Says whether a cell still holds what somebody typed, and what to do where it does not. */
final class CellIntegrityCheck {
  /** What spreadsheets make of long numbers and of days when they save texts. */
  private static final Pattern LOOKS_MADE =
      Pattern.compile(
          "[0-9](?:[.,][0-9]+)?E\\+[0-9]{2,3}|[0-9]{1,2}-(?:Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep"
              + "|Oct|Nov|Dec)|(?:Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)-[0-9]{2}"
              + "|[0-9]{1,2}/[0-9]{1,2}/[0-9]{4}");

  private static final String AS_TEXT = "format the cell as Text, then type it again";

  private final SheetGrid grid;
  private final CellSourceText texts;
  private final CellFindingReader findings;

  CellIntegrityCheck(SheetGrid grid, CellSourceText texts, CellFindingReader findings) {
    this.grid = grid;
    this.texts = texts;
    this.findings = findings;
  }

  /** Says whether a cell may name an item or an aspect. */
  boolean isName(Cell cell) {
    return isText(cell);
  }

  /** Says whether a cell may hold a note or names of evidence: a plain number is one too. */
  boolean isText(Cell cell) {
    return isSingle(cell)
        && (cell.kind() == Cell.Kind.TEXT || cell.kind() == Cell.Kind.NUMBER || changed(cell));
  }

  /** Says whether a cell may hold what was found of an aspect. */
  boolean isFinding(Cell cell, Aspect aspect) {
    if (!isSingle(cell)) {
      return false;
    }
    if (cell.kind() == Cell.Kind.TEXT) {
      looksMade(cell, aspect);
      return true;
    }
    return cell.kind() == Cell.Kind.NUMBER && aspect.kind().cell() == Holds.NUMBER
        || cell.kind() == Cell.Kind.YES_NO && aspect.kind().cell() == Holds.YES_NO
        || changed(cell);
  }

  private void looksMade(Cell cell, Aspect aspect) {
    if (aspect.kind().cell() == Holds.EXACT && LOOKS_MADE.matcher(cell.text()).matches()) {
      findings.add(
          Diagnostic.of(
              DiagnosticCode.POSSIBLY_CONVERTED_CELL,
              texts.at(cell),
              "a spreadsheet may have made \"" + cell.text() + "\" of what was typed",
              "look at the part again, or at an older copy of the table"));
    }
  }

  private boolean isSingle(Cell cell) {
    Optional<SheetGrid.Merged> merged =
        grid.merged().stream().filter(it -> it.has(cell.row(), cell.column())).findFirst();
    merged.ifPresent(
        it ->
            findings.add(
                Diagnostic.of(
                    DiagnosticCode.MERGED_CELLS,
                    texts.at(cell),
                    "the cells "
                        + it.name()
                        + " are made one, so that it can't be told which row this belongs to",
                    "part the cells, and write what was found into each row")));
    return merged.isEmpty();
  }

  /** Reports what a spreadsheet made of a text; never true. */
  private boolean changed(Cell cell) {
    switch (cell.kind()) {
      case FORMULA ->
          report(
              cell,
              DiagnosticCode.FORMULA,
              "this cell holds a formula, and what came of it is not trusted",
              "copy the cell, paste it as a value, or type what was found");
      case FAULT ->
          report(
              cell,
              DiagnosticCode.FORMULA,
              "this cell holds the fault " + cell.text() + " of a spreadsheet",
              "type what was found, or empty the cell");
      case DAY ->
          report(
              cell,
              DiagnosticCode.CONVERTED_CELL,
              "this cell holds the day "
                  + cell.text()
                  + "; a spreadsheet makes days of texts such as 1-2 or 3/32",
              AS_TEXT);
      case YES_NO ->
          report(
              cell,
              DiagnosticCode.CONVERTED_CELL,
              "this cell holds a yes or no of a spreadsheet, not a text",
              AS_TEXT);
      default ->
          report(
              cell,
              DiagnosticCode.CONVERTED_CELL,
              "this cell holds the number "
                  + cell.text()
                  + "; zeros in front, and how it was typed, may be lost",
              AS_TEXT);
    }
    return false;
  }

  private void report(Cell cell, DiagnosticCode code, String message, String hint) {
    findings.add(Diagnostic.of(code, texts.at(cell), message, hint));
  }
}
