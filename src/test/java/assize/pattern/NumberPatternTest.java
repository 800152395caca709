package assize.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import assize.text.Parsed;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumberPatternTest {
  private static NumberPattern pattern(String text) {
    return NumberPattern.compile(text).toOptional().orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "A-41207, a 41207, true",
    "A-41207, A41207, true",
    "A-41207, A–41207, true",
    "A-41207, A-41270, false",
    "0510210600, 510210600, false",
    "7E4, 70000, false"
  })
  void comparesNumbersWithoutSpacesDashesAndCapitals(String right, String stamped, boolean fits) {
    assertThat(NumberPattern.exactly(right).fits(stamped)).isEqualTo(fits);
  }

  @ParameterizedTest
  @CsvSource({
    "'[AB]-412[0-9]{2}', b-412 07, true",
    "'[AB]-412[0-9]{2}', C-41207, false",
    "'L\\-[0-9]+', L 5, true",
    "'[A-F]{2}[0-9]', ce-7, true",
    "'[A-F]{2}[0-9]', cg-7, false"
  })
  void dashesOfAPatternCountOnlyWithinClasses(String right, String stamped, boolean fits) {
    assertThat(pattern(right).fits(stamped)).isEqualTo(fits);
  }

  @ParameterizedTest
  @CsvSource({
    "4120, 4210, 4210 for 4120: two digits changed places",
    "A4120, A4129, A4129 for A4120: 9 stands where 0 is expected",
    "A4120, A412, one sign is missing: A412 is one short",
    "A4120, A44120, A44120 for A4120: one 4 too many"
  })
  void saysWhatANearMissDiffersIn(String right, String stamped, String words) {
    assertThat(NumberPattern.exactly(right).nearMiss(stamped)).contains(words);
  }

  @Test
  void saysNothingOfWhatIsFarOffOrFits() {
    assertThat(NumberPattern.exactly("A4120").nearMiss("B9999")).isEmpty();
    assertThat(NumberPattern.exactly("A4120").nearMiss("a-4120")).isEmpty();
    assertThat(NumberPattern.exactly("A4120").nearMiss("")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"(?=A)B", "(A)\\1", "[A", "(", "*"})
  void refusesWhatIsNoPattern(String text) {
    assertThat(NumberPattern.compile(text)).isInstanceOf(Parsed.Bad.class);
  }

  @Test
  void anEvilPatternTakesLinearTime() {
    // catastrophic for a backtracking matcher; from memory
    assertThat(pattern("(A+)+B").fits("A".repeat(50_000))).isFalse();
  }

  /** A no-break space comes along when a number is copied from a page. */
  @Test
  void spacesOfEveryKindDoNotCount() {
    for (String space : List.of(" ", "\t", "\u00a0", "\u2009", "\u202f")) {
      assertThat(NumberPattern.exactly("A-4210").fits("a" + space + "42" + space + "10")).isTrue();
    }
  }
}
