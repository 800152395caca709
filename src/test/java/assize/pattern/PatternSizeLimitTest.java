package assize.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import assize.text.Parsed;
import com.google.re2j.Pattern;
import com.google.re2j.PatternSyntaxException;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PatternSizeLimitTest {
  private static final String[] PIECES = {
    "a",
    "(",
    ")",
    "(?:",
    "(?P<year>",
    "|",
    "[",
    "]",
    "^",
    "[^]",
    "[[:alpha:]]",
    "[:",
    ":]",
    "\\",
    "\\d",
    "\\Q",
    "\\E",
    "{2}",
    "{0,3}",
    "{2,}",
    "{",
    "}",
    "*",
    "?",
    "+",
    ".",
    "{,4}",
    "\\pL",
    "\\]",
    "-",
    "\\x{1C80}",
    "\\x{2000}",
    "\u1c85",
    "\u2013",
    "\\x41",
    "\\07",
    "\ud83d\ude9a"
  };

  /** What the library makes of one sign: a step for it, and some around it. */
  private static final int STEPS = 4;

  /** Each of these would take more memory than a program is given. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "((a{0,100}){0,100}){0,100}",
        "(((a{0,1000}){0,1000}){0,1000})",
        "(?:(?:(?:x{50}){50}){50}){50}",
        "((){1000}){1000}",
        "(?:(?:|){1000}){1000}",
        "([]({5]{900}){900}",
        "([[:alpha:]]{900}){900}",
        "(?P<year>((?:[0-9]{99}){99}){99})",
        "(\\({900}){900}",
        "\\Q[\\E(a{900}){900}"
      })
  void whatRepeatsRepetitionsIsRefusedUnread(String pattern) {
    assertThat(PatternSizeLimit.of(pattern)).isGreaterThan(Re2Patterns.LARGEST);
    String said = NumberPattern.compile(pattern).match(it -> "read", Parsed.Bad::reason);
    assertThat(said).contains("2000 signs");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"A-412[0-9]{2}", "[A-Z]{1,3}-?[0-9]{4,8}(?:-[A-Z]{2}){0,5}", "(a{10}){100}"})
  void whatAPartCarriesIsRead(String pattern) {
    assertThat(NumberPattern.compile(pattern).toOptional()).isPresent();
  }

  @Test
  void theLimitIsTheLastThatIsRead() {
    assertThat(NumberPattern.compile("a{1000}b{1000}").toOptional()).isPresent();
    assertThat(NumberPattern.compile("a{1000}b{1000}c").toOptional()).isEmpty();
  }

  /** The library, re2j 1.8, would look for their other cases without end. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "\u1c80",
        "a|\u1c88",
        "[\u1c82]",
        "[0-\uffff]",
        "[^0-\uffff]",
        "\\x{1C85}",
        "[a\\-\\x{2000}]|[\\x{1000}-\\x{2000}]",
        "[a[:alpha:]\\x{1000}-\u2000]",
        "\\Q\u1c83",
        "[]a-\ud83d\ude9a]",
        "\\\u1c85"
      })
  void lettersAtWhichTheLibraryNeverEndsAreRefused(String pattern) {
    String said = NumberPattern.compile(pattern).match(it -> "read", Parsed.Bad::reason);
    assertThat(said).contains("U+1C80");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"[-\u2013/]4", "\u2116 [0-9]+", "[\u0430-\u044f]{2}", "\\x{2013}[^a-z]", "\\pL"})
  void lettersBeyondAreRead(String pattern) {
    assertThat(NumberPattern.compile(pattern).toOptional()).isPresent();
  }

  /** Against what the library, re2j, makes of the same pattern. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void isNeverTooSmall(long seed) {
    Random random = new Random(seed);
    int read = 0;
    for (int i = 0; i < 30_000; i++) {
      StringBuilder pattern = new StringBuilder();
      for (int j = 1 + random.nextInt(12); j > 0; j--) {
        pattern.append(PIECES[random.nextInt(PIECES.length)]);
      }
      String text = pattern.toString();
      if (PatternSizeLimit.isEndless(text)) {
        continue;
      }
      Optional<Pattern> compiled = compiled(text);
      if (compiled.isPresent()) {
        read++;
        assertThat((long) compiled.get().programSize())
            .as(text)
            .isLessThanOrEqualTo(STEPS * (PatternSizeLimit.of(text) + 1));
      }
    }
    assertThat(read).isGreaterThan(3000);
  }

  private static Optional<Pattern> compiled(String text) {
    try {
      return Optional.of(Pattern.compile(text, Pattern.CASE_INSENSITIVE));
    } catch (PatternSyntaxException e) {
      return Optional.empty();
    }
  }
}
