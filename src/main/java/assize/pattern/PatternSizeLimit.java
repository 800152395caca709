package assize.pattern;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Looks at a pattern before the library does: how much it comes to when what it repeats is written
 * out, as {@code (a{0,100}){0,100}} is short to write and ten thousand signs long; and whether it
 * has one of the letters at which the library never ends.
 */
final class PatternSizeLimit {
  /**
   * Nine old forms of Cyrillic letters: re2j 1.8 looks for other cases of each until it comes back
   * to it, and never does.
   */
  private static final int FIRST_ENDLESS = 0x1C80;

  private static final int LAST_ENDLESS = 0x1C88;

  /** Larger than any pattern may be; counting stops here. */
  static final long ENDLESS = 1_000_000_000;

  private static final Pattern CODE = Pattern.compile("x\\{([0-9A-Fa-f]{1,6})\\}");

  private final String text;
  private final Deque<Long> outer = new ArrayDeque<>();
  private int at;
  private long sum;
  private long last;
  private boolean endless;

  private PatternSizeLimit(String text) {
    this.text = text;
  }

  /** Counts signs, classes and groups, each as often as it is repeated; never too few. */
  static long of(String text) {
    PatternSizeLimit size = read(text);
    long all = size.sum;
    for (long one : size.outer) {
      all = Math.min(ENDLESS, all + one);
    }
    return all;
  }

  /** Says whether the library would never end with it. */
  static boolean isEndless(String text) {
    return read(text).endless;
  }

  private static PatternSizeLimit read(String text) {
    PatternSizeLimit size = new PatternSizeLimit(text);
    while (size.at < text.length()) {
      size.step();
    }
    return size;
  }

  private void step() {
    char c = text.charAt(at++);
    note(c, c);
    switch (c) {
      case '(' -> {
        outer.push(sum);
        sum = 1;
        last = 0;
      }
      case ')' -> {
        last = sum;
        sum = Math.min(ENDLESS, sum + (outer.isEmpty() ? 0 : outer.pop()));
      }
      case '{' -> repeated();
      case '[' -> {
        skipClass();
        one();
      }
      case '\\' -> escaped();
      default -> one();
    }
  }

  /** Between {@code \Q} and {@code \E} every sign stands for itself. */
  private void escaped() {
    if (!text.startsWith("Q", at)) {
      at--;
      int sign = sign();
      note(sign, sign);
      one();
      return;
    }
    at++;
    while (at < text.length() && !text.startsWith("\\E", at)) {
      note(text.charAt(at), text.charAt(at));
      at++;
      one();
    }
    at += 2;
  }

  private void note(int from, int to) {
    endless = endless || from <= LAST_ENDLESS && to >= FIRST_ENDLESS;
  }

  /** Goes behind a sign or an escape, and returns what it may stand for. */
  private int sign() {
    int c = next();
    if (c != '\\' || at >= text.length()) {
      return c;
    }
    Matcher code = CODE.matcher(text).region(at, text.length());
    if (code.lookingAt()) {
      at = code.end();
      return Integer.parseInt(code.group(1), 16);
    }
    return next();
  }

  private int next() {
    int c = text.codePointAt(at);
    at += Character.charCount(c);
    return c;
  }

  private void one() {
    last = 1;
    sum = Math.min(ENDLESS, sum + 1);
  }

  /** Reads {@code {n}}, {@code {n,}} or {@code {n,m}}; anything else is a sign. */
  private void repeated() {
    int end = text.indexOf('}', at);
    String counts = end < 0 ? "" : text.substring(at, end);
    if (!counts.matches("[0-9]{1,9}(?:,[0-9]{0,9})?")) {
      one();
      return;
    }
    long most = 1;
    for (String count : counts.split(",")) {
      most = Math.max(most, count.isEmpty() ? 1 : Long.parseLong(count));
    }
    long more = Math.min(ENDLESS, last * (most - 1));
    sum = Math.min(ENDLESS, sum + more);
    last = Math.min(ENDLESS, last + more);
    at = end + 1;
  }

  /** Goes behind a class; a bracket that it begins with is one of its signs. */
  private void skipClass() {
    if (text.startsWith("^", at)) {
      at++;
    }
    boolean first = true;
    while (at < text.length() && (first || text.charAt(at) != ']')) {
      first = false;
      int named = text.startsWith("[:", at) ? text.indexOf(":]", at + 2) : -1;
      if (named >= 0) {
        at = named + 2;
      } else {
        range();
      }
    }
    at++;
  }

  private void range() {
    int from = sign();
    boolean goesOn = at + 1 < text.length() && text.charAt(at) == '-' && text.charAt(at + 1) != ']';
    if (goesOn) {
      at++;
    }
    note(from, goesOn ? sign() : from);
  }
}
