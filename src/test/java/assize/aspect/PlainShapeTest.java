package assize.aspect;

import static org.assertj.core.api.Assertions.assertThat;

import assize.aspect.PlainShape.Answer;
import com.google.re2j.Pattern;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Holds plain shapes to the library of patterns, re2j. */
class PlainShapeTest {
  private static final List<String> SIGNS =
      List.of("A", "b", "7", "[AB]", "[0-9]", "[a-f]", "[A-Z0-9]", "\\d", "/", "_", "k");
  private static final List<String> TIMES =
      List.of("", "", "", "", "?", "*", "+", "{2}", "{0}", "{1,3}", "{0,2}", "{2,}");
  private static final String TEXT = "AABbk7/_09Ff- \t~";

  static IntStream seeds() {
    return IntStream.range(0, 400);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void fitsWhatThePatternFits(int seed) {
    Random random = new Random(seed);
    StringBuilder pattern = new StringBuilder();
    for (int i = random.nextInt(7); i >= 0; i--) {
      pattern.append(pick(random, SIGNS)).append(pick(random, TIMES));
    }
    PlainShape shape = PlainShape.of(pattern.toString()).orElseThrow();
    Pattern library = Pattern.compile(pattern.toString(), Pattern.CASE_INSENSITIVE);
    for (int i = 0; i < 300; i++) {
      StringBuilder text = new StringBuilder();
      for (int c = random.nextInt(10); c > 0; c--) {
        text.append(TEXT.charAt(random.nextInt(TEXT.length())));
      }
      boolean fits = library.matches(NumberPattern.fold(text.toString()));
      assertThat(shape.fits(text.toString()))
          .as("%s against %s", text, pattern)
          .isEqualTo(fits ? Answer.FITS : Answer.DOES_NOT);
    }
  }

  private static String pick(Random random, List<String> from) {
    return from.get(random.nextInt(from.size()));
  }

  /** A text made after the pattern fits; most of those above do not. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "[AB]412[0-9]{2} | b-412 07 | FITS",
        "[AB]412[0-9]{2} | B-412 7 | DOES_NOT",
        "[AB]412[0-9]{2} | C-412 07 | DOES_NOT",
        "[AB]412[0-9]{2,4} | a-412-0 7 1 | FITS",
        "L\\d+K? | l 1 1 1 k | FITS",
        "L\\d+K? | L K | DOES_NOT",
        "7* | '' | FITS",
        "[AB]412 | \u0430-412 | OPEN",
        "K | \u212a | OPEN"
      })
  void fits(String pattern, String text, Answer answer) {
    assertThat(PlainShape.of(pattern).orElseThrow().fits(text)).isEqualTo(answer);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "A|B",
        "(A)",
        "^A",
        "A$",
        "A.",
        "\\w",
        "[^A]",
        "[]A]",
        "[A-]",
        "[[:alpha:]]",
        "[A\\d]",
        "A??",
        "A{2}{3}",
        "A{,2}",
        "A{",
        "A{x}",
        "A{2",
        "A{99}",
        "\\pL",
        "\\QA\\E",
        "é",
        "[é]",
        "A{20}{3}"
      })
  void whatIsMoreIsLeftToTheLibrary(String pattern) {
    assertThat(PlainShape.of(pattern)).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"A-41207", "a 41 207", "", "ſ", "\u212a41", "4120７"})
  void oneNumberFitsAsItsLettersDo(String number) {
    Optional<PlainShape> shape = PlainShape.exactly(NumberPattern.fold(number));
    for (String text : List.of("A-41207", "A41207", "a 4120 7", "A-41208", "", "-", "S", "K41")) {
      boolean same = NumberPattern.fold(text).equals(NumberPattern.fold(number));
      shape.ifPresent(
          it -> assertThat(it.fits(text)).isEqualTo(same ? Answer.FITS : Answer.DOES_NOT));
      assertThat(NumberPattern.exactly(number).fits(text)).as(text).isEqualTo(same);
    }
  }
}
