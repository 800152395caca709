package assize.text;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** A text as it is written in a person's YAML: plain where that says the same, else in quotes. */
public final class YamlText {
  /** What other readers of YAML take for something else than a text. */
  private static final Set<String> WORDS =
      Set.of("yes", "no", "true", "false", "on", "off", "y", "n", "null", "~");

  private static final Pattern PLAIN =
      Pattern.compile("[\\p{L}\\p{N}](?:[^\\p{Cntrl}\\p{Cf}\\p{Cs}\\p{Cn}\\p{Zl}\\p{Zp}]*\\S)?");

  private static final Pattern BRACES = Pattern.compile("[\\[\\]{},]");

  private YamlText() {}

  /** Returns a text as it stands behind a name and a colon, on one line. */
  public static String afterColon(String text) {
    boolean plain =
        PLAIN.matcher(text).matches()
            && !WORDS.contains(text.toLowerCase(Locale.ROOT))
            && !text.contains(": ")
            && !text.endsWith(":")
            && !text.contains(" #")
            && !text.contains("\t#");
    return plain ? text : quoted(text);
  }

  /** Returns a text as it stands within {@code { }} or {@code [ ]}. */
  public static String inBraces(String text) {
    return BRACES.matcher(text).find() ? quoted(text) : afterColon(text);
  }

  private static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    text.codePoints().forEach(c -> append(quoted, c));
    return quoted.append('"').toString();
  }

  private static void append(StringBuilder quoted, int c) {
    switch (c) {
      case '"' -> quoted.append("\\\"");
      case '\\' -> quoted.append("\\\\");
      case '\n' -> quoted.append("\\n");
      case '\t' -> quoted.append("\\t");
      case '\r' -> quoted.append("\\r");
      default -> {
        if (isSeen(c)) {
          quoted.appendCodePoint(c);
        } else {
          quoted.append(String.format(Locale.ROOT, c > 0xFFFF ? "\\U%08X" : "\\u%04X", c));
        }
      }
    }
  }

  private static boolean isSeen(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.UNASSIGNED,
          Character.PRIVATE_USE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      default -> true;
    };
  }
}
