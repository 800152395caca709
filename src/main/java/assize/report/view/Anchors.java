package assize.report.view;

/** Names of places in the page: letters, digits and dashes, one for each thing. */
final class Anchors {
  private Anchors() {}

  static String item(String id) {
    return "item-" + safe(id);
  }

  static String area(String id) {
    return "area-" + safe(id);
  }

  static String source(String id) {
    return "source-" + safe(id);
  }

  static String dispute(String item, String aspect) {
    return "dispute-" + safe(item) + "." + safe(aspect);
  }

  static String caution(String word) {
    return "caution-" + safe(word);
  }

  static String evidence(String id) {
    return "evidence-" + safe(id);
  }

  /** Keeps letters, digits and dashes; any other character becomes its code point between dots. */
  private static String safe(String id) {
    StringBuilder kept = new StringBuilder();
    id.codePoints()
        .forEach(
            c -> {
              boolean plain = c < 128 && (Character.isLetterOrDigit(c) || c == '-');
              kept.append(plain ? Character.toString(c) : "." + Integer.toHexString(c) + ".");
            });
    return kept.toString();
  }
}
