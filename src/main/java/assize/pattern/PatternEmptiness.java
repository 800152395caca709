package assize.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntPredicate;

/**
 * Tells whether a pattern in RE2 syntax fits any text at all. Capitals do not count.
 *
 * <p>Only a pattern that can be read may be asked about. Of what is not known here (a script of
 * letters, say) more is taken to fit than does, so that nothing is called empty that is not.
 */
final class PatternEmptiness {
  private final int[] text;
  private final IntPredicate canStand;
  private int at;
  private boolean lost;

  private PatternEmptiness(String text, IntPredicate canStand) {
    this.text = text.codePoints().toArray();
    this.canStand = canStand;
  }

  /**
   * Says whether no text fits.
   *
   * @param canStand what can stand in a text
   */
  static boolean of(String pattern, IntPredicate canStand) {
    PatternEmptiness reading = new PatternEmptiness(pattern, canStand);
    PatternReachability reach = reading.any(new Flags(false, false));
    return !reading.lost && reading.at == reading.text.length && !reach.fitsAny();
  }

  /** What {@code (?ms)} switch on. */
  private record Flags(boolean lines, boolean dotAll) {}

  private boolean more() {
    return !lost && at < text.length;
  }

  private int peek() {
    return at < text.length ? text[at] : -1;
  }

  private boolean take(String word) {
    int[] wanted = word.codePoints().toArray();
    if (at + wanted.length > text.length) {
      return false;
    }
    for (int i = 0; i < wanted.length; i++) {
      if (text[at + i] != wanted[i]) {
        return false;
      }
    }
    at += wanted.length;
    return true;
  }

  private PatternReachability lose() {
    lost = true;
    return PatternReachability.nothing();
  }

  private PatternReachability any(Flags flags) {
    List<PatternReachability> ways = new ArrayList<>();
    List<PatternReachability> parts = new ArrayList<>();
    Flags here = flags;
    while (more() && peek() != ')') {
      if (take("|")) {
        ways.add(PatternReachability.all(parts));
        parts.clear();
      } else if (take("(")) {
        Optional<Flags> inside = take("?") ? flags(here) : Optional.of(here);
        if (inside.isPresent()) {
          PatternReachability group = any(inside.get());
          lost |= !take(")");
          parts.add(repeated(group));
        } else if (take(")")) {
          here = switched;
        } else {
          return lose();
        }
      } else if (take("\\Q")) {
        while (more() && !take("\\E")) {
          parts.add(sign(CodePointSet.of(text[at], text[at++])));
        }
      } else {
        parts.add(repeated(one(here)));
      }
    }
    ways.add(PatternReachability.all(parts));
    return PatternReachability.any(ways);
  }

  private Flags switched = new Flags(false, false);

  /**
   * Reads what follows {@code (?}: the flags inside of the group, or none where no group begins.
   */
  private Optional<Flags> flags(Flags outside) {
    if (take("P<") || take("<")) {
      while (more() && !take(">")) {
        at++;
      }
      return Optional.of(outside);
    }
    boolean lines = outside.lines;
    boolean dotAll = outside.dotAll;
    boolean on = true;
    while (more()) {
      int c = text[at];
      if (c == ':') {
        at++;
        return Optional.of(new Flags(lines, dotAll));
      } else if (c == ')') {
        switched = new Flags(lines, dotAll);
        return Optional.empty();
      } else if (c == '-') {
        on = false;
      } else if (c == 'm') {
        lines = on;
      } else if (c == 's') {
        dotAll = on;
      } else if (c != 'i' && c != 'U') {
        break;
      }
      at++;
    }
    lost = true;
    return Optional.of(outside);
  }

  private PatternReachability repeated(PatternReachability part) {
    PatternReachability all = part;
    while (more()) {
      if (take("*")) {
        all = all.times(0, -1);
      } else if (take("+")) {
        all = all.times(1, -1);
      } else if (take("?")) {
        all = all.times(0, 1);
      } else if (peek() == '{') {
        int before = at++;
        OptionalInt least = whole();
        OptionalInt most = take(",") ? whole() : least;
        boolean counted = least.isPresent() && take("}");
        if (!counted) {
          at = before;
          return all;
        }
        all = all.times(least.getAsInt(), most.orElse(-1));
      } else {
        return all;
      }
    }
    return all;
  }

  private OptionalInt whole() {
    int begin = at;
    int value = 0;
    while (more() && text[at] >= '0' && text[at] <= '9' && at - begin < 5) {
      value = value * 10 + text[at++] - '0';
    }
    return at == begin ? OptionalInt.empty() : OptionalInt.of(value);
  }

