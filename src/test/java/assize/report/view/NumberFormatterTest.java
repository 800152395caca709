package assize.report.view;

import static org.assertj.core.api.Assertions.assertThat;

import assize.judgment.ScoreRange;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumberFormatterTest {
  @ParameterizedTest
  @CsvSource({"431250, 431.25", "455000, 455", "0, 0", "1, 0.001", "100, 0.1", "1000000, 1000"})
  void pointsAreExactWithoutTrailingZeros(long thousandths, String words) {
    assertThat(NumberFormatter.points(thousandths)).isEqualTo(words);
  }

  @ParameterizedTest
  @CsvSource({
    "1, 2, 0.5",
    "1, 3, 1/3",
    "2, 3, 2/3",
    "1, 16, 0.0625",
    "1, 1, 1",
    "0, 1, 0",
    "123457, 1000003, ≈ 0.1235"
  })
  void creditsAreDecimalsElseFractions(int over, int under, String words) {
    assertThat(NumberFormatter.number(BigFraction.of(over, under))).isEqualTo(words);
  }

  @Test
  void rangesAreOneNumberWhereNothingIsOpen() {
    assertThat(NumberFormatter.range(new ScoreRange(2000, 2000, 2000))).isEqualTo("2");
    assertThat(NumberFormatter.range(new ScoreRange(0, 1500, 2000))).isEqualTo("0 to 2");
  }

  @Test
  void massesHaveThreePlaces() {
    assertThat(NumberFormatter.mass(0.45 / 0.55)).isEqualTo("0.818");
    assertThat(NumberFormatter.mass(1)).isEqualTo("1.000");
  }
}
