package assize.date;

import static org.assertj.core.api.Assertions.assertThat;

import assize.text.Parsed;
import java.time.LocalDate;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Dates of the specification and of other programs; the README beside the values names them. */
class EdtfSpecificationTest {

  @ParameterizedTest
  @CsvFileSource(
      resources = "edtf_spec_examples.csv",
      numLinesToSkip = 1,
      ignoreLeadingAndTrailingWhitespace = false)
  void readsEachExampleOfTheSpecification(String text) {
    assertThat(Edtf.parse(text)).isInstanceOf(Parsed.Ok.class);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "edtf_subyear_codes.csv", numLinesToSkip = 1)
  void readsEachPartOfTheYear(int code, int level, String meaning) {
    DateRange span = Dates.read("1934-" + code).stated();
    long months = span.first().until(span.last().plusDays(1)).toTotalMonths();
    String words = meaning.toLowerCase(Locale.ROOT);
    long expected = words.contains("semestral") ? 6 : words.contains("quadrimester") ? 4 : 3;
    assertThat(months).isEqualTo(expected);
    assertThat(span.first().getYear()).isEqualTo(1934);
    assertThat(level).isEqualTo(code < 25 ? 1 : 2);
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "edtf_minmax.csv",
      numLinesToSkip = 1,
      ignoreLeadingAndTrailingWhitespace = false)
  void findsTheFirstAndTheLastDay(String text, String first, String last) {
    Edtf date = Dates.read(text);
    assertThat(date.stated())
        .isEqualTo(DateRange.of(day(first, LocalDate.MIN), day(last, LocalDate.MAX)));
    assertThat(date.unknownStart()).isEqualTo(first.equals("unknown"));
    assertThat(date.unknownEnd()).isEqualTo(last.equals("unknown"));
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "edtf_invalid.csv",
      numLinesToSkip = 1,
      ignoreLeadingAndTrailingWhitespace = false)
  void refusesWhatIsWrongAndNothingElse(String text, String verdict) {
    Parsed<Edtf> parsed = Edtf.parse(text);
    if (verdict.equals("invalid")) {
      assertThat(parsed).isInstanceOf(Parsed.Bad.class);
    } else {
      assertThat(parsed).isInstanceOf(Parsed.Ok.class);
    }
  }

  private static LocalDate day(String text, LocalDate open) {
    if (text.endsWith("inf") || text.equals("unknown")) {
      return open;
    }
    String[] parts = text.replaceFirst("^-", "").split("-", -1);
    int year = Integer.parseInt(parts[0]);
    return LocalDate.of(
        text.startsWith("-") ? -year : year,
        Integer.parseInt(parts[1]),
        Integer.parseInt(parts[2]));
  }
}
