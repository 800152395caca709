package assize.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.re2j.Pattern;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whether any text fits is asked of re2j too, by trying every short text. */
class PatternEmptinessTest {
  private static final String SIGNS = "a-\nB";
  private static final int LONGEST = 5;
  private static final List<String> PIECES =
      List.of(
          "a",
          "b",
          "[^a]",
          "[-]",
          "\\n",
          ".",
          "^",
          "$",
          "\\A",
          "\\z",
          "\\b",
          "\\B",
          "(?m:^)",
          "(?m:$)",
          "(?s:.)",
          "\\w",
          "\\W",
          "[^\\w\\n]",
          "\\d");

  private static final List<String> TEXTS = texts();

  private static List<String> texts() {
    List<String> all = new ArrayList<>(List.of(""));
    int from = 0;
    for (int length = 1; length <= LONGEST; length++) {
      int to = all.size();
      for (int i = from; i < to; i++) {
        for (char sign : SIGNS.toCharArray()) {
          all.add(all.get(i) + sign);
        }
      }
      from = to;
    }
    return all;
  }

  @Test
  void agreesWithTryingEveryShortText() {
    Random random = new Random(7);
    int empty = 0;
    for (int i = 0; i < 3000; i++) {
      String text = pattern(random, 4);
      Pattern pattern = Pattern.compile(text, Pattern.CASE_INSENSITIVE);
      boolean fits = TEXTS.stream().anyMatch(pattern::matches);
      assertThat(PatternEmptiness.of(text, c -> SIGNS.indexOf(c) >= 0)).as(text).isEqualTo(!fits);
      empty += fits ? 0 : 1;
    }
    assertThat(empty).as("patterns of either kind").isBetween(300, 2700);
  }

  /** Returns a pattern of at most so many pieces, each of which takes at most one sign. */
  private static String pattern(Random random, int pieces) {
    if (pieces <= 1) {
      return PIECES.get(random.nextInt(PIECES.size()));
    }
    int before = 1 + random.nextInt(pieces - 1);
    String one = pattern(random, before);
    String other = pattern(random, pieces - before);
    return switch (random.nextInt(6)) {
      case 0 -> "(?:" + one + "|" + other + ")";
      case 1 -> "(" + one + ")?" + other;
      case 2 -> "(?:" + one + ")*" + other;
      default -> one + other;
    };
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a$b",
        "a^b",
        "[^\\x00-\\x{10FFFF}]",
        "$a",
        "\\za",
        "a\\Ab",
        "x(?:a$)+b",
        "\\b-\\b$^a",
        "(?:a^){2,9}",
        "a\\Bb\\b-\\b-",
        "[^\\s\\S]",
        "(?i:a)(?-m:^)b"
      })
  void fitsNothing(String pattern) {
    Pattern compiled = Pattern.compile(pattern, Pattern.CASE_INSENSITIVE);
    assertThat(TEXTS.stream().noneMatch(compiled::matches)).isTrue();
    assertThat(PatternEmptiness.of(pattern, c -> true)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "a",
        "^a$",
        "a|b$c",
        "(a$b)?",
        "[AB]-412[0-9]{2}",
        "(?P<year>3[2-6])(?P<week>[0-9]{2})",
        "\\pL",
        "[^\\p{Greek}]",
        "[[:alpha:]]",
        "[^[:digit:]]x",
        "[]a]",
        "[^]a]",
        "[a-]",
        "a{3",
        "a{,2}",
        "x*",
        "x{0}",
        "\\Qa$b\\E",
        "\\x41\\x{42}",
        "(?i)(?s).",
        "(?U)a+?",
        "\\101",
        "\\a\\t"
      })
  void isNotCalledEmpty(String pattern) {
    Pattern.compile(pattern, Pattern.CASE_INSENSITIVE);
    assertThat(PatternEmptiness.of(pattern, c -> true)).isFalse();
  }

  @Test
  void spacesAndDashesAreNoPartOfANumber() {
    assertThat(number("A[- ]412").fitsNothing()).isTrue();
    assertThat(number("A\\s412").fitsNothing()).isTrue();
    assertThat(number("A[-/]412").fitsNothing()).isFalse();
    assertThat(number("A - 412").fitsNothing()).isFalse();
    assertThat(number("a412").fitsNothing()).isFalse();
    assertThat(NumberPattern.exactly("A-412").fitsNothing()).isFalse();
  }

  private static NumberPattern number(String text) {
    return NumberPattern.compile(text).toOptional().orElseThrow();
  }

  @Test
  void aThousandBracketsTakeNoTime() {
    String deep = "(?:".repeat(200) + "a" + "{3})".repeat(200);
    assertThat(PatternEmptiness.of(deep, c -> true)).isFalse();
  }
}
