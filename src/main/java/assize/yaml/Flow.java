package assize.yaml;

import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Writes values on one line, so that reading them gives the same again. */
final class Flow {
  /** What needs no quotes; inside of brackets a comma does. */
  private static final Pattern PLAIN =
      Pattern.compile("[\\p{L}\\p{N}]([\\p{L}\\p{N} ,./±°+*()_-]*[\\p{L}\\p{N}./°+*()_-])?");

  private Flow() {}

  /** Returns a value as it may stand behind a name and its colon. */
  static String of(Node node) {
    return of(node, false);
  }

  private static String of(Node node, boolean within) {
    return node.match(
        mapping ->
            mapping.entries().stream()
                .map(it -> text(it.name(), true) + ": " + of(it.value(), true))
                .collect(Collectors.joining(", ", "{", "}")),
        list ->
            list.nodes().stream()
                .map(it -> of(it, true))
                .collect(Collectors.joining(", ", "[", "]")),
        scalar -> text(scalar.text(), within));
  }

  /** Returns a text, in quotes where it needs them. */
  static String text(String text, boolean within) {
    boolean plain =
        PLAIN.matcher(text).matches()
            && (!within || text.indexOf(',') < 0)
            && text.codePoints().noneMatch(Character::isSupplementaryCodePoint);
    return plain ? text : quoted(text);
  }

  /** Returns a text in double quotes. */
  static String quoted(String text) {
    StringBuilder out = new StringBuilder("\"");
    text.codePoints().forEach(c -> append(out, c));
    return out.append('"').toString();
  }

  private static void append(StringBuilder out, int c) {
    switch (c) {
      case '"' -> out.append("\\\"");
      case '\\' -> out.append("\\\\");
      case '\n' -> out.append("\\n");
      case '\r' -> out.append("\\r");
      case '\t' -> out.append("\\t");
      default -> {
        boolean unseen = c < 0x20 || c >= 0x7F && c <= 0xA0 || c == 0x2028 || c == 0x2029;
        out.append(unseen ? String.format(Locale.ROOT, "\\u%04X", c) : Character.toString(c));
      }
    }
  }
}
