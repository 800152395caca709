package assize.report.view;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names of places in the page: letters, digits and dashes, one for each thing. */
public final class AnchorIds {
  private static final Pattern KIND =
      Pattern.compile("(?:item|area|source|dispute|hazard|evidence)-");
  private static final Pattern ESCAPED = Pattern.compile("\\.([0-9a-f]{1,6})\\.");

  private AnchorIds() {}

  public static String item(String id) {
    return "item-" + safe(id);
  }

  public static String area(String id) {
    return "area-" + safe(id);
  }

  public static String source(String id) {
    return "source-" + safe(id);
  }

  static String dispute(String item, String aspect) {
    return "dispute-" + safe(item) + "." + safe(aspect);
  }

  public static String hazard(String word) {
    return "hazard-" + safe(word);
  }

  static String evidence(String id) {
    return "evidence-" + safe(id);
  }

  /** Keeps letters, digits and dashes; any other character becomes its code point between dots. */
  public static String safe(String id) {
    StringBuilder kept = new StringBuilder();
    id.codePoints()
        .forEach(
            c -> {
              boolean plain = c < 128 && (Character.isLetterOrDigit(c) || c == '-');
              kept.append(plain ? Character.toString(c) : "." + Integer.toHexString(c) + ".");
            });
    return kept.toString();
  }

  /** Returns what a name begins with that tells a kind of thing; empty where it tells none. */
  public static String kind(String anchor) {
    Matcher kind = KIND.matcher(anchor);
    return kind.lookingAt() ? kind.group() : "";
  }

  /** Returns a thing's name as it was before its characters were made {@link #safe}. */
  public static String written(String safe) {
    return ESCAPED
        .matcher(safe)
        .replaceAll(
            code -> {
              int point = Integer.parseInt(code.group(1), 16);
              boolean valid = Character.isValidCodePoint(point);
              return Matcher.quoteReplacement(valid ? Character.toString(point) : code.group());
            });
  }
}
