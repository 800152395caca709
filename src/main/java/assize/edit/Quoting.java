package assize.edit;

import assize.aspect.Aspect;
import assize.record.VehicleRecord;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Writes a text so that every reader of YAML takes it as that text: as it is where that is safe, in
 * quotes where it is not (YAML 1.2.2, chapter 7; what version 1.1 took for numbers, dates and truth
 * values too, from memory).
 */
final class Quoting {
  /** Names under which a number, a date or a yes or no is meant as such, and stays without. */
  private static final Set<String> MEANT =
      Stream.concat(
              VehicleRecord.SHAPE.root().meant(),
              Arrays.stream(Aspect.values()).filter(it -> it.kind().staysPlain()).map(Aspect::word))
          .collect(Collectors.toUnmodifiableSet());

  private static final Set<String> TRUTH_OR_NOTHING =
      Set.of("y", "n", "yes", "no", "true", "false", "on", "off", "null", "~");

  /** A whole number that is the same text when it is printed again is no harm. */
  private static final Pattern PLAIN_NUMBER = Pattern.compile("0|-?[1-9][0-9]{0,14}");

  private static final Pattern LIKE_A_NUMBER =
      Pattern.compile(
          "[-+]?(?:\\.?[0-9][0-9_.,:]*(?:[eE][-+]?[0-9]*)?|0[xXoObB][0-9a-fA-F_]*|\\.(?i:inf|nan))");

  private static final Pattern LIKE_A_DATE = Pattern.compile("[0-9]{4}-[0-9]{1,2}-[0-9]{1,2}.*");

  private Quoting() {}

  /**
   * Writes a text on one line.
   *
   * @param name the name that it is written under
   * @param inBrackets whether commas and brackets around it would end it
   */
  static String of(String name, String text, boolean inBrackets) {
    boolean plain = isPlain(text, inBrackets) && (MEANT.contains(name) || !isMisread(text));
    return plain ? text : quoted(text);
  }

  /** Writes what stands before a colon; {@code on} stands there in every record. */
  static String name(String name) {
    return name.equals("on") ? name : of("", name, true);
  }

  /** Writes a text in the quotes that change least of it. */
  private static String quoted(String text) {
    boolean simple = text.codePoints().allMatch(Quoting::isSeen);
    boolean apostrophe = text.indexOf('\'') >= 0;
    boolean escapes = text.indexOf('"') >= 0 || text.indexOf('\\') >= 0;
    return simple && (!apostrophe || escapes)
        ? "'" + text.replace("'", "''") + "'"
        : doubleQuoted(text);
  }

  /** Writes a text in double quotes: as JSON has it (RFC 8259), which YAML reads the same. */
  static String doubleQuoted(String text) {
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
    if (text.isEmpty()
        || !text.equals(text.strip())
        || !text.codePoints().allMatch(Quoting::isSeen)) {
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