  private PatternReachability sign(CodePointSet points) {
    return PatternReachability.sign(points.folded().kinds(canStand));
  }

  private PatternReachability one(Flags flags) {
    if (take("[")) {
      return inBrackets();
    }
    if (peek() == '\\') {
      return escaped();
    }
    int c = text[at++];
    return switch (c) {
      case '.' -> sign(flags.dotAll ? CodePointSet.ALL : CodePointSet.of('\n', '\n').not());
      case '^' ->
          PatternReachability.edge(
              flags.lines
                  ? PatternReachability.Edge.LINE_BEGINS
                  : PatternReachability.Edge.TEXT_BEGINS);
      case '$' ->
          PatternReachability.edge(
              flags.lines
                  ? PatternReachability.Edge.LINE_ENDS
                  : PatternReachability.Edge.TEXT_ENDS);
      default -> sign(CodePointSet.of(c, c));
    };
  }

  private PatternReachability escaped() {
    if (take("\\A")) {
      return PatternReachability.edge(PatternReachability.Edge.TEXT_BEGINS);
    } else if (take("\\z")) {
      return PatternReachability.edge(PatternReachability.Edge.TEXT_ENDS);
    } else if (take("\\b")) {
      return PatternReachability.edge(PatternReachability.Edge.WORD_EDGE);
    } else if (take("\\B")) {
      return PatternReachability.edge(PatternReachability.Edge.NO_WORD_EDGE);
    }
    return sign(escapedSigns(false));
  }

  /** Reads an escape that stands for signs; where it is not known, for all of them. */
  private CodePointSet escapedSigns(boolean negated) {
    at++;
    int c = more() ? text[at++] : -1;
    return switch (c) {
      case 'd' -> CodePointSet.DIGITS;
      case 'D' -> CodePointSet.DIGITS.not();
      case 's' -> CodePointSet.SPACES;
      case 'S' -> CodePointSet.SPACES.not();
      case 'w' -> CodePointSet.WORD;
      case 'W' -> CodePointSet.WORD.not();
      case 'p', 'P' -> letters(negated);
      case 'x' -> point(hexadecimal());
      case 'a' -> point(7);
      case 'f' -> point('\f');
      case 't' -> point('\t');
      case 'n' -> point('\n');
      case 'r' -> point('\r');
      case 'v' -> point(11);
      default -> {
        boolean known = c >= 0 && !Character.isLetterOrDigit(c);
        lost |= !known;
        yield known ? point(c) : CodePointSet.ALL;
      }
    };
  }

  private static CodePointSet point(int c) {
    return CodePointSet.of(c, c);
  }

  private CodePointSet letters(boolean negated) {
    if (take("{")) {
      while (more() && !take("}")) {
        at++;
      }
    } else {
      at++;
    }
    // In [^\p{Lu}] the others are wanted, and which those are is not known here either.
    lost |= negated;
    return CodePointSet.ALL;
  }

  private int hexadecimal() {
    boolean braced = take("{");
    int value = 0;
    for (int digits = 0; more() && (braced || digits < 2) && peek() != '}'; digits++) {
      value = value * 16 + Math.max(0, Character.digit(text[at++], 16));
      if (value > CodePointSet.LAST) {
        lost = true;
        return 0;
      }
    }
    lost |= braced && !take("}");
    return value;
  }

  private PatternReachability inBrackets() {
    boolean negated = take("^");
    CodePointSet all = CodePointSet.ALL.not();
    boolean first = true;
    while (more() && (first || peek() != ']')) {
      first = false;
      if (take("[:")) {
        while (more() && !take(":]")) {
          at++;
        }
        lost |= negated;
        all = CodePointSet.ALL;
      } else {
        all = all.and(range(negated));
      }
    }
    lost |= !take("]");
    CodePointSet folded = all.folded();
    return PatternReachability.sign((negated ? folded.not() : folded).kinds(canStand));
  }

  private CodePointSet range(boolean negated) {
    CodePointSet low = inClass(negated);
    boolean isRange = peek() == '-' && at + 1 < text.length && text[at + 1] != ']';
    OptionalInt from = low.single();
    if (!isRange || from.isEmpty()) {
      return low;
    }
    at++;
    OptionalInt to = inClass(negated).single();
    boolean good = to.isPresent() && to.getAsInt() >= from.getAsInt();
    lost |= !good;
    return good ? CodePointSet.of(from.getAsInt(), to.getAsInt()) : low;
  }

  private CodePointSet inClass(boolean negated) {
    return peek() == '\\' ? escapedSigns(negated) : point(text[at++]);
  }
}
