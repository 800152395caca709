package assize.spreadsheet;

import assize.diagnostic.DiagnosticCode;
import assize.diagnostic.Result;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Reads an inspection table that somebody filled in: {@code .xlsx} or {@code .csv}. */
public final class TableReader {
  static final int LARGEST = 16 * 1024 * 1024;
  static final int LARGEST_CSV = 4 * 1024 * 1024;
  private static final byte[] CONTAINER = {'P', 'K', 3, 4};
  private static final byte[] OLD_OFFICE = {
    (byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, (byte) 0xA1, (byte) 0xB1, 0x1A, (byte) 0xE1
  };

  private TableReader() {}

  /** Says whether a file is named like a table. */
  public static boolean isTable(Path file) {
    return isWorkbook(file) || named(file, ".csv") || named(file, ".tsv");
  }

  private static boolean isWorkbook(Path file) {
    return named(file, ".xlsx") || named(file, ".xlsm");
  }

  private static boolean named(Path file, String ending) {
    return file.toString().toLowerCase(Locale.ROOT).endsWith(ending);
  }

  /**
   * Reads a table.
   *
   * @param shown how messages name the file
   * @param rules the rule set whose words it uses
   * @param record the record that it is read for, whose evidence it may name
   * @return what it says, unless anything in it is wrong; every message names its cell
   */
  public static Result<FilledSheet> read(
      Path file, String shown, RuleSet rules, VehicleRecord record) {
    try {
      SheetGrid grid =
          isWorkbook(file) ? workbook(load(file, LARGEST)) : csv(load(file, LARGEST_CSV));
      HeaderRow.HeaderCells headings = HeaderRow.best(grid).orElseThrow(TableReader::noHeadings);
      return new RowsReader(grid, headings, shown, rules, record).read();
    } catch (UnreadableTableException e) {
      return Result.failed(List.of(e.of(shown)));
    }
  }

  private static UnreadableTableException noHeadings() {
    return UnreadableTableException.notATable(
        "no row of this table has the headings \"Item\", \"Aspect\" and \"Found\"",
        "begin with a table that `assize sheet --out truck.xlsx` wrote, and keep its headings");
  }

  private static byte[] load(Path file, int most) throws UnreadableTableException {
    if (!Files.exists(file)) {
      throw new UnreadableTableException(
          DiagnosticCode.FILE_NOT_FOUND, "there is no such file", "look at its name again");
    }
    if (!Files.isRegularFile(file)) {
      throw new UnreadableTableException(
          DiagnosticCode.CANNOT_OPEN_FILE, "this is not a file", "name a file here");
    }
    byte[] bytes;
    try (InputStream in = Files.newInputStream(file)) {
      bytes = in.readNBytes(most + 1);
    } catch (IOException e) {
      throw new UnreadableTableException(
          DiagnosticCode.CANNOT_OPEN_FILE,
          "this file can't be opened",
          "close it in other programs, and look whether you may read it");
    }
    if (bytes.length > most) {
      throw new UnreadableTableException(
          DiagnosticCode.FILE_TOO_LARGE,
          "a table may have at most " + most / (1024 * 1024) + " MiB; this one has more",
          "take the pictures out of it, or copy the sheet alone into a new workbook");
    }
    if (bytes.length == 0) {
      throw new UnreadableTableException(
          DiagnosticCode.EMPTY_FILE, "there is nothing in this file", "copy it again");
    }
    if (begins(bytes, OLD_OFFICE)) {
      throw oldOffice(bytes);
    }
    return bytes;
  }

  private static boolean begins(byte[] bytes, byte[] with) {
    return bytes.length >= with.length
        && Arrays.equals(bytes, 0, with.length, with, 0, with.length);
  }

  /**
   * Tells a workbook with a password, which is put into a file of the old kind, from an old one.
   */
  private static UnreadableTableException oldOffice(byte[] bytes) {
    String name = "EncryptedPackage";
    byte[] wide = name.getBytes(StandardCharsets.UTF_16LE);
    boolean locked =
        new String(bytes, StandardCharsets.ISO_8859_1)
            .contains(new String(wide, StandardCharsets.ISO_8859_1));
    return locked
        ? UnreadableTableException.notATable(
            "this workbook is locked with a password", "save it without a password")
        : UnreadableTableException.notATable(
            "this is a file of an old office program (.xls)", "save it as .xlsx");
  }

  private static SheetGrid workbook(byte[] bytes) throws UnreadableTableException {
    if (!begins(bytes, CONTAINER)) {
      throw UnreadableTableException.notATable(
          "this is no .xlsx file, whatever its name says",
          "open it in the spreadsheet and save it as .xlsx; a file of texts is named .csv");
    }
    List<SheetGrid> sheets = Workbook.read(bytes);
    return sheets.stream()
        .filter(it -> it.sheet().equals(InspectionTable.NAME))
        .filter(it -> HeaderRow.best(it).isPresent())
        .findFirst()
        .or(() -> sheets.stream().filter(it -> HeaderRow.best(it).isPresent()).findFirst())
        .orElseThrow(TableReader::noHeadings);
  }

  private static SheetGrid csv(byte[] bytes) throws UnreadableTableException {
    if (begins(bytes, CONTAINER)) {
      throw UnreadableTableException.notATable(
          "this is no CSV file: it looks like a workbook", "name it .xlsx, or save it as CSV");
    }
    return CsvTable.read(bytes);
  }
}
