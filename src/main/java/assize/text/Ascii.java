package assize.text;

import java.util.function.IntPredicate;

/** Looks through texts, most of which are lines of ASCII. */
public final class Ascii {
  private static final int AT_ONCE = 8192;

  private Ascii() {}

  /**
   * Says whether a text has a character that a test finds, other than those that print in ASCII,
   * from space to tilde, and the end of a line, for which it is not asked.
   *
   * @param test is asked for code points; half of a pair is one by itself
   */
  public static boolean hasBesides(String text, IntPredicate test) {
    // By arrays, which are looked through faster than texts, above all before Java is warm.
    char[] some = new char[Math.min(AT_ONCE, text.length())];
    int seen = 0;
    for (int from = 0; from < text.length(); from += some.length) {
      int length = Math.min(some.length, text.length() - from);
      text.getChars(from, from + length, some, 0);
      for (int i = 0; i < length; i++) {
        char c = some[i];
        if ((c < ' ' && c != '\n' || c > '~') && from + i >= seen) {
          int point = text.codePointAt(from + i);
          if (test.test(point)) {
            return true;
          }
          seen = from + i + Character.charCount(point);
        }
      }
    }
    return false;
  }
}
