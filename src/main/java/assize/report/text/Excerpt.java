package assize.report.text;

import assize.text.Span;

/**
 * One line of a file with a place in it, cut around the place if it is long.
 *
 * @param line the line as shown
 * @param before columns before the place
 * @param width columns that the place takes, one or more
 */
record Excerpt(String line, int before, int width) {
  private static final int WIDEST = 100;
  private static final int AROUND = 40;
  private static final String CUT = "...";

  /** Returns the line in which a place begins. */
  static Excerpt of(Span at) {
    String text = at.file().text();
    int lineStart = at.file().offset(at.line(), 1);
    int lineEnd = at.file().lineEnd(at.line());
    int from = Math.min(at.start(), lineEnd);
    int to = Math.max(from, Math.min(at.end(), lineEnd));
    if (lineEnd - lineStart <= WIDEST) {
      return of(
          text.substring(lineStart, from), text.substring(from, to), text.substring(to, lineEnd));
    }
    int first = whole(text, Math.max(lineStart, from - AROUND));
    int last =
        whole(
            text, Math.min(lineEnd, Math.max(from + AROUND, Math.min(to, from + WIDEST - AROUND))));
    int end = Math.min(to, last);
    return of(
        (first > lineStart ? CUT : "") + text.substring(first, from),
        text.substring(from, end),
        text.substring(end, last) + (last < lineEnd ? CUT : ""));
  }

  private static Excerpt of(String before, String place, String after) {
    String shown = TerminalEscaper.of(before);
    String marked = TerminalEscaper.of(place);
    return new Excerpt(
        shown + marked + TerminalEscaper.of(after),
        TerminalEscaper.columns(shown),
        Math.max(1, TerminalEscaper.columns(marked)));
  }

  /** Returns a cut that does not part the two halves of one letter. */
  private static int whole(String text, int cut) {
    boolean parts = cut > 0 && cut < text.length() && Character.isLowSurrogate(text.charAt(cut));
    return parts ? cut - 1 : cut;
  }
}
