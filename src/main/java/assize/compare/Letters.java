package assize.compare;

import java.util.Locale;
import java.util.stream.IntStream;

/** The pairs of neighboring letters of a text, by which it is compared with others. */
final class Letters {
  /** So many letters of a text are compared; no name or title is as long. */
  private static final int COMPARED = 200;

  private final String text;

  /** In the order of the pairs, each as often as the text has it. */
  private final int[] pairs;

  Letters(String text) {
    this.text = text.substring(0, Math.min(text.length(), COMPARED));
    String folded = this.text.toLowerCase(Locale.ROOT);
    this.pairs =
        IntStream.range(1, folded.length())
            .map(i -> folded.charAt(i - 1) << Character.SIZE | folded.charAt(i))
            .sorted()
            .toArray();
  }

  /** Returns how many pairs two texts share, 0 to 1 (Dice 1945). */
  double like(Letters other) {
    int all = pairs.length + other.pairs.length;
    if (all == 0) {
      return text.equals(other.text) ? 1 : 0;
    }
    int shared = 0;
    int here = 0;
    int there = 0;
    while (here < pairs.length && there < other.pairs.length) {
      int order = Integer.compare(pairs[here], other.pairs[there]);
      shared += order == 0 ? 1 : 0;
      here += order <= 0 ? 1 : 0;
      there += order >= 0 ? 1 : 0;
    }
    return 2.0 * shared / all;
  }
}
