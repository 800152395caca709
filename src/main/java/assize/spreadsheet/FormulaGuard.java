package assize.spreadsheet;

import assize.text.Invisible;

/**
 * Keeps a spreadsheet from taking a text of a CSV file for a formula: an apostrophe is put before
 * what would begin one, and taken away when the file is read. A text with apostrophes of its own
 * there gets one more, so that nothing is lost.
 *
 * <p>What begins a formula, and that it may also do so behind a separator that the spreadsheet was
 * not meant to see, is as OWASP's page on CSV injection has it (from memory). A spreadsheet may
 * also drop spaces and what can't be seen before such a sign, so that what stands behind those
 * counts as the beginning too.
 */
final class FormulaGuard {
  private static final String SIGNS = "=+-@\uFF1D\uFF0B\uFF0D\uFF20";
  private static final String SPACES = "\t\r\n";
  private static final String SEPARATORS = ",;" + SPACES;

  private FormulaGuard() {}

  /** Returns a text as it is written. */
  static String on(String text) {
    return changed(text, true);
  }

  /** Returns a text as it was before it was written; one that was written by hand as it stands. */
  static String off(String text) {
    return changed(text, false);
  }

  private static String changed(String text, boolean on) {
    StringBuilder out = new StringBuilder(text.length() + 1);
    boolean mayBegin = true;
    boolean isLeading = true;
    for (int i = 0; i < text.length(); ) {
      int end = i;
      while (mayBegin && end < text.length() && text.charAt(end) == '\'') {
        end++;
      }
      boolean guarded = mayBegin && end < text.length() && isSign(text.charAt(end), i == 0);
      if (guarded) {
        out.append(on ? "'" : "").append(text, on || end == i ? i : i + 1, end + 1);
        mayBegin = isOneOf(SEPARATORS, text.charAt(end));
        isLeading &= Invisible.is(text.charAt(end));
        i = end + 1;
      } else {
        int next = end > i ? end : i + Character.charCount(text.codePointAt(i));
        out.append(text, i, next);
        int last = text.codePointBefore(next);
        isLeading &= Invisible.is(last);
        mayBegin =
            isOneOf(SEPARATORS, last) || mayBegin && (last == '"' || isPassedOver(last, isLeading));
        i = next;
      }
    }
    return out.toString();
  }

  private static boolean isSign(char c, boolean first) {
    return isOneOf(SIGNS, c) || first && isOneOf(SPACES, c);
  }

  /**
   * A plain space within a text parts words: what stands behind a comma and one is no beginning.
   */
  private static boolean isPassedOver(int c, boolean isLeading) {
    return c == ' ' ? isLeading : Invisible.is(c);
  }

  private static boolean isOneOf(String some, int c) {
    return some.indexOf(c) >= 0;
  }
}
