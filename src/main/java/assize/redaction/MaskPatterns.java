package assize.redaction;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What is looked for on behalf of each number and each private word. */
final class MaskPatterns {
  /** How many letters and digits at a number's end are masked. */
  private static final int ENDING = 3;

  /** A number with fewer letters and digits is masked whole. */
  private static final int WHOLLY = 5;

  /** Digits in a row that are looked for by themselves. */
  private static final int RUN = 4;

  /** A number or word with no more letters and digits is found only where it stands by itself. */
  private static final int SHORT_NUMBER = 3;

  private static final int SHORT_WORD = 5;

  /**
   * A number of letters alone, and no more of them, is found only where nothing else is written.
   */
  private static final int TOO_SHORT = 2;

  private MaskPatterns() {}

  /** Returns what is looked for on behalf of a number. */
  static List<MaskPattern> ofNumber(Showing showing, int owner) {
    NormalizedText folded = NormalizedText.of(showing.number());
    int length = folded.length();
    List<MaskPattern> shapes = new ArrayList<>();
    if (length == 0) {
      return shapes;
    }
    boolean[] masked = new boolean[length];
    mask(masked, 0, length);
    List<int[]> runs = new ArrayList<>(runs(folded, true));
    runs.addAll(runs(folded, false));
    runs.forEach(run -> mask(masked, run[0], run[1]));
    boolean hidesLength = showing.letters().isPresent();
    for (int i = 0; hidesLength && i < length; i++) {
      masked[i] = i >= showing.letters().getAsInt();
    }
    boolean digits = true;
    boolean letters = true;
    for (int i = 0; i < length; i++) {
      digits &= folded.isDigit(i);
      letters &= !folded.isDigit(i);
    }
    boolean isShort = length <= SHORT_NUMBER;
    NormalizedText.Gap widest =
        digits && isShort
            ? NormalizedText.Gap.NARROW
            : digits || isShort ? NormalizedText.Gap.WIDE : NormalizedText.Gap.SIGNS;
    shapes.add(
        new MaskPattern(
            part(folded, 0, length), masked, widest, stands(length, letters), hidesLength, owner));
    for (int[] run : runs) {
      shapes.add(ofRun(folded, run, masked, MaskPattern.Stands.ANYWHERE, hidesLength, owner));
    }
    int[] low = lowRun(folded);
    if (low[1] - low[0] < length) {
      shapes.add(ofRun(folded, low, masked, MaskPattern.Stands.WHOLE, hidesLength, owner));
    }
    return shapes;
  }

  private static MaskPattern ofRun(
      NormalizedText number,
      int[] run,
      boolean[] masked,
      MaskPattern.Stands stands,
      boolean hidesLength,
      int owner) {
    return new MaskPattern(
        part(number, run[0], run[1]),
        Arrays.copyOfRange(masked, run[0], run[1]),
        NormalizedText.Gap.NARROW,
        stands,
        hidesLength,
        owner);
  }

  /** Finds the digits of a low number, which stand last in it; all of it where there are none. */
  private static int[] lowRun(NormalizedText number) {
    int end = number.length();
    while (end > 0 && !number.isDigit(end - 1)) {
      end--;
    }
    int start = end;
    while (start > 0
        && number.isDigit(start - 1)
        && (start == end || number.gap(start) == NormalizedText.Gap.NONE)) {
      start--;
    }
    boolean isLow = start < end && end - start < RUN;
    return isLow ? new int[] {start, end} : new int[] {0, number.length()};
  }

  /** Says whether a number is too short to be found among other words. */
  static boolean isTooShort(String number) {
    NormalizedText folded = NormalizedText.of(number);
    boolean digits = folded.toString().chars().anyMatch(c -> c >= '0' && c <= '9');
    return folded.length() <= TOO_SHORT && !digits;
  }

  private static MaskPattern.Stands stands(int length, boolean letters) {
    if (length > SHORT_NUMBER) {
      return MaskPattern.Stands.ANYWHERE;
    }
    return letters && length <= TOO_SHORT ? MaskPattern.Stands.ALONE : MaskPattern.Stands.WHOLE;
  }

  /** Masks the ending of a number that stands from one letter or digit to another. */
  private static void mask(boolean[] masked, int from, int to) {
    boolean wholly = from == 0 && to == masked.length && to < WHOLLY;
    Arrays.fill(masked, wholly ? from : Math.max(from, to - ENDING), to, true);
  }

  /** Finds digits in a row, as they are written or with something between them. */
  private static List<int[]> runs(NormalizedText number, boolean written) {
    List<int[]> runs = new ArrayList<>();
    int start = 0;
    for (int i = 1; i <= number.length(); i++) {
      boolean goesOn =
          i < number.length()
              && number.isDigit(i)
              && number.isDigit(i - 1)
              && !(written && number.gap(i) != NormalizedText.Gap.NONE);
      if (!goesOn) {
        if (i - start >= RUN) {
          runs.add(new int[] {start, i});
        }
        start = i;
      }
    }
    return runs;
  }

  /** Returns what is looked for on behalf of a private word. */
  static MaskPattern ofWord(String word, int owner) {
    NormalizedText folded = NormalizedText.of(word);
    boolean[] masked = new boolean[folded.length()];
    Arrays.fill(masked, true);
    boolean isShort = folded.length() <= SHORT_WORD;
    // Figures of the program stand next to each other, so digits are not looked for far apart.
    boolean digits = folded.toString().chars().anyMatch(c -> c >= '0' && c <= '9');
    return new MaskPattern(
        part(folded, 0, folded.length()),
        masked,
        isShort || digits ? NormalizedText.Gap.WIDE : NormalizedText.Gap.SIGNS,
        isShort ? MaskPattern.Stands.WHOLE : MaskPattern.Stands.ANYWHERE,
        false,
        owner);
  }

  private static int[] part(NormalizedText folded, int from, int to) {
    int[] letters = new int[to - from];
    for (int i = from; i < to; i++) {
      letters[i - from] = folded.letter(i);
    }
    return letters;
  }
}
