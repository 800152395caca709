package assize.fuzz;

import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import assize.spreadsheet.TableReader;
import assize.text.SourceFile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Tables: CSV as it stands; and the bytes as a workbook, once as they are and once as the parts of
 * one, which zero bytes part.
 */
public final class TableTarget {
  private static final RuleSet RULES = Checks.rules();
  private static final VehicleRecord RECORD =
      RecordReader.parse(new SourceFile("record.yaml", Checks.file("record.yaml")), RULES)
          .value()
          .orElseThrow();
  private static final List<String> PARTS =
      List.of(
          "xl/worksheets/sheet1.xml",
          "xl/sharedStrings.xml",
          "xl/workbook.xml",
          "xl/_rels/workbook.xml.rels",
          "xl/styles.xml",
          "[Content_Types].xml");

  private TableTarget() {}

  /** Reads the rule set before any time is taken. */
  public static void fuzzerInitialize() {
    Checks.demand(!RULES.id().isEmpty(), "no rule set");
  }

  /** Tries one input. */
  public static void fuzzerTestOneInput(byte[] data) throws IOException {
    read(".csv", data);
    read(".xlsx", data);
    read(".xlsx", workbook(data));
  }

  private static void read(String ending, byte[] bytes) throws IOException {
    Path file = Files.createTempFile("table", ending);
    try {
      Files.write(file, bytes);
      Checks.result(
          TableReader.read(file, "table", RULES, RECORD),
          TableReader.read(file, "table", RULES, RECORD));
    } finally {
      Files.delete(file);
    }
  }

  /** Returns a workbook whose parts the bytes are, one after another. */
  private static byte[] workbook(byte[] data) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      int from = 0;
      for (String part : PARTS) {
        int end = from;
        while (end < data.length && data[end] != 0) {
          end++;
        }
        zip.putNextEntry(new ZipEntry(part));
        zip.write(data, Math.min(from, data.length), Math.max(0, end - from));
        zip.closeEntry();
        from = end + 1;
      }
    }
    return bytes.toByteArray();
  }
}
