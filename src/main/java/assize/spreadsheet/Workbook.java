package assize.spreadsheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a workbook (ECMA-376, SpreadsheetML): every sheet that holds cells, in their order. */
final class Workbook {
  private static final String MAIN = "xl/workbook.xml";

  private final WorkbookParts parts;
  private final List<String> texts;
  private final NumberStyles styles;
  private boolean from1904;

  private Workbook(WorkbookParts parts, Map<String, String> related)
      throws UnreadableTableException {
    this.parts = parts;
    this.texts = SharedStrings.of(orNothing(related, "sharedStrings"));
    this.styles = NumberStyles.of(orNothing(related, "styles"));
  }

  private byte[] orNothing(Map<String, String> related, String kind) {
    return Optional.ofNullable(related.get(kind))
        .flatMap(parts::find)
        .orElseGet(() -> new byte[] {'<', 'x', '/', '>'});
  }

  /** Reads a file that begins as a container does. */
  static List<SheetGrid> read(byte[] file) throws UnreadableTableException {
    WorkbookParts parts = WorkbookParts.of(file);
    String main = relations(parts, "").getOrDefault("officeDocument", MAIN);
    Map<String, String> related = relations(parts, main);
    return new Workbook(parts, related).sheets(main, related);
  }

  /**
   * Reads what a part refers to.
   *
   * @return paths by their numbers, and by the last word of their kinds where there is one of a
   *     kind
   */
  private static Map<String, String> relations(WorkbookParts parts, String of)
      throws UnreadableTableException {
    int slash = of.lastIndexOf('/') + 1;
    String folder = of.substring(0, slash);
    Map<String, String> found = new HashMap<>();
    Optional<byte[]> part = parts.find(folder + "_rels/" + of.substring(slash) + ".rels");
    if (part.isEmpty()) {
      return found;
    }
    Xml xml = Xml.of(part.get());
    while (xml.next()) {
      if (xml.begins("Relationship")) {
        String target = xml.attribute("Target").orElse("");
        String path = target.startsWith("/") ? target.substring(1) : folder + target;
        String kind = xml.attribute("Type").orElse("");
        found.put(xml.attribute("Id").orElse(""), path);
        found.putIfAbsent(kind.substring(kind.lastIndexOf('/') + 1), path);
      }
    }
    return found;
  }

  private List<SheetGrid> sheets(String main, Map<String, String> related)
      throws UnreadableTableException {
    List<SheetGrid> sheets = new ArrayList<>();
    int cells = 0;
    Xml xml =
        Xml.of(
            parts
                .find(main)
                .orElseThrow(() -> UnreadableTableException.damaged("it has no list of sheets")));
    while (xml.next()) {
      if (xml.begins("workbookPr")) {
        String since = xml.attribute("date1904").orElse("");
        from1904 = since.equals("1") || since.equals("true");
      } else if (xml.begins("sheet")) {
        String name = xml.attribute("name").orElse("");
        Optional<byte[]> part =
            xml.attribute("id").map(it -> related.getOrDefault(it, "")).flatMap(parts::find);
        if (part.isPresent()) {
          SheetReader reader = new SheetReader(name, texts, styles, from1904, cells);
          sheets.add(reader.read(part.get()));
          cells = reader.count();
        }
      }
    }
    return sheets;
  }
}
