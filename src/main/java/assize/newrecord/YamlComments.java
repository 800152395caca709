package assize.newrecord;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Remarks in a YAML file: whatever a text holds stays behind its {@code #}, and no editor takes it
 * for a setting of its own.
 */
final class YamlComments {
  private static final int WIDTH = 92;

  /** What ends a line for somebody, and what can't be seen or turns the writing around. */
  private static final Pattern UNSEEN = Pattern.compile("[\\s\\p{Z}\\p{Cc}\\p{Cf}\\p{Cs}\\p{Cn}]+");

  /** By these words in a comment an editor is told where to fetch a schema. */
  private static final Pattern SETTING = Pattern.compile("(?i)yaml-language-server");

  /** How an entry of a list begins. */
  private static final Pattern LIST = Pattern.compile("(?:[-*+]|[0-9]{1,3}[.)]) ");

  private YamlComments() {}

  /**
   * Returns a text as comments, its paragraphs and lists kept, long lines broken.
   *
   * @param indent spaces before the {@code #}
   * @param lead what stands behind the {@code #} in the first line, such as a name; the others have
   *     spaces there
   */
  static List<String> of(int indent, String lead, String text) {
    List<String> lines = new ArrayList<>();
    String before = " ".repeat(indent) + "# ";
    String now = lead;
    for (String paragraph : paragraphs(text)) {
      String hang = LIST.matcher(paragraph).lookingAt() ? "  " : "";
      int width = WIDTH - indent - 2 - lead.length();
      List<String> wrapped = wrapped(paragraph, width, hang);
      for (String line : wrapped) {
        lines.add((before + now + line).stripTrailing());
        now = " ".repeat(lead.length());
      }
    }
    return lines;
  }

  /** Joins the lines of a paragraph; one with nothing in it stands between two of them. */
  private static List<String> paragraphs(String text) {
    List<String> paragraphs = new ArrayList<>();
    for (String line : text.strip().split("\\R", -1)) {
      String clean = clean(line);
      int end = paragraphs.size() - 1;
      boolean goesOn = end >= 0 && !clean.isEmpty() && !LIST.matcher(clean).lookingAt();
      if (goesOn && !paragraphs.get(end).isEmpty()) {
        paragraphs.set(end, paragraphs.get(end) + " " + clean);
      } else {
        paragraphs.add(clean);
      }
    }
    return paragraphs;
  }

  /** Returns a text on one line, without what can't be seen. */
  static String clean(String text) {
    return SETTING.matcher(UNSEEN.matcher(text).replaceAll(" ").strip()).replaceAll("…");
  }

  private static List<String> wrapped(String text, int width, String hang) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ", -1)) {
      if (line.length() > 0 && line.length() + 1 + word.length() > width) {
        lines.add(line.toString());
        line.setLength(0);
        line.append(hang).append(word);
      } else {
        line.append(line.length() > 0 ? " " : "").append(word);
      }
    }
    lines.add(line.toString());
    return lines;
  }
}
