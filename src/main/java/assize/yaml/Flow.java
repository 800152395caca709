package assize.yaml;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Writes values on one line, so that reading them gives the same again. */
public final class Flow {
  /** What other readers of YAML take for something else than a text. */
  private static final Set<String> TRUTH_OR_NOTHING =
      Set.of("y", "n", "yes", "no", "true", "false", "on", "off", "null", "~");

  /** A whole number that is the same text when it is printed again is no harm. */
  private static final Pattern PLAIN_NUMBER = Pattern.compile("0|-?[1-9][0-9]{0,14}");

  private static final Pattern LIKE_A_NUMBER =
      Pattern.compile(
          "[-+]?(?:\\.?[0-9][0-9_.,:]*(?:[eE][-+]?[0-9]*)?|0[xXoObB][0-9a-fA-F_]*|\\.(?i:inf|nan))");

  private static final Pattern LIKE_A_DATE = Pattern.compile("[0-9]{4}-[0-9]{1,2}-[0-9]{1,2}.*");

  private Flow() {}

  /** Returns a value as it may stand behind a name and its colon. */
  public static String of(Node node) {
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
  public static String text(String text, boolean within) {
    return isPlain(text, within) && !isMisread(text) ? text : quoted(text);
  }

  /**
   * Returns a value that is no text to those who write it, such as a size: in quotes only where it
   * would end too early.
   */
  public static String meant(String text, boolean within) {
    return isPlain(text, within) ? text : quoted(text);
  }

  /** Writes a text in the quotes that change least of it. */
  public static String quoted(String text) {
    boolean simple = text.codePoints().allMatch(Flow::isSeen);
    boolean apostrophe = text.indexOf('\'') >= 0;
    boolean escapes = text.indexOf('"') >= 0 || text.indexOf('\\') >= 0;
    return simple && (!apostrophe || escapes)
        ? "'" + text.replace("'", "''") + "'"
        : doubleQuoted(text);
  }

  /** Writes a text in double quotes: as JSON has it (RFC 8259), which YAML reads the same. */
  public static String doubleQuoted(String text) {
    StringBuilder out = new StringBuilder("\"");
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '"' -> out.append("\\\"");
                case '\\' -> out.append("\\\\");
                case '\n' -> out.append("\\n");
                case '\r' -> out.append("\\r");
                case '\t' -> out.append("\\t");
                default -> {
                  if (isSeen(c)) {
                    out.appendCodePoint(c);
                  } else {
                    out.append(String.format(Locale.ROOT, "\\u%04x", c));
                  }
                }
              }
            });
    return out.append('"').toString();
  }

  /** Says whether a text without quotes ends where it should, and nowhere before. */
  private static boolean isPlain(String text, boolean inBrackets) {
    if (text.isEmpty() || !text.equals(text.strip()) || !text.codePoints().allMatch(Flow::isSeen)) {
      return false;
    }
    char first = text.charAt(0);
    boolean number = first == '-' && text.length() > 1 && Character.isDigit(text.charAt(1));
    return (number || "-?:,[]{}#&*!|>'\"%@`=".indexOf(first) < 0)
        && text.codePoints().noneMatch(Character::isSupplementaryCodePoint)
        && !text.startsWith("...")
        && !text.equals("<<")
        && !text.contains(": ")
        && !text.endsWith(":")
        && !text.contains(" #")
        && (!inBrackets || text.chars().noneMatch(c -> ",[]{}".indexOf(c) >= 0));
  }

  private static boolean isMisread(String text) {
    return TRUTH_OR_NOTHING.contains(text.toLowerCase(Locale.ROOT))
        || LIKE_A_DATE.matcher(text).matches()
        || LIKE_A_NUMBER.matcher(text).matches() && !PLAIN_NUMBER.matcher(text).matches();
  }

  /** Says whether a letter can stand in a line as it is. */
  static boolean isSeen(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.UNASSIGNED ->
          Character.isSupplementaryCodePoint(c);
      default -> true;
    };
  }
}
