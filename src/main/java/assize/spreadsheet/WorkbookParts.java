package assize.spreadsheet;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The XML parts of a workbook (ECMA-376 part 2), taken out of its container within bounds. */
final class WorkbookParts {
  /** All that is inflated, what is passed over included. */
  static final int MOST_INFLATED = 48 * 1024 * 1024;

  /** What is kept. */
  static final int MOST_KEPT = 32 * 1024 * 1024;

  static final int MOST_PARTS = 2000;

  private final Map<String, byte[]> parts = new HashMap<>();
  private long kept;

  private WorkbookParts() {}

  /** Takes the parts out of a file that begins as a container does. */
  static WorkbookParts of(byte[] file) throws UnreadableTableException {
    WorkbookParts found = new WorkbookParts();
    ZipContainer.read(file, MOST_INFLATED, MOST_PARTS, found::take);
    found.check();
    return found;
  }

  private void take(ZipContainer.Part part) throws UnreadableTableException {
    String folded = part.name().toLowerCase(Locale.ROOT);
    boolean keep = folded.endsWith(".xml") || folded.endsWith(".rels");
    kept += keep ? part.bytes().length : 0;
    if (kept > MOST_KEPT) {
      throw UnreadableTableException.tooMuch();
    }
    byte[] bytes = keep ? part.bytes() : new byte[0];
    if (parts.putIfAbsent(folded, bytes) != null) {
      throw UnreadableTableException.damaged("it has two parts of one name");
    }
  }

  /** Refuses what is a container of something else. */
  private void check() throws UnreadableTableException {
    if (parts.containsKey("content.xml") || parts.containsKey("mimetype")) {
      throw UnreadableTableException.notATable(
          "this is an OpenDocument file, whatever its name says", "save it as .xlsx or as CSV");
    }
    if (parts.containsKey("xl/workbook.bin")) {
      throw UnreadableTableException.notATable(
          "this is a binary workbook (.xlsb)", "save it as .xlsx or as CSV");
    }
    if (!parts.containsKey("[content_types].xml")) {
      throw UnreadableTableException.notATable(
          "this is a ZIP file, but no workbook", "save the table as .xlsx");
    }
  }

  /** Returns a part by its path, capitals or not. */
  Optional<byte[]> find(String path) {
    String folded = path.toLowerCase(Locale.ROOT);
    return Optional.ofNullable(parts.get(folded.startsWith("/") ? folded.substring(1) : folded));
  }
}
