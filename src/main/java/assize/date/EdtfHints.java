package assize.date;

import assize.text.Parsed;
import java.util.Locale;
import java.util.Optional;

/** Says how to write what people write in other ways, before the grammar gets a look. */
final class EdtfHints {
  private static final int LONGEST = 1000;

  private static final String YEAR_MONTH_DAY =
      "this cannot stand in a date: write year-month-day, as in 1985-04-12";

  private static final String LETTERS = "XTZYES";
  private static final String SIGNS = "-/.,:+?~%[]{}";

  private EdtfHints() {}

  static Optional<Parsed.Bad<Edtf>> refusal(String text) {
    if (text.isBlank()) {
      return bad("a date is missing here", 0, text.length());
    }
    if (text.length() > LONGEST) {
      return bad("a date has at most " + LONGEST + " characters", LONGEST, text.length() - LONGEST);
    }
    return NonEdtfDateHints.edtf(text)
        .map(better -> new Parsed.Bad<Edtf>(better, 0, text.length()))
        .or(() -> qualifiers(text))
        .or(() -> characters(text));
  }

  private static Optional<Parsed.Bad<Edtf>> qualifiers(String text) {
    for (int i = 0; i + 1 < text.length(); i++) {
      char a = text.charAt(i);
      char b = text.charAt(i + 1);
      if ("?~%".indexOf(a) >= 0 && "?~%".indexOf(b) >= 0) {
        return bad(
            a == b ? "one " + a + " is enough" : "write % for uncertain and approximate", i, 2);
      }
    }
    return Optional.empty();
  }

  private static Optional<Parsed.Bad<Edtf>> characters(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean digit = c >= '0' && c <= '9';
      if (!digit && LETTERS.indexOf(c) < 0 && SIGNS.indexOf(c) < 0) {
        int letters = letters(text, i);
        return letters > 1
            ? bad(YEAR_MONTH_DAY, i, letters)
            : bad(reason(c), i, Character.charCount(text.codePointAt(i)));
      }
    }
    return Optional.empty();
  }

  /** Counts the letters of a word, those that stand for digits not known left out. */
  private static int letters(String text, int from) {
    int end = from;
    while (end < text.length()
        && Character.isLetter(text.charAt(end))
        && "uUxX".indexOf(text.charAt(end)) < 0) {
      end++;
    }
    return end - from;
  }

  private static String reason(char c) {
    if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
      return "write the date without spaces";
    }
    if (c == '(' || c == ')') {
      return "write ?, ~ or % right before or after what it is about, without brackets";
    }
    if (c == 'u' || c == 'U' || c == 'x') {
      return "write X for a digit that is not known";
    }
    String upper = String.valueOf(c).toUpperCase(Locale.ROOT);
    if (LETTERS.contains(upper)) {
      return "write " + upper + " as a capital";
    }
    if (c == '\u2013' || c == '\u2014' || c == '\u2212' || c == '\u2010' || c == '\u2011') {
      return "write a plain hyphen between year, month and day, and a slash between two dates";
    }
    return YEAR_MONTH_DAY;
  }

  private static Optional<Parsed.Bad<Edtf>> bad(String reason, int at, int length) {
    return Optional.of(new Parsed.Bad<>(reason, at, length));
  }
}
