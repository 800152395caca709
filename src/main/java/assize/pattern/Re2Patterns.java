package assize.pattern;

import assize.text.Parsed;
import com.google.re2j.Pattern;
import com.google.re2j.PatternSyntaxException;

/** Patterns that people write: RE2 syntax, linear time. */
final class Re2Patterns {
  /** The longest pattern that is read, in characters. */
  static final int LONGEST = 1000;

  /** The most signs that a pattern may come to, with all that it repeats written out. */
  static final int LARGEST = 2000;

  /** What the library puts before a pattern that disregards capitals. */
  private static final String FOLDING = "(?i)";

  private static final Pattern LOOK_AROUND = Pattern.compile("\\(\\?<?[=!]");

  private Re2Patterns() {}

  static Parsed<Pattern> compile(String text) {
    if (text.length() > LONGEST) {
      return Parsed.bad("a pattern may have at most " + LONGEST + " characters", 0, text.length());
    }
    if (PatternSizeLimit.of(text) > LARGEST) {
      return Parsed.bad(
          "written out, what this pattern repeats comes to more than " + LARGEST + " signs",
          0,
          text.length());
    }
    if (PatternSizeLimit.isEndless(text)) {
      return Parsed.bad(
          "the letters U+1C80 to U+1C88 can't stand in a pattern, nor in a range of letters",
          0,
          text.length());
    }
    try {
      return Parsed.ok(Pattern.compile(text, Pattern.CASE_INSENSITIVE));
    } catch (PatternSyntaxException e) {
      return Parsed.bad(reason(e.getDescription(), e.getPattern()), 0, text.length());
    }
  }

  private static String reason(String description, String part) {
    if (description.contains("invalid or unsupported Perl syntax")
        || LOOK_AROUND.matcher(part).lookingAt()) {
      return "look-ahead, look-behind and back references are not part of these patterns (RE2): "
          + part;
    }
    if (description.contains("invalid escape sequence") && part.matches("\\\\[0-9]")) {
      return "back references are not part of these patterns (RE2): " + part;
    }
    String shown = part.startsWith(FOLDING) ? part.substring(FOLDING.length()) : part;
    return "not a pattern: " + description + (shown.isEmpty() ? "" : ": " + shown);
  }
}
