package assize.measure;

import assize.text.Parsed;
import java.math.BigInteger;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads numbers and words from a short text, and remembers how far it has read. */
final class Cursor {
  private static final String VULGAR = "½¼¾⅓⅔⅛⅜⅝⅞⅕⅖⅗⅘⅙⅚⅐⅑⅒";
  private static final String[] VULGAR_VALUES = {
    "1/2", "1/4", "3/4", "1/3", "2/3", "1/8", "3/8", "5/8", "7/8", "1/5", "2/5", "3/5", "4/5",
    "1/6", "5/6", "1/7", "1/9", "1/10"
  };
  // Bounded repetitions only: a hostile text costs no more than its length.
  private static final Pattern COMMA = Pattern.compile("([0-9]{1,20}),([0-9]{1,20})");
  private static final Pattern NUMBER =
      Pattern.compile(
          "(?:(?<whole>[0-9]{1,20})(?:\\s{1,3}|-))?(?<over>[0-9]{1,20})\\s?[/⁄]\\s?(?<under>[0-9]{1,20})"
              + "|(?<before>[0-9]{0,20})\\s?(?<vulgar>["
              + VULGAR
              + "])"
              + "|(?<decimal>[0-9]{1,20}(?:\\.[0-9]{1,20})?|\\.[0-9]{1,20})");

  private static final Pattern PLUS_MINUS = Pattern.compile("±|\\+\\s{0,3}/\\s{0,3}[-−]|\\+[-−]");
  private static final Pattern SPACED_PLUS_MINUS =
      Pattern.compile("\\s{0,9}(?:" + PLUS_MINUS + ")\\s{0,9}");

  private final String text;
  private int at;

  Cursor(String text) {
    this.text = text;
    skipSpace();
  }

  String text() {
    return text;
  }

  int at() {
    return at;
  }

  void backTo(int place) {
    at = place;
  }

  boolean atEnd() {
    return at == text.length();
  }

  /** Returns whether a number could begin here. */
  boolean atNumber() {
    return !atEnd()
        && (isDigit(text.charAt(at))
            || text.charAt(at) == '.'
            || VULGAR.indexOf(text.charAt(at)) >= 0);
  }

  static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  void skipSpace() {
    while (at < text.length() && isSpace(text.charAt(at))) {
      at++;
    }
  }

  private static boolean isSpace(char c) {
    return Character.isWhitespace(c) || Character.isSpaceChar(c);
  }

  /**
   * Moves past a word or sign and the space after it, if it stands here whole. Upper and lower case
   * are the same; one space in the word stands for any space in the text.
   */
  boolean take(String word) {
    int end = endOf(word);
    if (end < 0) {
      return false;
    }
    at = end;
    skipSpace();
    return true;
  }

  /** Returns where a word that begins here ends, or -1 if it does not stand here whole. */
  int endOf(String word) {
    if (beginsOtherwise(word)) {
      return -1;
    }
    int i = at;
    for (int w = 0; w < word.length(); w++) {
      if (word.charAt(w) == ' ') {
        int start = i;
        while (i < text.length() && isSpace(text.charAt(i))) {
          i++;
        }
        if (i == start) {
          return -1;
        }
      } else if (!text.regionMatches(true, i, word, w, 1)) {
        return -1;
      } else {
        i++;
      }
    }
    boolean letters = Character.isLetter(word.charAt(word.length() - 1));
    boolean cut = letters && i < text.length() && Character.isLetterOrDigit(text.charAt(i));
    return cut ? -1 : i;
  }

  /** Says whether what stands here and a word surely differ in their first letters. */
  private boolean beginsOtherwise(String word) {
    if (atEnd()) {
      return true;
    }
    char here = text.charAt(at);
    char first = word.charAt(0);
    return here < 0x80 && first < 0x80 && (here | ' ') != (first | ' ');
  }

  /** Moves past ±, or one of the ways to type it. */
  boolean takePlusMinus() {
    return take(PLUS_MINUS).isPresent();
  }

  /** Returns the whole text with its spaces and its signs ± made uniform. */
  String uniform() {
    return SPACED_PLUS_MINUS.matcher(text.strip()).replaceAll(" ± ").replaceAll("\\s+", " ");
  }

