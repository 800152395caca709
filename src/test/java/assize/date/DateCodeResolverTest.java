package assize.date;

import static assize.date.Dates.day;
import static assize.date.Dates.ok;
import static assize.date.Dates.reason;
import static assize.date.Dates.span;
import static org.assertj.core.api.Assertions.assertThat;

import assize.text.Parsed;
import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DateCodeResolverTest {
  private static final DateRange HORIZON = span("1925-01-01/1945-12-31");
  private static final DateCodeTables FROM_JANUARY = new DateCodeTables(Map.of(), Map.of(), true);

  /** Parts in the order year, month, week, day, "-" for none. */
  private static Parsed<DateRangeSet> code(String parts, DateCodeTables tables, DateRange horizon) {
    String[] part = parts.split(" ", -1);
    return DateCodeResolver.days(
        new DateCodeParts(given(part[0]), given(part[1]), given(part[2]), given(part[3])),
        tables,
        horizon);
  }

  private static Optional<String> given(String part) {
    return part.equals("-") ? Optional.empty() : Optional.of(part);
  }

  private static List<DateRange> spans(String parts) {
    return ok(code(parts, DateCodeTables.PLAIN, HORIZON), parts).spans();
  }

  @Test
  void aDigitFitsEachDecade() {
    assertThat(spans("4 5 - -"))
        .containsExactly(span("1934-05-01/1934-05-31"), span("1944-05-01/1944-05-31"));
    assertThat(spans("34 5 - -")).containsExactly(span("1934-05-01/1934-05-31"));
    assertThat(spans("1934 - - -")).containsExactly(span("1934-01-01/1934-12-31"));
    assertThat(spans("1950 - - -")).isEmpty();
    assertThat(spans("34 05 - 07")).containsExactly(DateRange.day(day("1934-05-07")));
    assertThat(spans("34 - - 032")).containsExactly(DateRange.day(day("1934-02-01")));
    assertThat(spans("- - - 366"))
        .containsExactly(
            DateRange.day(day("1928-12-31")),
            DateRange.day(day("1932-12-31")),
            DateRange.day(day("1936-12-31")),
            DateRange.day(day("1940-12-31")),
            DateRange.day(day("1944-12-31")));
  }

  @Test
  void lettersStandForWhatTheTableSays() {
    DateCodeTables tables = new DateCodeTables(Map.of("H", 1934, "J", 5), Map.of("C", 3), false);
    assertThat(code("H C - -", tables, HORIZON))
        .isEqualTo(Parsed.ok(DateRangeSet.of(span("1934-03-01/1934-03-31"))));
    assertThat(code("J 12 - -", tables, HORIZON).map(DateRangeSet::spans))
        .isEqualTo(
            Parsed.ok(
                List.of(
                    span("1925-12-01/1925-12-31"),
                    span("1935-12-01/1935-12-31"),
                    span("1945-12-01/1945-12-31"))));
  }

  @Test
  void weeksAreThoseOfTheCalendarOfThePlatform() {
    DateRange far = span("1890-01-01/1990-12-31");
    List<String> wrong = new ArrayList<>();
    for (int week = 1; week <= 53; week++) {
      DateRangeSet days = ok(code("- - " + week + " -", DateCodeTables.PLAIN, far), "week " + week);
      for (LocalDate day : far.first().datesUntil(far.last().plusDays(1)).toList()) {
        boolean inWeek = day.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR) == week;
        if (days.contains(day) != inWeek) {
          wrong.add(day + " in week " + week);
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void anIsoWeekMayBeginInTheYearBefore() {
    assertThat(spans("1935 - 1 -")).containsExactly(span("1934-12-31/1935-01-06"));
    assertThat(ok(code("5 - 1 -", DateCodeTables.PLAIN, span("1934-01-01/1934-12-31")), "").spans())
        .containsExactly(DateRange.day(day("1934-12-31")));
    assertThat(spans("1935 - 1 2")).containsExactly(DateRange.day(day("1935-01-01")));
  }

  @Test
  void weeksMayBeCountedFromTheFirstOfJanuary() {
    assertThat(code("1935 - 1 -", FROM_JANUARY, HORIZON))
        .isEqualTo(Parsed.ok(DateRangeSet.of(span("1935-01-01/1935-01-07"))));
    assertThat(code("1935 - 53 -", FROM_JANUARY, HORIZON))
        .isEqualTo(Parsed.ok(DateRangeSet.of(span("1935-12-31/1935-12-31"))));
    assertThat(code("1936 - 53 -", FROM_JANUARY, HORIZON))
        .isEqualTo(Parsed.ok(DateRangeSet.of(span("1936-12-30/1936-12-31"))));
  }

  @ParameterizedTest
  @CsvSource({
    "4 13 - -, month 13: there are only 1 to 12",
    "4 0 - -, month 0: there are only 1 to 12",
    "4 K - -, 'month K: not listed, and no number from 1 to 12'",
    "4 - 54 -, week 54: there are only 1 to 53",
    "4 5 - 32, day 32: there are only 1 to 31",
    "4 - - 367, day 367: there are only 1 to 366",
    "4 - 20 8, day 8: there are only 1 to 7",
    "123 5 - -, 'year 123: one, two or four digits'",
    "Q 5 - -, 'year Q: one, two or four digits'",
    "4 4 - 31, no year that the code can mean has a day 31 of April",
    "1935 2 - 29, no year that the code can mean has a day 29 of February",
    "1935 - 53 -, no year that the code can mean has a week 53",
    "1935 2 30 -, no year that the code can mean has a week 30 of February",
  })
  void refusesWhatNoYearHas(String parts, String reason) {
    assertThat(reason(code(parts, DateCodeTables.PLAIN, HORIZON))).isEqualTo(reason);
  }

  @Test
  void aLeapDayFitsTheLeapYearsAmongTheDecades() {
    assertThat(spans("6 2 - 29")).containsExactly(DateRange.day(day("1936-02-29")));
  }

  @Test
  void anOpenHorizonIsRefused() {
    assertThat(reason(code("4 5 - -", DateCodeTables.PLAIN, DateRange.ALL)))
        .isEqualTo("a code repeats: it needs a first and a last day to be read between");
  }
}
