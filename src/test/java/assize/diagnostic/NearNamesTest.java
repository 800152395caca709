package assize.diagnostic;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearNamesTest {
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
    assertThat(NearNames.distance(a, b)).isEqualTo(distance);
    assertThat(NearNames.distance(b, a)).isEqualTo(distance);
  }

  @Test
  void aNameIsNearOnlyIfItIsReallyNear() {
    List<String> finishes = List.of("nickel", "chrome", "bright-nickel");
    assertThat(NearNames.nearest("nickle", finishes)).contains("nickel");
    assertThat(NearNames.nearest("Bright_Nickel", finishes)).contains("bright-nickel");
    assertThat(NearNames.nearest("zinc", finishes)).isEmpty();
    assertThat(NearNames.nearest("X2", List.of("X1"))).isEmpty();
    assertThat(NearNames.nearest("x1", List.of("X1"))).contains("X1");
    assertThat(NearNames.nearest("", finishes)).isEmpty();
  }

  @Test
  void withoutANearNameTheValidOnesAreListed() {
    assertThat(NearNames.hint("zinc", List.of("nickel", "chrome")))
        .contains("known: nickel, chrome");
    assertThat(NearNames.hint("zinc", Collections.emptyList())).isEmpty();
    List<String> many = IntStream.range(0, 20).mapToObj(i -> "finish-number-" + i).toList();
    assertThat(NearNames.hint("zinc", many).orElseThrow()).endsWith("finish-number-7 and 12 more");
  }
}
