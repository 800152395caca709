package assize.pattern;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntPredicate;

/** A set of letters and signs, as ranges of code points. */
final class CodePointSet {
  static final int LAST = Character.MAX_CODE_POINT;

  /** How far into a range capitals and small letters are looked up. */
  private static final int FOLDED = 2_000;

  /** After this one no letter of a word and no end of a line follows ({@code \w} is ASCII). */
  private static final int LAST_PLAIN = 'z';

  static final CodePointSet ALL = of(0, LAST);
  static final CodePointSet DIGITS = of('0', '9');
  static final CodePointSet SPACES = of('\t', '\n').and(of('\f', '\r')).and(of(' ', ' '));
  static final CodePointSet WORD = DIGITS.and(of('A', 'Z')).and(of('a', 'z')).and(of('_', '_'));

  /** What patterns look at before and behind a place. */
  enum Kind {
    WORD,
    LINE_END,
    OTHER
  }

  private record Range(int from, int to) {}

  private final List<Range> ranges;

  private CodePointSet(List<Range> ranges) {
    this.ranges = List.copyOf(ranges);
  }

  static CodePointSet of(int from, int to) {
    return new CodePointSet(List.of(new Range(from, to)));
  }

  /** Returns the only one, if there is only one. */
  OptionalInt single() {
    return ranges.size() == 1 && ranges.get(0).from == ranges.get(0).to
        ? OptionalInt.of(ranges.get(0).from)
        : OptionalInt.empty();
  }

  CodePointSet and(CodePointSet other) {
    List<Range> all = new ArrayList<>(ranges);
    all.addAll(other.ranges);
    return new CodePointSet(all);
  }

  CodePointSet not() {
    List<Range> gaps = new ArrayList<>();
    int next = 0;
    for (Range range : ranges.stream().sorted(Comparator.comparingInt(Range::from)).toList()) {
      if (range.from > next) {
        gaps.add(new Range(next, range.from - 1));
      }
      next = Math.max(next, range.to + 1);
    }
    if (next <= LAST) {
      gaps.add(new Range(next, LAST));
    }
    return new CodePointSet(gaps);
  }

  /** Adds the capital of each small letter, and the other way round. */
  CodePointSet folded() {
    List<Range> all = new ArrayList<>(ranges);
    for (Range range : ranges) {
      for (int c = range.from; c <= Math.min(range.to, range.from + FOLDED); c++) {
        add(all, c, Character.toLowerCase(c));
        add(all, c, Character.toUpperCase(c));
      }
    }
    return new CodePointSet(all);
  }

  private static void add(List<Range> all, int c, int other) {
    if (other != c) {
      all.add(new Range(other, other));
    }
  }

  /** Returns the kinds of those among them that can stand in a text, as bits by their order. */
  int kinds(IntPredicate canStand) {
    int kinds = 0;
    for (Range range : ranges) {
      for (int c = range.from; c <= range.to; c++) {
        if (canStand.test(c)) {
          kinds |= 1 << kind(c).ordinal();
        }
        if (c > LAST_PLAIN && (kinds & 1 << Kind.OTHER.ordinal()) != 0) {
          break;
        }
      }
    }
    return kinds;
  }

  private static Kind kind(int c) {
    if (c == '\n') {
      return Kind.LINE_END;
    }
    boolean word = c >= '0' && c <= '9' || c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z' || c == '_';
    return word ? Kind.WORD : Kind.OTHER;
  }
}
