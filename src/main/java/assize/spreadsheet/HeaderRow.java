package assize.spreadsheet;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.diagnostic.NameSuggestions;
import assize.text.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds the row of headings, and which column is which, in whatever order they stand. */
final class HeaderRow {
  private static final int LOOKED_AT = 30;
  private static final int KNOWN_LEAST = 2;

  /** The mark of UTF-8 as Windows-1252 reads it. */
  private static final String MISREAD = "\u00EF\u00BB\u00BF";

  private HeaderRow() {}

  /**
   * A row that may be that of the headings.
   *
   * @param number counted from 0
   * @param known how many different headings it has that are known
   */
  record HeaderCells(int number, List<Cell> cells, int known) {
    HeaderCells {
      cells = List.copyOf(cells);
    }

    /** Returns where each column stands: the first cell with its heading. */
    Map<Column, Cell> columns() {
      Map<Column, Cell> found = new EnumMap<>(Column.class);
      cells.forEach(it -> Column.of(it.text()).ifPresent(known -> found.putIfAbsent(known, it)));
      return found;
    }

    Optional<SheetOrigin> madeFor() {
      return cells.stream().flatMap(it -> SheetOrigin.of(it.text()).stream()).findFirst();
    }
  }

  /** Returns the row with the most known headings among the first of a sheet. */
  static Optional<HeaderCells> best(SheetGrid grid) {
    return grid.rows().entrySet().stream()
        .limit(LOOKED_AT)
        .map(it -> row(it.getKey(), List.copyOf(it.getValue().values())))
        .filter(it -> it.known() >= KNOWN_LEAST)
        .max(Comparator.comparingInt(HeaderCells::known).thenComparing(it -> -it.number()));
  }

  private static HeaderCells row(int number, List<Cell> cells) {
    long known = cells.stream().flatMap(it -> Column.of(it.text()).stream()).distinct().count();
    return new HeaderCells(number, cells, (int) known);
  }

  /** Says what is wrong with a row of headings. */
  static List<Diagnostic> check(HeaderCells row, CellSourceText texts) {
    List<Diagnostic> found = new ArrayList<>();
    Map<Column, Cell> columns = row.columns();
    List<Cell> unknown =
        row.cells().stream()
            .filter(it -> !it.text().startsWith(MISREAD))
            .filter(it -> Column.of(it.text()).isEmpty() && SheetOrigin.of(it.text()).isEmpty())
            .toList();
    List<Column> missing =
        Stream.of(Column.values()).filter(it -> it.isNeeded() && !columns.containsKey(it)).toList();
    missing.forEach(it -> found.add(missing(it, row, unknown, texts)));
    for (Cell cell : row.cells()) {
      Optional<Cell> first = Column.of(cell.text()).map(columns::get);
      if (first.isPresent() && !first.get().equals(cell)) {
        found.add(
            Diagnostic.of(
                    DiagnosticCode.DUPLICATE_NAME,
                    texts.at(cell),
                    "two columns are headed \"" + cell.text() + "\"",
                    "give the one that is not to be read another heading")
                .with(texts.at(first.get()), "the first of them"));
      }
    }
    row.cells().stream()
        .filter(it -> it.text().startsWith(MISREAD))
        .forEach(it -> found.add(misread(texts.at(it))));
    if (missing.isEmpty()) {
      unknown.forEach(it -> found.add(notRead(it, texts.at(it))));
    }
    return found;
  }

  private static Diagnostic missing(
      Column column, HeaderCells row, List<Cell> unknown, CellSourceText texts) {
    Optional<String> near =
        NameSuggestions.nearest(column.heading(), unknown.stream().map(Cell::text).toList());
    Span at =
        texts.at(
            unknown.stream()
                .filter(it -> near.isPresent() && it.text().equals(near.get()))
                .findFirst()
                .orElseGet(() -> row.cells().get(0)));
    return Diagnostic.of(
        DiagnosticCode.MISSING_COLUMN,
        at,
        "no column is headed \"" + column.heading() + "\"",
        near.isPresent()
            ? "write \"" + column.heading() + "\" here"
            : "write \"" + column.heading() + "\" above the column that is meant");
  }

  private static Diagnostic misread(Span at) {
    return Diagnostic.of(
        DiagnosticCode.NOT_UTF8,
        at,
        "this table was opened as Windows-1252 though it is UTF-8, so that letters such as ± went"
            + " wrong",
        "open the CSV file again, choose UTF-8 there, and fill in that");
  }

  private static Diagnostic notRead(Cell cell, Span at) {
    return Diagnostic.of(
        DiagnosticCode.COLUMN_NOT_READ,
        at,
        "the column \"" + brief(cell.text()) + "\" is none of this table's and is not read",
        "what is to go into the record belongs into \""
            + Column.FOUND.heading()
            + "\" or \""
            + Column.NOTE.heading()
            + "\"");
  }

  private static String brief(String text) {
    return text.length() <= 40 ? text : text.substring(0, text.offsetByCodePoints(0, 20)) + "...";
  }
}