  /** Moves past a match that begins here, and the space after it. */
  Optional<Matcher> take(Pattern pattern) {
    Matcher matcher = pattern.matcher(text).region(at, text.length());
    if (!matcher.lookingAt()) {
      return Optional.empty();
    }
    at = matcher.end();
    skipSpace();
    return Optional.of(matcher);
  }

  /** Reads {@code 3}, {@code 2.4}, {@code 3/32}, {@code 1 1/2}, {@code 1-1/2} or {@code 1½}. */
  Parsed<BigFraction> number() {
    Matcher comma = COMMA.matcher(text).region(at, text.length());
    if (comma.lookingAt()) {
      String point = comma.group(1) + "." + comma.group(2);
      boolean thousands = comma.group(2).length() == 3;
      String reason =
          thousands
              ? "the comma may mean a point or thousands: write "
                  + point
                  + " or "
                  + comma.group(1)
                  + comma.group(2)
              : "write a point, not a comma: " + point;
      return Parsed.bad(reason, at, comma.end() - at);
    }
    int start = at;
    Optional<Matcher> found = take(NUMBER);
    if (found.isEmpty()) {
      return expected("a number is missing here: write one such as 2.4, 3/32 or 1 1/2");
    }
    Matcher number = found.get();
    if (number.end() < text.length() && isDigit(text.charAt(number.end()))) {
      return Parsed.bad("the number is too long: twenty digits are enough", start, at - start);
    }
    return value(number, start);
  }

  private Parsed<BigFraction> value(Matcher number, int start) {
    String decimal = number.group("decimal");
    if (decimal != null) {
      return Parsed.ok(decimal(decimal));
    }
    String vulgar = number.group("vulgar");
    if (vulgar != null) {
      BigFraction part = BigFraction.parse(VULGAR_VALUES[VULGAR.indexOf(vulgar)]);
      String before = number.group("before");
      return Parsed.ok(before.isEmpty() ? part : part.add(new BigInteger(before)));
    }
    BigInteger over = new BigInteger(number.group("over"));
    BigInteger under = new BigInteger(number.group("under"));
    int length = number.end() - start;
    if (under.signum() == 0) {
      return Parsed.bad("nothing can be divided by zero", start, length);
    }
    BigFraction part = BigFraction.of(over, under);
    String whole = number.group("whole");
    if (whole == null) {
      return Parsed.ok(part);
    }
    if (over.compareTo(under) >= 0) {
      String reason = "the fraction after " + whole + " is one or more: write it as one number";
      return Parsed.bad(reason, start, length);
    }
    return Parsed.ok(part.add(new BigInteger(whole)));
  }

  /** Returns the exact value of digits with or without a point. */
  static BigFraction decimal(String digits) {
    int point = digits.indexOf('.');
    int places = point < 0 ? 0 : digits.length() - point - 1;
    BigInteger all = new BigInteger(point < 0 ? digits : digits.replace(".", ""));
    return BigFraction.of(all, BigInteger.TEN.pow(places));
  }

  /** Returns a refusal of what stands here, up to the next space. */
  <T> Parsed<T> expected(String reason) {
    return Parsed.bad(reason, at, word().length());
  }

  /** Returns what stands here up to the next space. */
  String word() {
    int end = at;
    while (end < text.length() && !isSpace(text.charAt(end))) {
      end++;
    }
    return text.substring(at, end);
  }

  /** Returns the letters that stand here. */
  String letters() {
    int end = at;
    while (end < text.length() && Character.isLetter(text.charAt(end))) {
      end++;
    }
    return text.substring(at, end);
  }

  /** Refuses what is left of the text, if anything is. */
  <T> Parsed<T> finish(T value) {
    return atEnd()
        ? Parsed.ok(value)
        : Parsed.bad(
            "\"" + shown(text.substring(at).strip()) + "\" was not understood",
            at,
            text.length() - at);
  }

  /** Returns a piece of a person's text, short enough to repeat in a message. */
  static String shown(String text) {
    return text.codePointCount(0, text.length()) <= 24
        ? text
        : text.substring(0, text.offsetByCodePoints(0, 23)) + "…";
  }
}
