package assize.pattern;

import static org.assertj.core.api.Assertions.assertThat;

import assize.date.DateCodeTables;
import assize.date.DateRange;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PossibleDateCodesTest {
  private static final DateRange THIRTIES =
      DateRange.of(LocalDate.of(1931, 9, 1), LocalDate.of(1936, 8, 31));
  private static final DateCodeTables LETTERS =
      new DateCodeTables(Map.of("D", 1934, "K", 1940), Map.of("A", 1, "B", 2), false);

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "(?P<year>3[2-6]); true",
        "(?P<year>4[0-9]); false",
        "(?P<year>[0-9]); true",
        "(?P<year>[7-9]); false",
        "(?P<year>19[0-9]{2}); true",
        "(?P<year>18[0-9]{2}); false",
        "(?P<year>193); false",
        "(?P<year>D); true",
        "(?P<year>K); false",
        "(?P<year>[XYZ]); false",
        "(?P<month>[A-L])(?P<year>[0-9]); true",
        "(?P<month>[C-L])(?P<year>[0-9]); false",
        "(?P<month>1[3-9])(?P<year>34); false",
        "(?P<month>1[0-9])(?P<year>31); true",
        "(?P<month>0[1-8])(?P<year>31); false",
        "(?P<week>5[4-9])(?P<year>34); false",
        "(?P<day>4[0-9]{2})(?P<year>34); false",
        "(?P<week>[0-9]{2})(?P<year>34); true",
        "(?P<month>C)?(?P<year>34); true",
        "X(?P<year>4[0-9])|Y(?P<month>A); true"
      })
  void meansADayOfThese(String pattern, boolean can) {
    assertThat(new PossibleDateCodes(pattern, LETTERS).canMean(THIRTIES)).isEqualTo(can);
  }
}
