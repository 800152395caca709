package assize.report.text;

import assize.text.Invisible;

/** Text for a terminal: what can't be seen, or would steer the terminal, is shown as an escape. */
public final class TerminalEscaper {
  private static final int TAB = 4;

  private TerminalEscaper() {}

  /** Returns a text with its hidden characters shown, its tabs as spaces. */
  public static String of(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints().forEach(c -> append(out, c));
    return out.toString();
  }

  private static void append(StringBuilder out, int c) {
    if (c == '\t') {
      out.append(" ".repeat(TAB));
    } else if (isHidden(c)) {
      out.append('<').append(Invisible.number(c)).append('>');
    } else {
      out.appendCodePoint(c);
    }
  }

  private static boolean isHidden(int c) {
    if (Invisible.isHidden(c)) {
      return true;
    }
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.UNASSIGNED ->
          true;
      default -> false;
    };
  }

  /**
   * Returns how many columns of a terminal a text takes that {@link #of} returned: two for the wide
   * letters of East Asia and for pictures (Unicode Standard Annex 11, from memory), none for marks
   * that stand on the letter before.
   */
  static int columns(String shown) {
    return shown.codePoints().map(TerminalEscaper::columns).sum();
  }

  private static int columns(int c) {
    int type = Character.getType(c);
    if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
      return 0;
    }
    boolean wide =
        c >= 0x1100 && c <= 0x115F
            || c >= 0x2E80 && c <= 0xA4CF
            || c >= 0xAC00 && c <= 0xD7A3
            || c >= 0xF900 && c <= 0xFAFF
            || c >= 0xFE30 && c <= 0xFE6F
            || c >= 0xFF01 && c <= 0xFF60
            || c >= 0xFFE0 && c <= 0xFFE6
            || c >= 0x1F300 && c <= 0x1F6FF
            || c >= 0x1F900 && c <= 0x1FAFF
            || c >= 0x20000 && c <= 0x3FFFD;
    return wide ? 2 : 1;
  }
}
