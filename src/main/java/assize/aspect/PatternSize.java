package assize.aspect;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * How much a pattern comes to when what it repeats is written out, as the library does: {@code
 * (a{0,100}){0,100}} is short to write and ten thousand signs long.
 */
final class PatternSize {
  /** Larger than any pattern may be; counting stops here. */
  static final long ENDLESS = 1_000_000_000;

  private final String text;
  private final Deque<Long> outer = new ArrayDeque<>();
  private int at;
  private long sum;
  private long last;

  private PatternSize(String text) {
    this.text = text;
  }

  /** Counts signs, classes and groups, each as often as it is repeated; never too few. */
  static long of(String text) {
    PatternSize size = new PatternSize(text);
    while (size.at < text.length()) {
      size.step();
    }
    long all = size.sum;
    for (long one : size.outer) {
      all = Math.min(ENDLESS, all + one);
    }
    return all;
  }

  private void step() {
    char c = text.charAt(at++);
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
      at++;
      one();
      return;
    }
    at++;
    while (at < text.length() && !text.startsWith("\\E", at)) {
      at++;
      one();
    }
    at += 2;
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
      at = named >= 0 ? named + 2 : at + (text.charAt(at) == '\\' ? 2 : 1);
    }
    at++;
  }
}
