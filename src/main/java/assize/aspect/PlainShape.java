package assize.aspect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A pattern that is no more than signs in a row, each one or several of some letters and figures,
 * once or a few times over: {@code [AB]-412[0-9]{2,3}}. Told without the library of patterns, many
 * times as fast; what is any more than that is left to the library.
 */
final class PlainShape {
  /** How many signs are told apart; bit 63 is kept free. */
  private static final int MOST_SIGNS = 62;

  private static final int ASCII = 128;
  private static final String SPECIAL = ".^$*+?()[]{}|\\";

  /** What holding a text against a shape gives; a text that is not all ASCII is left open. */
  enum Answer {
    FITS,
    DOES_NOT,
    OPEN
  }

  /** One sign: which letters and figures, whether it may be missing, whether it may come again. */
  private record Sign(boolean[] among, boolean missing, boolean again) {}

  /** For each place the signs that may stand there, as bits: the first 64 of ASCII, the others. */
  private final long[] low;

  private final long[] high;

  /** For each sign the places at which it may stand, as bits; none where each follows the last. */
  private final long[] places;

  /** For each place, those that can follow it. */
  private final long[] after;

  private final long first;
  private final long last;

  /** Whether each place is followed by the next and no other. */
  private final boolean fixed;

  private PlainShape(List<Sign> signs) {
    int count = signs.size();
    this.fixed = signs.stream().noneMatch(sign -> sign.missing() || sign.again());
    this.low = new long[count];
    this.high = new long[count];
    this.places = new long[fixed ? 0 : ASCII];
    this.after = new long[count];
    long ends = reachesEnd(signs, 0) ? 1L << 63 : 0;
    for (int i = 0; i < count; i++) {
      for (int c = 0; c < ASCII; c++) {
        if (signs.get(i).among()[c]) {
          (c < Long.SIZE ? low : high)[i] |= 1L << c;
          if (!fixed) {
            places[c] |= 1L << i;
          }
        }
      }
      after[i] = reached(signs, i + 1) | (signs.get(i).again() ? 1L << i : 0);
      ends |= reachesEnd(signs, i + 1) ? 1L << i : 0;
    }
    this.first = reached(signs, 0);
    this.last = ends;
  }

  private static long reached(List<Sign> signs, int from) {
    long reached = 0;
    for (int i = from; i < signs.size(); i++) {
      reached |= 1L << i;
      if (!signs.get(i).missing()) {
        return reached;
      }
    }
    return reached;
  }

  private static boolean reachesEnd(List<Sign> signs, int from) {
    return signs.subList(from, signs.size()).stream().allMatch(Sign::missing);
  }

  /** Returns the shape of a number that fits itself alone, in capitals and without spaces. */
  static Optional<PlainShape> exactly(String folded) {
    List<Sign> signs = new ArrayList<>();
    for (int i = 0; i < folded.length(); i++) {
      if (folded.charAt(i) >= ASCII) {
        return Optional.empty();
      }
      boolean[] among = new boolean[ASCII];
      among[folded.charAt(i)] = true;
      signs.add(new Sign(among, false, false));
    }
    return signs.size() > MOST_SIGNS ? Optional.empty() : Optional.of(new PlainShape(signs));
  }

  /**
   * Returns the shape of a pattern, where it has one.
   *
   * @param pattern one that the library reads; dashes and spaces taken out
   */
  static Optional<PlainShape> of(String pattern) {
    return new Reading(pattern).shape();
  }

  /** Holds a stamped number against the shape; spaces, dashes and small letters do not count. */
  Answer fits(String stamped) {
    return fixed ? inARow(stamped) : throughout(stamped);
  }

  private Answer inARow(String stamped) {
    int count = low.length;
    int place = 0;
    boolean fits = true;
    for (int i = 0; i < stamped.length(); i++) {
      char c = stamped.charAt(i);
      if (c >= ASCII) {
        return Answer.OPEN;
      }
      if (counts(c)) {
        fits &= place < count && stands(capital(c), place);
        place++;
      }
    }
    return fits && place == count ? Answer.FITS : Answer.DOES_NOT;
  }

  private boolean stands(char c, int place) {
    return ((c < Long.SIZE ? low : high)[place] >>> c & 1) == 1;
  }

