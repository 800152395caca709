package assize.redaction;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.Locale;

/**
 * The letters and digits of a text as masks compare them, each with the place where it stands:
 * compatible forms made one (Unicode Standard Annex 15, form KD), marks dropped, in capitals, every
 * script's digits as those of ASCII.
 */
final class NormalizedText {
  /** What stands between a letter or digit and the one before it. */
  enum Gap {
    /** Nothing that is seen. */
    NONE,
    /** Spaces, a comma, an apostrophe, marks of emphasis. */
    NARROW,
    /** Dashes, slashes or a full stop too. */
    WIDE,
    /** Any signs, few of them. */
    SIGNS,
    /** More. */
    BREAK
  }

  /** The most signs, spaces not counted, that letters or digits of one number have between them. */
  static final int MOST_SIGNS = 20;

  private static final String EMPHASIS = "*_`~'’";
  private static final String STROKES = "/\\⁄∕|·•_−";

  /** Blank signs that are no spaces: Hangul fillers, an empty Braille cell, an empty notehead. */
  private static final String BLANKS = "\u115F\u1160\u3164\uFFA0\u2800\u2065\uD834\uDD59";

  /** The digits of Chinese, from 0; Unicode's character data calls them letters. */
  private static final String[] CHINESE = {
    "零〇", "一壹壱弌", "二贰貳弐弍兩两", "三叁參参弎", "四肆", "五伍", "六陆陸", "七柒漆", "八捌", "九玖"
  };

  /** Gaps that shapes allow, each by its place. */
  private static final Gap[] ASKED = {Gap.NARROW, Gap.WIDE, Gap.SIGNS};

  private final String text;
  private int[] letters = new int[16];
  private int[] from = new int[16];
  private int[] to = new int[16];
  private Gap[] gaps = new Gap[16];
  private boolean[] decimals = new boolean[16];
  private final int[][] wider = new int[ASKED.length][16];
  private int length;

  private NormalizedText(String text) {
    this.text = text;
  }

  /** Folds a text as it is written. */
  static NormalizedText of(String text) {
    return of(text, false);
  }

  /** Folds what a text means where it has {@link Escapes}. */
  static NormalizedText unescaped(String text) {
    return of(text, true);
  }

  private static NormalizedText of(String text, boolean unescaped) {
    NormalizedText folded = new NormalizedText(text);
    int end = 0;
    int at = 0;
    while (at < text.length()) {
      int point = text.codePointAt(at);
      int next = at + Character.charCount(point);
      if (unescaped) {
        Escapes.Escape escape = Escapes.at(text, at);
        if (escape.end() > at) {
          point = escape.point();
          next = escape.end();
        }
      }
      String letters = fold(point);
      for (int i = 0; i < letters.length(); ) {
        int letter = letters.codePointAt(i);
        i += Character.charCount(letter);
        folded.add(letter, at, next, end > at ? "" : text.substring(end, at));
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

  private void add(int letter, int start, int end, String between) {
    if (length == letters.length) {
      grow();
    }
    Gap gap = gap(between);
    letters[length] = letter;
    from[length] = start;
    to[length] = end;
    gaps[length] = gap;
    decimals[length] = between.equals(".") || between.equals(",");
    for (int i = 0; i < ASKED.length; i++) {
      boolean parted = gap.compareTo(ASKED[i]) > 0;
      wider[i][length] = parted ? length : length == 0 ? -1 : wider[i][length - 1];
    }
    length++;
  }

  private void grow() {
    letters = Arrays.copyOf(letters, 2 * length);
    from = Arrays.copyOf(from, 2 * length);
    to = Arrays.copyOf(to, 2 * length);
    gaps = Arrays.copyOf(gaps, 2 * length);
    decimals = Arrays.copyOf(decimals, 2 * length);
    for (int i = 0; i < wider.length; i++) {
      wider[i] = Arrays.copyOf(wider[i], 2 * length);
    }
  }

  /** Returns what a character is compared as: nothing, one letter or digit, or several. */
  private static String fold(int point) {
    if (point < 0x80) {
      boolean counts = Character.isLetterOrDigit(point);
      return counts ? Character.toString(Character.toUpperCase(point)) : "";
    }
    String one = kd(kd(Character.toString(point)).toUpperCase(Locale.ROOT));
    StringBuilder kept = new StringBuilder();
    one.codePoints().forEach(c -> kept.append(compared(c)));
    return kept.toString();
  }

  private static String compared(int c) {
    for (int digit = 0; digit < CHINESE.length; digit++) {
      if (CHINESE[digit].indexOf(c) >= 0) {
        return Integer.toString(digit);
      }
    }
    int type = Character.getType(c);
    if (type == Character.DECIMAL_DIGIT_NUMBER
        || type == Character.OTHER_NUMBER
        || type == Character.LETTER_NUMBER) {
      int value = Character.getNumericValue(c);
      return value >= 0 ? Integer.toString(value) : "";
    }
    return Character.isLetter(c) && !isBlank(c) ? Character.toString(c) : "";
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
    if (seen.equals(",") || seen.codePoints().allMatch(NormalizedText::isNarrow)) {
      return Gap.NARROW;
    }
    if (seen.equals(".") || seen.codePoints().allMatch(c -> isNarrow(c) || isStroke(c))) {
      return Gap.WIDE;
    }
    return seen.codePoints().filter(c -> !isSpace(c)).count() <= MOST_SIGNS ? Gap.SIGNS : Gap.BREAK;
  }

  private static boolean isUnseen(int c) {
    int type = Character.getType(c);
    return type == Character.FORMAT
        || type == Character.NON_SPACING_MARK
        || type == Character.ENCLOSING_MARK
        || type == Character.COMBINING_SPACING_MARK
        || isBlank(c)
        || c >= 0xFFF0 && c <= 0xFFF8
        || c >= 0xE0000 && c <= 0xE0FFF;
  }

  private static boolean isBlank(int c) {
    return BLANKS.indexOf(c) >= 0;
  }

  private static boolean isSpace(int c) {
    return Character.isWhitespace(c) || Character.isSpaceChar(c);
  }

  private static boolean isNarrow(int c) {
    return isSpace(c) || EMPHASIS.indexOf(c) >= 0;
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

  /** Says whether more than a narrow, wide or other gap stands anywhere between some letters. */
  boolean isParted(int start, int end, Gap most) {
    return wider[most.ordinal() - Gap.NARROW.ordinal()][end - 1] > start;
  }

  /** Says whether a word or number can end before this letter or digit, or at the end. */
  boolean isEdge(int index) {
    if (index <= 0 || index >= length) {
      return true;
    }
    if (gaps[index] != Gap.NONE) {
      return !(decimals[index] && isDigit(index) && isDigit(index - 1));
    }
    boolean kinds = isDigit(index) != isDigit(index - 1);
    boolean hump =
        Character.isUpperCase(text.codePointAt(from[index]))
            && Character.isLowerCase(text.codePointAt(from[index - 1]));
    return kinds || hump;
  }

  /** Returns letters and digits alone. */
  @Override
  public String toString() {
    return new String(letters, 0, length);
  }
}
