package assize.diagnostic;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NameSuggestionsTest {
  /** The first four pairs are textbook examples of edit distance, from memory. */
  @ParameterizedTest
  @CsvSource({
    "kitten, sitting, 3",
    "saturday, sunday, 3",
    "flaw, lawn, 2",
    "ca, abc, 3",
    "nickle, nickel, 1",
    "'', abc, 3",
    "abc, abc, 0"
  })
  void countsLettersToChange(String a, String b, int distance) {
    assertThat(NameSuggestions.distance(a, b)).isEqualTo(distance);
    assertThat(NameSuggestions.distance(b, a)).isEqualTo(distance);
  }

  @Test
  void aNameIsNearOnlyIfItIsReallyNear() {
    List<String> finishes = List.of("nickel", "chrome", "bright-nickel");
    assertThat(NameSuggestions.nearest("nickle", finishes)).contains("nickel");
    assertThat(NameSuggestions.nearest("Bright_Nickel", finishes)).contains("bright-nickel");
    assertThat(NameSuggestions.nearest("zinc", finishes)).isEmpty();
    assertThat(NameSuggestions.nearest("X2", List.of("X1"))).isEmpty();
    assertThat(NameSuggestions.nearest("x1", List.of("X1"))).contains("X1");
    assertThat(NameSuggestions.nearest("", finishes)).isEmpty();
  }

  /** What can't be seen does not hide a near name, and is said where two would look the same. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "nickle | nickel | did you mean 'nickel'?",
        "nickel\u3164 | nickel | did you mean 'nickel' without U+3164?",
        "\u200Bn\u00ADi\u2060c\u2800kel\uFE0F | nickel | did you mean 'nickel' without U+200B?",
        "as\u00A0new | as new | did you mean 'as new' without U+00A0?",
        "ni\u0441kel | nickel | did you mean 'nickel' without U+0441?",
        "nickel | ni\u0441kel | did you mean 'ni\u0441kel' with U+0441?",
        "be\u2010d | be\u2011d | did you mean 'be\u2011d' with U+2011 and without U+2010?",
        "gro\u00DFe | grosse | did you mean 'grosse'?"
      })
  void saysByWhatANearNameDiffers(String wrong, String right, String question) {
    assertThat(NameSuggestions.hint(wrong, List.of(right, "another-one")))
        .contains(question.replace('\'', '"'));
  }

  @Test
  void whatShowsNothingIsNearNothing() {
    assertThat(NameSuggestions.nearest("\u3164\u200B", List.of("X1", "nickel"))).isEmpty();
  }

  @Test
  void withoutANearNameTheValidOnesAreListed() {
    assertThat(NameSuggestions.hint("zinc", List.of("nickel", "chrome")))
        .contains("known: nickel, chrome");
    assertThat(NameSuggestions.hint("zinc", Collections.emptyList())).isEmpty();
    List<String> many = IntStream.range(0, 20).mapToObj(i -> "finish-number-" + i).toList();
    assertThat(NameSuggestions.hint("zinc", many).orElseThrow())
        .endsWith("finish-number-7 and 12 more");
  }
}
