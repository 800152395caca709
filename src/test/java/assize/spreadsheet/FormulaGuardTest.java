package assize.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** No text of a CSV file is taken for a formula, and none is lost by that. */
class FormulaGuardTest {
  private static final String LETTERS =
      "=+-@'\"',;\t\r\n aB1\uFF1D\u00E9\u00A0\u200B\uFEFF\u3164\uFF0B";

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "=1+1 | '=1+1",
        "-5 | '-5",
        "@a | '@a",
        "'=1 | ''=1",
        "'0123 | '0123",
        "A-1 | A-1",
        "a;=1 | a;'=1",
        "\"=1\" | \"'=1\"",
        "2.4 mm, -0.1 | 2.4 mm, -0.1",
        "~ =1+1~ | ~ '=1+1~",
        "\u00A0=1+1 | \u00A0'=1+1",
        "\u200B\u3000+1 | \u200B\u3000'+1",
        "\uFEFF@a | \uFEFF'@a",
        "\uDB40\uDC20=1 | \uDB40\uDC20'=1",
        "\u3164\uFF1D1 | \u3164'\uFF1D1",
        "\uFF0B1 | '\uFF0B1",
        "\uFF0D1 | '\uFF0D1",
        "\uFF20a | '\uFF20a",
        "a;\u00A0=1 | a;\u00A0'=1",
        "\u00A0'=1 | \u00A0''=1",
        "3\u00A0-\u00A05 | 3\u00A0-\u00A05"
      })
  void putsAnApostropheBeforeWhatBeginsAFormula(String text, String written) {
    assertThat(FormulaGuard.on(text)).isEqualTo(written);
    assertThat(FormulaGuard.off(written)).isEqualTo(text);
  }

  static IntStream seeds() {
    return IntStream.range(0, 50);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void isTakenAwayAgain(int seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 200; i++) {
      String text = text(random);
      String written = FormulaGuard.on(text);
      assertThat(FormulaGuard.off(written)).as(text).isEqualTo(text);
      assertThat(written).as(text).doesNotMatch("(?s)[=+@\\uFF1D\\t\\r\\n-].*");
      assertThat(written).as(text).doesNotContainPattern("[,;\\t\\r\\n][=+@\\uFF1D-]");
      assertThat(written)
          .as(text)
          .doesNotMatch("(?s)[ \\u00A0\\u200B\\uFEFF\\u3164]*[=+@\\uFF1D\\uFF0B-].*")
          .doesNotContainPattern(
              "[,;\\t\\r\\n][\\u00A0\\u200B\\uFEFF\\u3164]+[=+@\\uFF1D\\uFF0B-]");
    }
  }

  /** A leading tab is guarded itself, and so is what begins behind it. */
  @Test
  void guardsBehindATab() {
    assertThat(FormulaGuard.on("\t\u00A0=1")).isEqualTo("'\t\u00A0'=1");
    assertThat(FormulaGuard.off("'\t\u00A0'=1")).isEqualTo("\t\u00A0=1");
  }

  @Test
  void aTextWrittenByHandStandsAsItIs() {
    assertThat(FormulaGuard.off("=1+1")).isEqualTo("=1+1");
  }

  private static String text(Random random) {
    StringBuilder text = new StringBuilder();
    int length = random.nextInt(8);
    for (int i = 0; i < length; i++) {
      text.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
    }
    return text.toString();
  }
}
