package assize.spreadsheet;

import assize.diagnostic.DiagnosticCode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads one sheet of a workbook (ECMA-376 part 1, 18.3). */
final class SheetReader {
  /** Cells of all sheets, empty ones included. */
  static final int MOST_CELLS = 200_000;

  private static final int MOST_ROWS = 1_048_576;
  private static final int MOST_COLUMNS = 16_384;
  private static final int MOST_MERGED = 1000;
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?[0-9]{0,20}(\\.[0-9]{0,30})?([eE][+-]?[0-9]{1,3})?");

  /** Spreadsheets keep fifteen digits: what is behind them is their arithmetic's. */
  private static final MathContext SHOWN = new MathContext(15);

  private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);
  private static final LocalDate DAY_ZERO_1904 = LocalDate.of(1904, 1, 1);
  private static final int LAST_DAY = 2_958_465;

  private final SheetGrid.Builder grid;
  private final List<String> texts;
  private final NumberStyles styles;
  private final LocalDate dayZero;
  private final List<SheetGrid.Merged> merged = new ArrayList<>();
  private int count;
  private int row = -1;
  private int column;

  /**
   * Begins a sheet.
   *
   * @param count the cells of the sheets before
   */
  SheetReader(String name, List<String> texts, NumberStyles styles, boolean from1904, int count) {
    this.grid = new SheetGrid.Builder(name);
    this.texts = texts;
    this.styles = styles;
    this.dayZero = from1904 ? DAY_ZERO_1904 : DAY_ZERO;
    this.count = count;
  }

  /** Returns how many cells there have been up to here. */
  int count() {
    return count;
  }

  SheetGrid read(byte[] part) throws UnreadableTableException {
    Xml xml = Xml.of(part);
    while (xml.next()) {
      if (xml.begins("row")) {
        beginRow(xml.attribute("r"));
      } else if (xml.begins("c")) {
        cell(xml);
      } else if (xml.begins("mergeCell")) {
        merge(xml.attribute("ref").orElse(""));
      }
    }
    return grid.build(merged);
  }

  private void beginRow(Optional<String> number) throws UnreadableTableException {
    row = number.isPresent() ? whole(number.get(), MOST_ROWS) - 1 : row + 1;
    column = -1;
    if (row < 0) {
      throw UnreadableTableException.damaged("it has a row 0");
    }
  }

  private void cell(Xml xml) throws UnreadableTableException {
    if (++count > MOST_CELLS) {
      throw new UnreadableTableException(
          DiagnosticCode.TOO_MANY_ENTRIES,
          "a workbook may have at most " + MOST_CELLS + " cells; this one has more",
          "copy the sheet alone into a new workbook");
    }
    column++;
    Optional<String> name = xml.attribute("r");
    if (name.isPresent()) {
      Cell.Place place =
          Cell.Place.of(name.get())
              .filter(it -> it.row() == row && it.column() < MOST_COLUMNS)
              .orElseThrow(() -> UnreadableTableException.damaged("a cell of it stands nowhere"));
      column = place.column();
    }
    String type = xml.attribute("t").orElse("n");
    Optional<String> style = xml.attribute("s");
    Optional<String> formula = Optional.empty();
    String value = "";
    while (xml.next() && !xml.ends("c")) {
      if (xml.begins("f")) {
        formula = Optional.of("=" + xml.text());
      } else if (xml.begins("v")) {
        value = xml.text();
      } else if (xml.begins("is")) {
        value = SharedStrings.pieces(xml, "is");
      }
    }
    if (formula.isPresent()) {
      put(Cell.Kind.FORMULA, formula.get());
    } else if (!value.isEmpty()) {
      put(type, style, value);
    }
  }

  private void put(String type, Optional<String> style, String value)
      throws UnreadableTableException {
    switch (type) {
      case "s" -> put(Cell.Kind.TEXT, texts.get(whole(value, texts.size() - 1)));
      case "inlineStr" -> put(Cell.Kind.TEXT, value);
      case "str" -> put(Cell.Kind.TEXT, SharedStrings.unescaped(value));
      case "b" -> put(Cell.Kind.YES_NO, value.strip().equals("1") ? "yes" : "no");
      case "e" -> put(Cell.Kind.FAULT, value);
      case "d" -> put(Cell.Kind.DAY, value);
      case "n" -> number(styles.of(style), value.strip());
      default -> throw UnreadableTableException.damaged("a cell of it is of no known kind");
    }
  }

  private void number(Cell.Kind kind, String value) throws UnreadableTableException {
    if (!NUMBER.matcher(value).matches() || value.chars().noneMatch(Character::isDigit)) {
      throw UnreadableTableException.damaged("a number in it is none");
    }
    BigDecimal exact;
    try {
      exact = new BigDecimal(value).round(SHOWN);
    } catch (NumberFormatException e) {
      throw UnreadableTableException.damaged("a number in it is none");
    }
    boolean inDays = exact.signum() >= 0 && exact.compareTo(BigDecimal.valueOf(LAST_DAY)) <= 0;
    if (kind == Cell.Kind.DAY && inDays) {
      put(kind, dayZero.plusDays(exact.longValue()).toString());
    } else {
      put(kind, exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString());
    }
  }

  private void put(Cell.Kind kind, String text) throws UnreadableTableException {
    if (!grid.put(row, column, kind, text)) {
      throw UnreadableTableException.damaged("two cells of it stand in one place");
    }
  }

  private void merge(String range) throws UnreadableTableException {
    String[] ends = range.split(":", -1);
    Optional<Cell.Place> first = Cell.Place.of(ends[0]);
    Optional<Cell.Place> last = Cell.Place.of(ends[ends.length - 1]);
    if (first.isEmpty() || last.isEmpty() || merged.size() >= MOST_MERGED) {
      throw UnreadableTableException.damaged(
          "cells of it are made one in a way that can't be read");
    }
    merged.add(new SheetGrid.Merged(first.get(), last.get()));
  }

  /** Reads a whole number from 0 to {@code most}. */
  private static int whole(String text, int most) throws UnreadableTableException {
    String bare = text.strip();
    if (!bare.matches("[0-9]{1,9}") || Integer.parseInt(bare) > most) {
      throw UnreadableTableException.damaged("a number in it is out of range");
    }
    return Integer.parseInt(bare);
  }
}
