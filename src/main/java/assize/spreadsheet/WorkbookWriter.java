package assize.spreadsheet;

import assize.aspect.Control.Choice;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.BorderStyle;
import org.dhatim.fastexcel.DataValidationErrorStyle;
import org.dhatim.fastexcel.PaperSize;
import org.dhatim.fastexcel.StyleSetter;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * Writes the table as a workbook of three sheets: what to fill in, the vehicle, the words. Every
 * cell is a text, so that nothing is made of it.
 */
final class WorkbookWriter {
  private static final String TEXT = "@";
  private static final String HEAD = "DDE3E8";
  private static final String TO_FILL_IN = "FFF8E1";
  private static final String LINE = "B8C0C8";
  private static final String QUIET = "6B7580";
  private static final String ALARM = "8A1C1C";
  private static final int FONT = 10;

  /** In points, of ten-point letters. */
  private static final double LINE_HEIGHT = 12.75;

  private static final int NAME_WIDTH = 26;
  private static final int TEXT_WIDTH = 90;
  private static final int MADE_FOR_WIDTH = 10;

  /** The day on which all times of the container stand, the first that it can hold. */
  private static final LocalDateTime FIXED = LocalDateTime.of(1980, 1, 1, 0, 0);

  private final Worksheet walk;
  private final Worksheet vehicle;
  private final Worksheet words;

  private WorkbookWriter(Workbook workbook) {
    this.walk = workbook.newWorksheet(InspectionTable.NAME);
    this.vehicle = workbook.newWorksheet("Vehicle");
    this.words = workbook.newWorksheet("Words");
  }

  /** Returns the file: the same bytes for the same table. */
  static byte[] write(InspectionTable table) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (Workbook workbook = new Workbook(out, "Assize", "1.0")) {
      WorkbookWriter writer = new WorkbookWriter(workbook);
      writer.walk(table, writer.words(table));
      writer.vehicle(table);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return timeless(out.toByteArray());
  }

  private void walk(InspectionTable table, List<int[]> lists) {
    Column[] columns = Column.values();
    for (Column column : columns) {
      put(walk, 0, column.ordinal(), column.heading());
      walk.width(column.ordinal(), column.width());
    }
    head(walk, columns.length);
    put(walk, 0, columns.length, table.madeFor().heading());
    font(walk.style(0, columns.length))
        .fontColor(QUIET)
        .format(TEXT)
        .verticalAlignment("top")
        .horizontalAlignment("fill")
        .set();
    walk.width(columns.length, MADE_FOR_WIDTH);
    for (int i = 0; i < table.rows().size(); i++) {
      row(i + 1, table.rows().get(i), lists);
    }
    walk.freezePane(0, 1);
    walk.setAutoFilter(0, 0, table.rows().size(), columns.length - 1);
    walk.repeatRows(0);
    walk.pageOrientation("landscape");
    walk.paperSize(PaperSize.A4_PAPER);
    walk.fitToWidth((short) 1);
    walk.fitToHeight((short) 0);
    walk.footer("Page &P of &N", org.dhatim.fastexcel.Position.CENTER);
  }

  private void row(int number, InspectionTable.TableRow row, List<int[]> lists) {
    for (Column column : Column.values()) {
      int at = column.ordinal();
      put(walk, number, at, row.cells().get(at));
      StyleSetter style = cellStyle(walk, number, at);
      boolean toFillIn = column.isRead() && column != Column.ASPECT && column != Column.ITEM;
      if (toFillIn) {
        style.fillColor(TO_FILL_IN);
      } else if (column == Column.HAZARD) {
        style.fontColor(ALARM);
      } else if (column == Column.ITEM || column == Column.HOW) {
        style.fontColor(QUIET);
      }
      style.set();
    }
    walk.rowHeight(number, height(row.cells()));
    row.list()
        .map(lists::get)
        .ifPresent(
            it ->
                walk.range(number, Column.FOUND.ordinal(), number, Column.FOUND.ordinal())
                    .validateWithList(words.range(it[0], 1, it[1], 1))
                    .allowBlank(true)
                    .errorStyle(DataValidationErrorStyle.INFORMATION)
                    .showErrorMessage(false)
                    .errorTitle("")
                    .error(""));
  }

