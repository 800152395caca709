package assize.date;

import static assize.date.Dates.day;
import static assize.date.Dates.ok;
import static assize.date.Dates.read;
import static assize.date.Dates.reason;
import static assize.date.Dates.span;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The last that is still right, and the first that is not. */
class DateBoundaryTest {
  /** ISO 8601-1:2019 lets shifts from UTC go to 14:00, from memory. */
  @ParameterizedTest
  @CsvSource({
    "1934-05-01T10:00:00+14:00, true",
    "1934-05-01T10:00:00-14:00, true",
    "1934-05-01T10:00:00+14:01, false",
    "1934-05-01T10:00:00+13:59, true",
    "1934-05-01T10:00:00+13:60, false",
    "1934-05-01T10:00:00+1a:00, false",
    "Y999999998, true",
    "Y-999999998, true",
    "Y999999999, false",
    "Y1E8, true",
    "Y1E9, false",
    "Y99999, true",
    "Y9999, false",
    "1934-12-31, true",
    "1934-13, false",
    "1934-12-32, false",
    "'[..1934,1936..]', true",
    "'[1934..,1936]', false",
    "'[1934,..1936]', false",
    "1934-24, true",
    "1934-20, false",
    "1934-42, false"
  })
  void isRead(String text, boolean right) {
    assertThat(Edtf.parse(text).toOptional().isPresent())
        .as(reason(Edtf.parse(text)))
        .isEqualTo(right);
  }

  /** A table's years are years of a century from 10 on, and years of a decade below. */
  @ParameterizedTest
  @CsvSource({
    "0, 1930/1940/1950/2000/2010",
    "9, 1929/1939/1949/1999/2009",
    "10, 1910/2010",
    "99, 1999",
    "100, ''",
    "1934, 1934"
  })
  void aYearOfATableComesAgainAsItIsWritten(int value, String years) {
    DateCodeTables tables = new DateCodeTables(Map.of("Q", value), Map.of(), true);
    DateCodeParts parts =
        new DateCodeParts(Optional.of("Q"), Optional.empty(), Optional.empty(), Optional.empty());
    DateRangeSet days =
        ok(DateCodeResolver.days(parts, tables, span("1909-01-01/2011-12-31")), "Q");
    for (int year = 1909; year <= 2011; year++) {
      int candidate = year;
      boolean fits =
          days.spans().stream()
              .anyMatch(
                  it ->
                      it.contains(
                          DateRange.of(day(candidate + "-01-01"), day(candidate + "-12-31"))));
      boolean wanted =
          value < 10 ? year % 10 == value : value <= 99 ? year % 100 == value : year == value;
      assertThat(fits).as("%s in %s", value, year).isEqualTo(wanted);
      if (!years.isEmpty() && years.contains("" + year)) {
        assertThat(fits).as("%s in %s", value, year).isTrue();
      }
    }
  }

  @Test
  void halfAYearOutsideIsNotWithin() {
    DateRange year = span("1934-01-01/1934-12-31");
    assertThat(year.contains(span("1934-01-01/1934-12-31"))).isTrue();
    assertThat(year.contains(span("1933-12-31/1934-06-30"))).isFalse();
    assertThat(year.contains(span("1934-06-30/1935-01-01"))).isFalse();
    assertThat(year.contains(span("1933-12-31/1935-01-01"))).isFalse();
  }

  /**
   * A part cast the day after the vehicle was built is an anachronism, on the same day it is not.
   */
  @Test
  void theWindowOfAPartEndsOnItsDays() {
    LeadTime lead = ok(LeadTime.parse("P6M..P0D"), "P6M..P0D");
    assertThat(lead.allows(span("1934-07-01/1934-07-01"), day("1934-07-01"))).isTrue();
    assertThat(lead.allows(span("1934-07-02/1934-07-02"), day("1934-07-01"))).isFalse();
    assertThat(lead.allows(span("1934-01-01/1934-01-01"), day("1934-07-01"))).isTrue();
    assertThat(lead.allows(span("1933-12-31/1933-12-31"), day("1934-07-01"))).isFalse();
  }

  /** A long year is as doubtful as it says, and an interval as either of its ends. */
  @ParameterizedTest
  @CsvSource({
    "Y17000, false, false",
    "Y17000?, true, false",
    "Y17000~, false, true",
    "Y17000%, true, true",
    "1950S2, false, false",
    "1950S2?, true, false",
    "1950S2%, true, true",
    "1934/1935, false, false",
    "1934?/1935, true, false",
    "1934/1935?, true, false",
    "1934~/1935, false, true",
    "1934/1935~, false, true",
    "1934?/1935~, true, true",
    "1934/1935%, true, true"
  })
  void isAsDoubtfulAsItSays(String text, boolean uncertain, boolean approximate) {
    assertThat(read(text).uncertain()).isEqualTo(uncertain);
    assertThat(read(text).approximate()).isEqualTo(approximate);
  }

  @Test
  void otherDaysAreNotTheSameDays() {
    DateRangeSet one = read("1934").days();
    assertThat(one).isEqualTo(read("1934-01-01/1934-12-31").days());
    assertThat(one).isNotEqualTo(read("1935").days()).isNotEqualTo(DateRangeSet.EMPTY);
    assertThat(one.hashCode()).isEqualTo(read("1934-01-01/1934-12-31").days().hashCode());
  }
}
