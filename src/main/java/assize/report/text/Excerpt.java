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
    String line = at.file().line(at.line());
    int lineStart = at.file().offset(at.line(), 1);
    int from = Math.min(at.start() - lineStart, line.length());
    int to = Math.max(from, Math.min(at.end() - lineStart, line.length()));
    if (line.length() <= WIDEST) {
      return of(line.substring(0, from), line.substring(from, to), line.substring(to));
    }
    int first = whole(line, Math.max(0, from - AROUND));
    int last =
        whole(
            line,
            Math.min(line.length(), Math.max(from + AROUND, Math.min(to, from + WIDEST - AROUND))));
    int end = Math.min(to, last);
    return of(
        (first > 0 ? CUT : "") + line.substring(first, from),
        line.substring(from, end),
        line.substring(end, last) + (last < line.length() ? CUT : ""));
  }

  private static Excerpt of(String before, String place, String after) {
    String shown = Visible.of(before);
    String marked = Visible.of(place);
    return new Excerpt(
        shown + marked + Visible.of(after),
        Visible.columns(shown),
        Math.max(1, Visible.columns(marked)));
  }

  /** Returns a cut that does not part the two halves of one letter. */
  private static int whole(String line, int cut) {
    boolean parts = cut > 0 && cut < line.length() && Character.isLowSurrogate(line.charAt(cut));
    return parts ? cut - 1 : cut;
  }
}
