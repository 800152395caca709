package assize.share;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.Locale;

/**
 * The letters and digits of a text as masks compare them, each with the place where it stands:
 * compatible forms made one (Unicode Standard Annex 15, form KD), marks dropped, in capitals, every
 * script's digits as those of ASCII.
 */
final class Folded {
  /** What stands between a letter or digit and the one before it. */
  enum Gap {
    /** Nothing that is seen. */
    NONE,
    /** Spaces, a comma, an apostrophe, marks of emphasis. */
    NARROW,
    /** Dashes, slashes or a full stop too. */
    WIDE,
    /** Anything else. */
    BREAK
  }

  private static final String EMPHASIS = "*_`~'’";
  private static final String STROKES = "/\\⁄∕|·•_−";

  private final String text;
  private int[] letters = new int[16];
  private int[] from = new int[16];
  private int[] to = new int[16];
  private Gap[] gaps = new Gap[16];
  private int length;

  private Folded(String text) {
    this.text = text;
  }

  static Folded of(String text) {
    Folded folded = new Folded(text);
    int end = 0;
    int at = 0;
    while (at < text.length()) {
      int point = text.codePointAt(at);
      int next = at + Character.charCount(point);
      String letters = fold(point);
      for (int i = 0; i < letters.length(); ) {
        int letter = letters.codePointAt(i);
        i += Character.charCount(letter);
        folded.add(letter, at, next, end > at ? Gap.NONE : gap(text.substring(end, at)));
        end = next;
      }
      if (letters.isEmpty() && folded.length > 0 && end == at && isUnseen(point)) {
        folded.to[folded.length - 1] = next;
        end = next;
      }
      at = next;
    }
    return folded;
  }

  private void add(int letter, int start, int end, Gap gap) {
    if (length == letters.length) {
      letters = Arrays.copyOf(letters, 2 * length);
      from = Arrays.copyOf(from, 2 * length);
      to = Arrays.copyOf(to, 2 * length);
      gaps = Arrays.copyOf(gaps, 2 * length);
    }
    letters[length] = letter;
    from[length] = start;
    to[length] = end;
    gaps[length++] = gap;
  }

  /** Returns what a character is compared as: nothing, one letter or digit, or several. */
  private static String fold(int point) {
    if (point < 0x80) {
      boolean counts = Character.isLetterOrDigit(point);
      return counts ? Character.toString(Character.toUpperCase(point)) : "";
    }
    String one = kd(kd(Character.toString(point)).toUpperCase(Locale.ROOT));
    StringBuilder kept = new StringBuilder();
    one.codePoints()
        .filter(Character::isLetterOrDigit)
        .map(c -> Character.isDigit(c) ? '0' + Character.digit(c, 10) : c)
        .forEach(kept::appendCodePoint);
    return kept.toString();
  }

  private static String kd(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFKD);
  }

  private static Gap gap(String between) {
    if (between.isEmpty()) {
      return Gap.NONE;
    }
    String seen =
        kd(between)
            .codePoints()
            .filter(c -> !isUnseen(c))
            .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
            .toString();
    if (seen.isEmpty()) {
      return Gap.NONE;
    }
    if (seen.equals(",") || seen.codePoints().allMatch(Folded::isNarrow)) {
      return Gap.NARROW;
    }
    boolean wide = seen.equals(".") || seen.codePoints().allMatch(c -> isNarrow(c) || isStroke(c));
    return wide ? Gap.WIDE : Gap.BREAK;
  }

  private static boolean isUnseen(int c) {
    int type = Character.getType(c);
    return type == Character.FORMAT
        || type == Character.NON_SPACING_MARK
        || type == Character.ENCLOSING_MARK
        || type == Character.COMBINING_SPACING_MARK;
  }

  private static boolean isNarrow(int c) {
    return Character.isWhitespace(c) || Character.isSpaceChar(c) || EMPHASIS.indexOf(c) >= 0;
  }

  private static boolean isStroke(int c) {
    return Character.getType(c) == Character.DASH_PUNCTUATION || STROKES.indexOf(c) >= 0;
  }

  int length() {
    return length;
  }

  int letter(int index) {
    return letters[index];
  }

  boolean isDigit(int index) {
    return letters[index] >= '0' && letters[index] <= '9';
  }

  /** Returns where in the text a letter or digit begins, in UTF-16 units. */
  int from(int index) {
    return from[index];
  }

  /** Returns where it ends. */
  int to(int index) {
    return to[index];
  }

  Gap gap(int index) {
    return gaps[index];
  }

  /** Says whether a word or number can end before this letter or digit, or at the end. */
  boolean isEdge(int index) {
    if (index <= 0 || index >= length) {
      return true;
    }
    if (gaps[index] != Gap.NONE) {
      return !isDecimal(index);
    }
    boolean kinds = isDigit(index) != isDigit(index - 1);
    boolean hump =
        Character.isUpperCase(text.codePointAt(from[index]))
            && Character.isLowerCase(text.codePointAt(from[index - 1]));
    return kinds || hump;
  }

  /** Says whether a full stop or comma between two digits stands before this one. */
  private boolean isDecimal(int index) {
    String between = text.substring(to[index - 1], from[index]);
    return isDigit(index) && isDigit(index - 1) && (between.equals(".") || between.equals(","));
  }

  /** Returns letters and digits alone. */
  @Override
  public String toString() {
    return new String(letters, 0, length);
  }
}