  /** Writes the lists one below the other, and returns the first and last row of each. */
  private List<int[]> words(InspectionTable table) {
    put(words, 0, 0, "For");
    put(words, 0, 1, "Word");
    put(words, 0, 2, "What it means");
    head(words, 3);
    words.width(0, NAME_WIDTH);
    words.width(1, NAME_WIDTH);
    words.width(2, TEXT_WIDTH / 2);
    words.freezePane(0, 1);
    List<int[]> found = new ArrayList<>();
    int row = 1;
    for (InspectionTable.Words list : table.lists()) {
      found.add(new int[] {row, row + list.choices().size() - 1});
      for (Choice choice : list.choices()) {
        put(words, row, 0, list.of());
        put(words, row, 1, choice.id());
        put(words, row, 2, choice.name());
        for (int column = 0; column < 3; column++) {
          cellStyle(words, row, column).set();
        }
        row++;
      }
    }
    return found;
  }

  private void vehicle(InspectionTable table) {
    vehicle.width(0, NAME_WIDTH);
    vehicle.width(1, TEXT_WIDTH);
    for (int row = 0; row < table.facts().size(); row++) {
      List<String> fact = table.facts().get(row);
      put(vehicle, row, 0, fact.get(0));
      put(vehicle, row, 1, fact.get(1));
      vehicle.rowHeight(row, height(lines(fact.get(1), TEXT_WIDTH)));
      font(vehicle.style(row, 0)).bold().verticalAlignment("top").wrapText(true).format(TEXT).set();
      font(vehicle.style(row, 1)).verticalAlignment("top").wrapText(true).format(TEXT).set();
    }
  }

  private static void head(Worksheet sheet, int columns) {
    font(sheet.range(0, 0, 0, columns - 1).style())
        .bold()
        .fillColor(HEAD)
        .borderStyle(BorderStyle.THIN)
        .borderColor(LINE)
        .verticalAlignment("top")
        .wrapText(true)
        .format(TEXT)
        .set();
  }

  private static StyleSetter cellStyle(Worksheet sheet, int row, int column) {
    return font(sheet.style(row, column))
        .format(TEXT)
        .verticalAlignment("top")
        .wrapText(true)
        .borderStyle(BorderStyle.THIN)
        .borderColor(LINE);
  }

  private static StyleSetter font(StyleSetter style) {
    return style.fontName("Arial").fontSize(FONT);
  }

  /** Returns the height at which a row shows all of its cells: not every spreadsheet finds it. */
  private static double height(List<String> cells) {
    int lines = 1;
    for (Column column : Column.values()) {
      lines = Math.max(lines, lines(cells.get(column.ordinal()), column.width()));
    }
    return height(lines);
  }

  private static double height(int lines) {
    return Math.min(Worksheet.MAX_ROW_HEIGHT, lines * LINE_HEIGHT + LINE_HEIGHT / 3);
  }

  /** Returns about how many lines a text takes: most letters are narrower than a digit. */
  private static int lines(String text, int width) {
    int letters = Math.max(1, width * 5 / 4);
    return text.lines().mapToInt(it -> 1 + Math.max(0, it.length() - 1) / letters).sum();
  }

  private static void put(Worksheet sheet, int row, int column, String text) {
    if (!text.isEmpty()) {
      String escaped = SharedStrings.escaped(text);
      boolean fits = escaped.length() <= InspectionTable.LONGEST;
      sheet.value(row, column, fits ? escaped : escaped.substring(0, InspectionTable.LONGEST));
    }
  }

  /** Takes out when the file was made, and sets every time in its container to one day. */
  private static byte[] timeless(byte[] file) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream to = new ZipOutputStream(out)) {
      List<ZipContainer.Part> parts = new ArrayList<>();
      ZipContainer.read(file, Integer.MAX_VALUE, WorkbookParts.MOST_PARTS, parts::add);
      for (ZipContainer.Part part : parts) {
        ZipEntry entry = new ZipEntry(part.name());
        entry.setTimeLocal(FIXED);
        to.putNextEntry(entry);
        to.write(part.name().equals("docProps/core.xml") ? undated(part.bytes()) : part.bytes());
        to.closeEntry();
      }
    } catch (IOException | UnreadableTableException e) {
      throw new IllegalStateException("what was just written can't be read", e);
    }
    return out.toByteArray();
  }

  private static byte[] undated(byte[] core) {
    return new String(core, StandardCharsets.UTF_8)
        .replaceAll("<dcterms:created.*?</dcterms:created>", "")
        .getBytes(StandardCharsets.UTF_8);
  }
}
