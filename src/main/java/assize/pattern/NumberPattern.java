package assize.pattern;

import assize.text.Parsed;
import com.google.re2j.Pattern;
import java.util.Locale;
import java.util.Optional;

/**
 * A part number, or a pattern (RE2 syntax) that part numbers fit.
 *
 * <p>Spaces, dashes and the difference of capitals and small letters do not count.
 */
public final class NumberPattern {
  private final String text;
  private final Optional<Pattern> pattern;
  private final String folded;

  private NumberPattern(String text, Optional<Pattern> pattern, String folded) {
    this.text = text;
    this.pattern = pattern;
    this.folded = folded;
  }

  /** Returns the number that fits itself alone. */
  public static NumberPattern exactly(String number) {
    return new NumberPattern(number, Optional.empty(), fold(number));
  }

  /** Reads a pattern in RE2 syntax; look-around and back references are refused. */
  public static Parsed<NumberPattern> compile(String text) {
    return Re2Patterns.compile(withoutDashes(text))
        .map(pattern -> new NumberPattern(text, Optional.of(pattern), ""));
  }

  /** Returns the number or pattern as it was written. */
  public String text() {
    return text;
  }

  /** Says whether this is one number and not a pattern. */
  public boolean isLiteral() {
    return pattern.isEmpty();
  }

  /** Says whether this is one number, and no pattern that several fit. */
  public boolean isPlain() {
    return isLiteral() || text.matches("[A-Za-z0-9 -]+");
  }

  /** Says whether a stamped number fits. */
  public boolean fits(String stamped) {
    return fitsFolded(fold(stamped));
  }

  /** Says whether there is no number that fits. */
  public boolean fitsNothing() {
    return pattern.isPresent()
        && PatternEmptiness.of(withoutDashes(text), c -> !isSpace(c) && !isDash(c));
  }

  /** Says by what single slip a number that does not fit fails to, where there is one. */
  public Optional<String> nearMiss(String stamped) {
    String number = fold(stamped);
    return fitsFolded(number) ? Optional.empty() : PartNumberTypo.explain(number, this::fitsFolded);
  }

  private boolean fitsFolded(String number) {
    return pattern.map(it -> it.matches(number)).orElseGet(() -> folded.equals(number));
  }

  /** Returns a number in capitals, without spaces and dashes. */
  public static String fold(String number) {
    StringBuilder kept = new StringBuilder(number.length());
    number
        .toUpperCase(Locale.ROOT)
        .codePoints()
        .filter(c -> !isSpace(c) && !isDash(c))
        .forEach(kept::appendCodePoint);
    return kept.toString();
  }

  private static boolean isSpace(int c) {
    return Character.isWhitespace(c) || Character.isSpaceChar(c);
  }

  private static boolean isDash(int c) {
    return Character.getType(c) == Character.DASH_PUNCTUATION || c == 0x2212;
  }

  /** Drops dashes and spaces outside of classes, since they are dropped from what is compared. */
  private static String withoutDashes(String text) {
    StringBuilder kept = new StringBuilder(text.length());
    boolean inClass = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '\\' && i + 1 < text.length()) {
        char next = text.charAt(++i);
        if (next != '-' && next != ' ' || inClass) {
          kept.append(c).append(next);
        }
        continue;
      }
      int whole = inClass ? named(text, i) : first(text, i);
      if (whole > i) {
        inClass = true;
        kept.append(text, i, whole);
        i = whole - 1;
        continue;
      }
      if (c == ']') {
        inClass = false;
      }
      if (inClass || c != '-' && c != ' ') {
        kept.append(c);
      }
    }
    return kept.toString();
  }

  /** Returns where the beginning of a class ends; a bracket behind it is one of its signs. */
  private static int first(String text, int at) {
    if (text.charAt(at) != '[') {
      return at;
    }
    int inside = text.startsWith("^", at + 1) ? at + 2 : at + 1;
    return text.startsWith("]", inside) ? inside + 1 : inside;
  }

  /** Returns where a kind of letters within a class ends, as in {@code [:digit:]}. */
  private static int named(String text, int at) {
    return text.startsWith("[:", at) ? text.indexOf(":]", at + 2) + 2 : at;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof NumberPattern that
        && text.equals(that.text)
        && isLiteral() == that.isLiteral();
  }

  @Override
  public int hashCode() {
    return text.hashCode();
  }

  @Override
  public String toString() {
    return text;
  }
}
