package assize.yaml;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/** Pieces of messages. */
public final class MessageParts {
  private static final int BRIEF = 60;

  private MessageParts() {}

  /** Returns a text short enough for a message. */
  public static String brief(String text) {
    String oneLine = text.replaceAll("\\s*\\R\\s*", " ");
    return oneLine.codePointCount(0, oneLine.length()) <= BRIEF
        ? oneLine
        : oneLine.substring(0, oneLine.offsetByCodePoints(0, BRIEF - 3)) + "...";
  }

  public static String quoted(String text) {
    return "\"" + brief(text) + "\"";
  }

  /** Returns names with arrows between them, and the first again at the end. */
  public static String circle(List<String> names) {
    String shown = names.stream().limit(8).collect(Collectors.joining(" -> "));
    return shown + (names.size() > 8 ? " -> ..." : "") + " -> " + names.get(0);
  }

  public static String list(Collection<String> words) {
    return words.stream().collect(Collectors.joining(", "));
  }
}
