package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import tools.jackson.databind.JsonNode;

class ColorCommandTest {
  /** G. Sharma, W. Wu, E. N. Dalal, Color Research and Application 30 (2005), Table 1. */
  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/measure/ciede2000.csv",
      useHeadersInDisplayName = true,
      maxCharsPerColumn = 100)
  void findsThePublishedDifferences(
      String pair, String l1, String a1, String b1, String l2, String a2, String b2, double de00) {
    String one = String.join(",", l1, a1, b1);
    String other = String.join(",", l2, a2, b2);
    CommandResult ran = CommandResult.of("color", one, other, "--json");
    assertThat(ran.exit()).as("pair " + pair).isZero();
    JsonNode said = ran.json();
    assertThat(said.propertyNames()).containsExactly("delta_e00", "delta_l", "delta_c", "delta_h");
    assertThat(said.get("delta_e00").doubleValue()).isCloseTo(de00, within(0.00005001));
    assertThat(said.get("delta_l").doubleValue())
        .isCloseTo(Double.parseDouble(l2) - Double.parseDouble(l1), within(0.00005));
  }

  @Test
  void printsThePartsForAPerson() {
    CommandResult ran = CommandResult.of("color", "50,2.6772,-79.7751", "50,0,-82.7485");
    assertThat(ran.exit()).isZero();
    assertThat(ran.out()).contains("ΔE00").contains("2.0425").hasLineCount(4);
    assertThat(ran.err()).isEmpty();
  }

  @Test
  void namesTheColorThatIsWrong() {
    CommandResult ran = CommandResult.of("color", "1,2,3", "101,2,3");
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).isEqualTo("101,2,3: L goes from 0 to 100\n");
  }

  @Test
  void takesALightnessBelowNothingForAColorAndNotForAnOption() {
    CommandResult ran = CommandResult.of("color", "-1,2,3", "1,2,3", "--json");
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.json().get("error").stringValue()).isEqualTo("-1,2,3: L goes from 0 to 100");
  }
}
