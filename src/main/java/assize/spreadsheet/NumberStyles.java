package assize.spreadsheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * How numbers are shown (ECMA-376 part 1, 18.8.30): as they are, as days, or in another form.
 *
 * @param kinds for each style of cell
 */
record NumberStyles(List<Cell.Kind> kinds) {
  private static final Set<Integer> PLAIN = Set.of(0, 1, 2, 49);

  NumberStyles {
    kinds = List.copyOf(kinds);
  }

  static NumberStyles of(byte[] part) throws UnreadableTableException {
    Map<Integer, String> forms = new HashMap<>();
    List<Integer> used = new ArrayList<>();
    boolean cells = false;
    Xml xml = Xml.of(part);
    while (xml.next()) {
      if (xml.begins("numFmt")) {
        forms.put(number(xml.attribute("numFmtId")), xml.attribute("formatCode").orElse(""));
      } else if (xml.begins("cellXfs") || xml.ends("cellXfs")) {
        cells = xml.begins("cellXfs");
      } else if (cells && xml.begins("xf")) {
        used.add(number(xml.attribute("numFmtId")));
      }
    }
    return new NumberStyles(used.stream().map(it -> kind(it, forms.getOrDefault(it, ""))).toList());
  }

  private static int number(Optional<String> text) {
    return text.filter(it -> it.matches("[0-9]{1,9}")).map(Integer::parseInt).orElse(0);
  }

  private static Cell.Kind kind(int id, String form) {
    if (PLAIN.contains(id) || form.equalsIgnoreCase("general")) {
      return Cell.Kind.NUMBER;
    }
    boolean builtInDay = id >= 14 && id <= 22 || id >= 27 && id <= 36 || id >= 45 && id <= 58;
    return builtInDay || isDay(form) ? Cell.Kind.DAY : Cell.Kind.SHAPED_NUMBER;
  }

  /** Says whether a form has letters for days or hours outside of its quotes and brackets. */
  private static boolean isDay(String form) {
    String bare = form.replaceAll("\"[^\"]*\"|\\[[^\\]]*\\]|\\\\.|_.", "").toLowerCase(Locale.ROOT);
    return bare.chars().anyMatch(c -> "ymdhs".indexOf(c) >= 0);
  }

  /** Returns what a number of a style is. */
  Cell.Kind of(Optional<String> style) {
    int index = style.isPresent() ? number(style) : -1;
    return index >= 0 && index < kinds.size() ? kinds.get(index) : Cell.Kind.NUMBER;
  }
}
