package assize.spreadsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The texts of a workbook (ECMA-376 part 1, 18.4), which cells name by number. */
final class SharedStrings {
  private static final Pattern ESCAPE = Pattern.compile("_x([0-9A-Fa-f]{4})_");

  private SharedStrings() {}

  static List<String> of(byte[] part) throws UnreadableTableException {
    List<String> texts = new ArrayList<>();
    Xml xml = Xml.of(part);
    while (xml.next()) {
      if (xml.begins("si")) {
        texts.add(pieces(xml, "si"));
      }
    }
    return texts;
  }

  /**
   * Returns the pieces of a text up to the end of its element, without marks of how to speak it.
   */
  static String pieces(Xml xml, String element) throws UnreadableTableException {
    StringBuilder text = new StringBuilder();
    boolean spoken = false;
    while (xml.next() && !xml.ends(element)) {
      if (xml.begins("rPh")) {
        spoken = true;
      } else if (xml.ends("rPh")) {
        spoken = false;
      } else if (xml.begins("t")) {
        String piece = xml.text();
        text.append(spoken ? "" : piece);
      }
    }
    return unescaped(text.toString());
  }

  /** Undoes escapes such as {@code _x000D_} (ECMA-376 part 1, 22.9.2.19, ST_Xstring). */
  static String unescaped(String text) {
    return ESCAPE
        .matcher(text)
        .replaceAll(
            it ->
                Matcher.quoteReplacement(
                    Character.toString((char) Integer.parseInt(it.group(1), 16))));
  }

  /** Writes what would be taken for an escape, or would be lost, as an escape. */
  static String escaped(String text) {
    return ESCAPE.matcher(text).replaceAll("_x005F_x$1_").replace("\r", "_x000D_");
  }
}
