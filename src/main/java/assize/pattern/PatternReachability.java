package assize.pattern;

import java.util.List;

/**
 * What a part of a pattern leads to, from each place at which it can begin: enough to tell whether
 * any text fits.
 *
 * <p>A place is what stands before it (nothing, a letter of a word, the end of a line, something
 * else) with what may follow it (the same four, the end of the text in place of its beginning). The
 * conditions {@code ^ $ \b \B} look at nothing else, so these 64 places tell all texts apart that
 * they tell apart. Repetitions beyond the first few are taken as any number of times: more texts
 * fit then, never fewer.
 */
final class PatternReachability {
  private static final int SIDES = 4;
  private static final int EDGE = 3;
  private static final int ANYTHING = (1 << SIDES) - 1;
  private static final int PLACES = SIDES << SIDES;
  private static final int COUNTED = 4;

  /** For each place the places behind the part, as bits. */
  private final long[] to;

  private PatternReachability(long[] to) {
    this.to = to;
  }

  /** A condition on a place. */
  enum Edge {
    TEXT_BEGINS,
    TEXT_ENDS,
    LINE_BEGINS,
    LINE_ENDS,
    WORD_EDGE,
    NO_WORD_EDGE
  }

  private static int place(int before, int after) {
    return before << SIDES | after;
  }

  /** The part that fits the empty text alone. */
  static PatternReachability nothing() {
    long[] to = new long[PLACES];
    for (int at = 0; at < PLACES; at++) {
      to[at] = 1L << at;
    }
    return new PatternReachability(to);
  }

  /**
   * The part that fits one sign.
   *
   * @param kinds what it may be, as bits in the order of {@link CodePointSet.Kind}
   */
  static PatternReachability sign(int kinds) {
    long[] to = new long[PLACES];
    for (int at = 0; at < PLACES; at++) {
      for (int kind = 0; kind < EDGE; kind++) {
        if ((kinds & at & 1 << kind) != 0) {
          to[at] |= 1L << place(kind, ANYTHING);
        }
      }
    }
    return new PatternReachability(to);
  }

  /** The part that fits nothing but a place. */
  static PatternReachability edge(Edge edge) {
    long[] to = new long[PLACES];
    for (int at = 0; at < PLACES; at++) {
      int before = at >> SIDES;
      int after = at & allowed(edge, before);
      to[at] = after == 0 ? 0 : 1L << place(before, after);
    }
    return new PatternReachability(to);
  }

  private static int allowed(Edge edge, int before) {
    int word = 1 << CodePointSet.Kind.WORD.ordinal();
    int line = 1 << CodePointSet.Kind.LINE_END.ordinal();
    int end = 1 << EDGE;
    boolean afterWord = before == CodePointSet.Kind.WORD.ordinal();
    boolean afterLine = before == CodePointSet.Kind.LINE_END.ordinal();
    return switch (edge) {
      case TEXT_BEGINS -> before == EDGE ? ANYTHING : 0;
      case TEXT_ENDS -> end;
      case LINE_BEGINS -> before == EDGE || afterLine ? ANYTHING : 0;
      case LINE_ENDS -> end | line;
      case WORD_EDGE -> afterWord ? ANYTHING & ~word : word;
      case NO_WORD_EDGE -> afterWord ? word : ANYTHING & ~word;
    };
  }

  /** The parts one after another. */
  static PatternReachability all(List<PatternReachability> parts) {
    return parts.stream().reduce(nothing(), PatternReachability::then);
  }

  /** Any of the parts. */
  static PatternReachability any(List<PatternReachability> parts) {
    return parts.stream()
        .reduce(new PatternReachability(new long[PLACES]), PatternReachability::or);
  }

  PatternReachability then(PatternReachability next) {
    long[] both = new long[PLACES];
    for (int at = 0; at < PLACES; at++) {
      for (long left = to[at]; left != 0; left &= left - 1) {
        both[at] |= next.to[Long.numberOfTrailingZeros(left)];
      }
    }
    return new PatternReachability(both);
  }

  private PatternReachability or(PatternReachability other) {
    long[] either = new long[PLACES];
    for (int at = 0; at < PLACES; at++) {
      either[at] = to[at] | other.to[at];
    }
    return new PatternReachability(either);
  }

  /**
   * The part some times over.
   *
   * @param most below zero: any number of times
   */
  PatternReachability times(int least, int most) {
    PatternReachability all = nothing();
    for (int i = 0; i < Math.min(least, COUNTED); i++) {
      all = all.then(this);
    }
    if (most >= 0 && most <= COUNTED) {
      PatternReachability upTo = all;
      for (int i = least; i < most; i++) {
        upTo = upTo.then(this);
        all = all.or(upTo);
      }
      return all;
    }
    for (PatternReachability more = all.or(all.then(this));
        !same(more, all);
        more = all.or(all.then(this))) {
      all = more;
    }
    return all;
  }

  private static boolean same(PatternReachability a, PatternReachability b) {
    return java.util.Arrays.equals(a.to, b.to);
  }

  /** Says whether any text fits as a whole. */
  boolean fitsAny() {
    for (long left = to[place(EDGE, ANYTHING)]; left != 0; left &= left - 1) {
      if ((Long.numberOfTrailingZeros(left) & 1 << EDGE) != 0) {
        return true;
      }
    }
    return false;
  }
}