  private Answer throughout(String stamped) {
    long at = 1L << 63;
    long next = first;
    for (int i = 0; i < stamped.length(); i++) {
      char c = stamped.charAt(i);
      if (c >= ASCII) {
        return Answer.OPEN;
      }
      if (counts(c)) {
        at = next & places[capital(c)];
        next = 0;
        for (long left = at; left != 0; left &= left - 1) {
          next |= after[Long.numberOfTrailingZeros(left)];
        }
      }
    }
    return (at & last) != 0 ? Answer.FITS : Answer.DOES_NOT;
  }

  private static boolean counts(char c) {
    return c != '-' && c > ' ' || c < ' ' && !Character.isWhitespace(c);
  }

  private static char capital(char c) {
    return c >= 'a' && c <= 'z' ? (char) (c - 'a' + 'A') : c;
  }

  /** Reads a pattern for as long as it is plain. */
  private static final class Reading {
    private final String text;
    private final List<Sign> signs = new ArrayList<>();
    private int at;

    Reading(String text) {
      this.text = text;
    }

    Optional<PlainShape> shape() {
      while (at < text.length()) {
        Optional<boolean[]> among = among();
        if (among.isEmpty() || !repeated(among.get()) || signs.size() > MOST_SIGNS) {
          return Optional.empty();
        }
      }
      return Optional.of(new PlainShape(signs));
    }

    private Optional<boolean[]> among() {
      boolean[] among = new boolean[ASCII];
      char c = text.charAt(at++);
      if (c == '[') {
        return inBrackets(among) ? Optional.of(folded(among)) : Optional.empty();
      }
      if (c == '\\') {
        if (at == text.length() || text.charAt(at++) != 'd') {
          return Optional.empty();
        }
        add(among, '0', '9');
        return Optional.of(among);
      }
      if (c >= ASCII || SPECIAL.indexOf(c) >= 0) {
        return Optional.empty();
      }
      among[c] = true;
      return Optional.of(folded(among));
    }

    /** Reads letters, figures and ranges of them; anything else in brackets is not plain. */
    private boolean inBrackets(boolean[] among) {
      while (at < text.length() && text.charAt(at) != ']') {
        char from = text.charAt(at++);
        if (!plain(from)) {
          return false;
        }
        char to = from;
        if (at + 1 < text.length() && text.charAt(at) == '-') {
          to = text.charAt(at + 1);
          at += 2;
        }
        if (!plain(to) || to < from) {
          return false;
        }
        add(among, from, to);
      }
      return at++ < text.length() && at > 1 && text.charAt(at - 2) != '[';
    }

    private static boolean plain(char c) {
      return c >= '0' && c <= '9' || c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z';
    }

    private static void add(boolean[] among, char from, char to) {
      for (int c = from; c <= to; c++) {
        among[c] = true;
      }
    }

    /** Adds the capital of each small letter: what is compared is in capitals. */
    private static boolean[] folded(boolean[] among) {
      for (int c = 'a'; c <= 'z'; c++) {
        among[c - 'a' + 'A'] |= among[c];
      }
      return among;
    }

    private boolean repeated(boolean[] among) {
      int least = 1;
      int most = 1;
      if (at < text.length()) {
        switch (text.charAt(at)) {
          case '?' -> {
            at++;
            least = 0;
          }
          case '*', '+' -> {
            least = text.charAt(at++) == '*' ? 0 : 1;
            most = -1;
          }
          case '{' -> {
            at++;
            least = whole();
            most = least;
            if (at < text.length() && text.charAt(at) == ',') {
              at++;
              most = at < text.length() && text.charAt(at) == '}' ? -1 : whole();
            }
            if (least < 0 || most < -1 || at == text.length() || text.charAt(at++) != '}') {
              return false;
            }
          }
          default -> {}
        }
      }
      boolean twice = at < text.length() && "?*+{".indexOf(text.charAt(at)) >= 0;
      if (twice || most > MOST_SIGNS || least > MOST_SIGNS) {
        return false;
      }
      for (int i = 0; i < Math.max(most, least); i++) {
        signs.add(new Sign(among, i >= least, false));
      }
      if (most < 0) {
        signs.add(new Sign(among, true, true));
      }
      return true;
    }

    /** Reads a whole number; less than zero where there is none. */
    private int whole() {
      int from = at;
      while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
        at++;
      }
      return at == from || at - from > 4 ? -2 : Integer.parseInt(text.substring(from, at));
    }
  }
}
