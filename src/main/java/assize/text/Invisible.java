package assize.text;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Characters that show nothing where they stand: spaces of every width, controls, what Unicode
 * calls default ignorable (variation selectors, tags, Hangul fillers), and letters that are blank.
 * As in Unicode 15.1 (from memory), and the same on every Java.
 */
public final class Invisible {
  /** First and last of each range, ascending. */
  private static final int[][] RANGES = {
    {0x0000, 0x0020},
    {0x007F, 0x00A0},
    {0x00AD, 0x00AD},
    {0x034F, 0x034F},
    {0x061C, 0x061C},
    {0x115F, 0x1160},
    {0x1680, 0x1680},
    {0x17B4, 0x17B5},
    {0x180B, 0x180F},
    {0x2000, 0x200F},
    {0x2028, 0x202F},
    {0x205F, 0x206F},
    {0x2800, 0x2800},
    {0x3000, 0x3000},
    {0x3164, 0x3164},
    {0xFE00, 0xFE0F},
    {0xFEFF, 0xFEFF},
    {0xFFA0, 0xFFA0},
    {0xFFF0, 0xFFFB},
    {0x13430, 0x1343F},
    {0x13441, 0x13442},
    {0x16FE4, 0x16FE4},
    {0x1BCA0, 0x1BCA3},
    {0x1D159, 0x1D159},
    {0x1D173, 0x1D17A},
    {0xE0000, 0xE0FFF}
  };

  private Invisible() {}

  /** Says whether a character shows nothing; a plain space is one of these. */
  public static boolean is(int c) {
    int from = 0;
    int to = RANGES.length;
    while (from < to) {
      int middle = (from + to) >>> 1;
      if (RANGES[middle][1] < c) {
        from = middle + 1;
      } else {
        to = middle;
      }
    }
    return from < RANGES.length && RANGES[from][0] <= c;
  }

  /** Says whether a character shows nothing and takes no room either, as a space would. */
  public static boolean isHidden(int c) {
    return is(c) && !isSpace(c);
  }

  /** Says whether a character is a space, of any width, or ends a line. */
  public static boolean isSpace(int c) {
    return Character.isWhitespace(c) || Character.isSpaceChar(c) || c == 0x85;
  }

  /** Says whether nothing of a text can be seen, as nothing can of an empty one. */
  public static boolean isAllOf(String text) {
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      if (!is(c)) {
        return false;
      }
      i += Character.charCount(c);
    }
    return true;
  }

  /** Names a character as Unicode numbers it: {@code U+3164}. */
  public static String number(int c) {
    return String.format(Locale.ROOT, "U+%04X", c);
  }

  /**
   * A pattern of Java and ECMA-262 for one UTF-16 unit that shows something or may be part of it.
   */
  public static String visiblePattern() {
    return Arrays.stream(RANGES)
        .filter(it -> it[1] <= Character.MAX_VALUE)
        .map(it -> escape(it[0]) + (it[0] == it[1] ? "" : "-" + escape(it[1])))
        .collect(Collectors.joining("", "[^", "]"));
  }

  private static String escape(int c) {
    return String.format(Locale.ROOT, "\\u%04x", c);
  }
}
