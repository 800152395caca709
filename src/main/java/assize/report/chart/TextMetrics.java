package assize.report.chart;

/** How much lettering fits: drawings have no way to measure it. */
final class TextMetrics {
  /** The width of a letter at the usual size, rather too much than too little. */
  private static final double LETTER = 6.3;

  private TextMetrics() {}

  /** Returns the words, cut short with an ellipsis where they are longer than so many units. */
  static String fit(String words, double wide) {
    int most = Math.max(2, (int) (wide / LETTER));
    if (words.codePointCount(0, words.length()) <= most) {
      return words;
    }
    return words.substring(0, words.offsetByCodePoints(0, most - 1)).strip() + "…";
  }

  /** Returns about how wide words are, in drawing units. */
  static double wide(String words) {
    return words.codePointCount(0, words.length()) * LETTER;
  }
}
