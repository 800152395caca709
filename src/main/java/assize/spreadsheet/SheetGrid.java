package assize.spreadsheet;

import java.util.Collections;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/**
 * One sheet: the cells that hold something.
 *
 * @param sheet its name; empty for a file that has but one table
 * @param rows by their number, counted from 0, then by column
 * @param merged pieces in which several cells are made one
 */
record SheetGrid(
    String sheet, NavigableMap<Integer, NavigableMap<Integer, Cell>> rows, List<Merged> merged) {
  SheetGrid {
    rows = Collections.unmodifiableNavigableMap(rows);
    merged = List.copyOf(merged);
  }

  /** Cells that are made one, from the first to the last, both included. */
  record Merged(Cell.Place first, Cell.Place last) {
    /** Says whether a cell is one of them. */
    boolean has(int row, int column) {
      return row >= first.row()
          && row <= last.row()
          && column >= first.column()
          && column <= last.column();
    }

    String name() {
      return Cell.name(first.row(), first.column()) + ":" + Cell.name(last.row(), last.column());
    }
  }

  /** Returns a cell, if it holds something. */
  Optional<Cell> cell(int row, int column) {
    return Optional.ofNullable(rows.get(row)).flatMap(it -> Optional.ofNullable(it.get(column)));
  }

  /** Gathers cells; those that hold nothing but space are left out. */
  static final class Builder {
    private final String sheet;
    private final NavigableMap<Integer, NavigableMap<Integer, Cell>> rows = new TreeMap<>();

    Builder(String sheet) {
      this.sheet = sheet;
    }

    /** Puts a cell in; says false where one stands there already. */
    boolean put(int row, int column, Cell.Kind kind, String text) {
      String bare = Cell.bare(text);
      return bare.isEmpty()
          || rows.computeIfAbsent(row, it -> new TreeMap<>())
                  .putIfAbsent(column, new Cell(row, column, kind, bare))
              == null;
    }

    SheetGrid build(List<Merged> merged) {
      return new SheetGrid(sheet, rows, merged);
    }
  }
}
