package assize.redaction;

import java.text.Normalizer;
import java.util.BitSet;
import java.util.Locale;
import java.util.Optional;

/** A number that somebody tells, held against the masked form that a copy shows. */
public final class MaskedNumber {
  /** A private word within a number, however long, becomes as many x. */
  private static final int WORD = 3;

  /** Above here stand the pictures of Unicode, between letters of old and rare scripts. */
  private static final int PICTURES = 0x1F000;

  private MaskedNumber() {}

  /** Returns the letters and digits of a number, which are all that its hash is made of. */
  public static String letters(String number) {
    return NormalizedText.of(number).toString();
  }

  /** Returns the first character that no number has: one that can't be seen, or a picture. */
  public static Optional<String> strange(String number) {
    return number
        .codePoints()
        .filter(MaskedNumber::isStrange)
        .mapToObj(Character::toString)
        .findFirst();
  }

  private static boolean isStrange(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.UNASSIGNED,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      default -> c >= PICTURES && !Character.isLetterOrDigit(c);
    };
  }

  /**
   * Says whether a number is written as its masked form shows it: what is not masked is the same,
   * and each x stands for one letter or digit, three or more for any without something between.
   * Where no digit is shown before them the length of the number is hidden, and its spaces too.
   * Capitals, the width of letters and the kind of dash or space make no difference.
   */
  public static boolean isOf(String masked, String number) {
    int[] form = points(masked);
    int[] told = points(number);
    BitSet reached = new BitSet(told.length + 1);
    reached.set(0);
    for (int at = 0; at < form.length; ) {
      int run = run(form, at);
      boolean parted = run == WORD && at + run == form.length && !followsDigit(form, at);
      reached = run == 0 ? same(form[at], told, reached) : letters(run, parted, told, reached);
      at += Math.max(run, 1);
    }
    return reached.get(told.length);
  }

  private static int[] points(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFC).codePoints().toArray();
  }

  /** Returns how many x there are from a place on. */
  private static int run(int[] form, int from) {
    int at = from;
    while (at < form.length && form[at] == 'x') {
      at++;
    }
    return at - from;
  }

  private static BitSet same(int wanted, int[] told, BitSet from) {
    BitSet reached = new BitSet(told.length + 1);
    String sort = sort(wanted);
    from.stream()
        .filter(at -> at < told.length && sort.equals(sort(told[at])))
        .forEach(at -> reached.set(at + 1));
    return reached;
  }

  private static boolean followsDigit(int[] form, int at) {
    int before = at - 1;
    while (before >= 0 && !Character.isLetterOrDigit(form[before])) {
      before--;
    }
    return before >= 0 && Character.isDigit(form[before]);
  }

  /** Goes on over masked letters and digits; where they may be parted, over what is between too. */
  private static BitSet letters(int run, boolean parted, int[] told, BitSet from) {
    BitSet reached = new BitSet(told.length + 1);
    from.stream()
        .forEach(
            start -> {
              int most = run < WORD ? run : told.length;
              for (int n = 1; n <= most && start + n <= told.length; n++) {
                boolean letter = Character.isLetterOrDigit(told[start + n - 1]);
                if (!letter && (!parted || n == 1)) {
                  break;
                }
                if (letter && (run >= WORD || n == run)) {
                  reached.set(start + n);
                }
              }
            });
    return reached;
  }

  /** Returns what a character is compared as. */
  private static String sort(int c) {
    if (Character.getType(c) == Character.DASH_PUNCTUATION || c == '−') {
      return "-";
    }
    if (Character.isWhitespace(c) || Character.isSpaceChar(c)) {
      return " ";
    }
    return Normalizer.normalize(Character.toString(c), Normalizer.Form.NFKC)
        .toUpperCase(Locale.ROOT);
  }
}
