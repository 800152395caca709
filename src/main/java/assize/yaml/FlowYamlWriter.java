package assize.yaml;

import assize.text.Json;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Writes values on one line, so that every reader of YAML takes them as they are meant: a text as
 * it is where that is safe, in quotes where it is not (YAML 1.2.2, chapter 7; what version 1.1 took
 * for numbers, dates and truth values too, from memory). Nothing else puts YAML in quotes.
 */
public final class FlowYamlWriter {
  /** Writes JSON, which YAML reads as well: every name and text in double quotes. */
  public static final FlowYamlWriter JSON = new FlowYamlWriter(true, Set.of());

  /** What other readers of YAML take for something else than a text. */
  private static final Set<String> TRUTH_OR_NOTHING =
      Set.of("y", "n", "yes", "no", "true", "false", "on", "off", "null", "~");

  /** A whole number that is the same text when it is printed again is no harm. */
  private static final Pattern PLAIN_NUMBER = Pattern.compile("0|-?[1-9][0-9]{0,14}");

  private static final Pattern LIKE_A_NUMBER =
      Pattern.compile(
          "[-+]?(?:\\.?[0-9][0-9_.,:]*(?:[eE][-+]?[0-9]*)?|0[xXoObB][0-9a-fA-F_]*|\\.(?i:inf|nan))");

  private static final Pattern LIKE_A_DATE = Pattern.compile("[0-9]{4}-[0-9]{1,2}-[0-9]{1,2}.*");

  private final boolean isJson;
  private final Set<String> meant;

  private FlowYamlWriter(boolean isJson, Set<String> meant) {
    this.isJson = isJson;
    this.meant = Set.copyOf(meant);
  }

  /**
   * Writes YAML.
   *
   * @param meant names under which a number, a date or a yes or no is meant as such, and stands
   *     without quotes; such a name itself stands without, too
   */
  public static FlowYamlWriter where(Set<String> meant) {
    return new FlowYamlWriter(false, meant);
  }

  /** Returns a value as it may stand behind a name and its colon. */
  public static String of(Node node) {
    return where(Set.of()).of("", YamlValue.of(node), false);
  }

  /** Says whether it writes JSON. */
  public boolean isJson() {
    return isJson;
  }

  /**
   * Writes a text, a list or a group.
   *
   * @param name the name that it is written under
   * @param inBrackets whether commas and brackets around it would end it
   */
  public String of(String name, YamlValue content, boolean inBrackets) {
    return content.match(
        text -> of(name, text, inBrackets),
        items ->
            items.all().stream()
                .map(it -> of(name, it, true))
                .collect(Collectors.joining(", ", "[", "]")),
        group ->
            group.fields().stream()
                .map(it -> name(it.name()) + ": " + of(it.name(), it.value(), true))
                .collect(Collectors.joining(", ", "{", "}")));
  }

  private String of(String name, YamlValue.Text text, boolean inBrackets) {
    if (text.isNothing()) {
      return "~";
    }
    if (isJson) {
      return doubleQuoted(text.text());
    }
    return meant.contains(name) ? meant(text.text(), inBrackets) : text(text.text(), inBrackets);
  }

  /** Writes what stands before a colon. */
  public String name(String name) {
    return isJson ? doubleQuoted(name) : meant.contains(name) ? name : text(name, true);
  }

  /**
   * Returns a text, in quotes where it needs them.
   *
   * @param inBrackets whether commas and brackets around it would end it
   */
  public static String text(String text, boolean inBrackets) {
    return isPlain(text, inBrackets) && !isMisread(text) ? text : quoted(text);
  }

  /**
   * Returns a value that is no text to those who write it, such as a size: in quotes only where it
   * would end too early.
   */
  public static String meant(String text, boolean inBrackets) {
    return isPlain(text, inBrackets) ? text : quoted(text);
  }

  /** Writes a text in the quotes that change least of it. */
  private static String quoted(String text) {
    boolean simple = text.codePoints().allMatch(FlowYamlWriter::isSeen);
    boolean apostrophe = text.indexOf('\'') >= 0;
    boolean escapes = text.indexOf('"') >= 0 || text.indexOf('\\') >= 0;
    return simple && (!apostrophe || escapes)
        ? "'" + text.replace("'", "''") + "'"
        : doubleQuoted(text);
  }

  /** Writes a text in double quotes: as JSON has it (RFC 8259), which YAML reads the same. */
  public static String doubleQuoted(String text) {
    return Json.quoted(text, FlowYamlWriter::isSeen);
  }

  /** Says whether a text without quotes ends where it should, and nowhere before. */
  private static boolean isPlain(String text, boolean inBrackets) {
    if (text.isEmpty()
        || !text.equals(text.strip())
        || !text.codePoints().allMatch(FlowYamlWriter::isSeen)) {
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
  public static boolean isSeen(int c) {
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
