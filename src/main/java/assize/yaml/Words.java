package assize.yaml;

import java.util.Collection;
import java.util.stream.Collectors;

/** Pieces of messages. */
final class Words {
  private static final int BRIEF = 60;

  private Words() {}

  /** Returns a text short enough for a message. */
  static String brief(String text) {
    String oneLine = text.replaceAll("\\s+", " ");
    return oneLine.codePointCount(0, oneLine.length()) <= BRIEF
        ? oneLine
        : oneLine.substring(0, oneLine.offsetByCodePoints(0, BRIEF - 3)) + "...";
  }

  static String quoted(String text) {
    return "\"" + brief(text) + "\"";
  }

  static String list(Collection<String> words) {
    return words.stream().collect(Collectors.joining(", "));
  }
}
