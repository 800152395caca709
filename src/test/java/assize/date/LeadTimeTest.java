package assize.date;

import static assize.date.Dates.day;
import static assize.date.Dates.span;
import static org.assertj.core.api.Assertions.assertThat;

import assize.text.Parsed;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LeadTimeTest {

  @Test
  void readsTwoDurations() {
    assertThat(LeadTime.parse("P6M..P0D"))
        .isEqualTo(Parsed.ok(new LeadTime(Period.ofMonths(6), Period.ZERO)));
    assertThat(LeadTime.parse("P1Y2M1W3D..P2W"))
        .isEqualTo(Parsed.ok(new LeadTime(Period.of(1, 2, 10), Period.ofDays(14))));
  }

  @ParameterizedTest
  @CsvSource({
    "P6M, 'write two lengths with .. between, as in P6M..P0D', 0, 3",
    "6M..P0D, 'a length begins with P, as in P6M', 0, 1",
    "P6M.., a length is missing here, 5, 0",
    "P6M..0D, 'a length begins with P, as in P6M', 5, 1",
    "P..P0D, 'a number is missing here, as in P6M', 1, 0",
    "P6..P0D, 'a unit is missing here: Y, M, W or D', 2, 0",
    "P6m..P0D, 'the units are Y, M, W and D, in capitals', 2, 1",
    "P6D1M..P0D, 'each unit comes once, in the order Y, M, W, D', 4, 1",
    "P6MT1H..P0D, 'a number is missing here, as in P6M', 3, 1",
    "P99999D..P0D, the number is too large, 1, 5",
    "P0D..P6M, 'write the longer of the two first, as in P6M..P0D', 0, 8",
    "P1M..P30D, 'write the longer of the two first, as in P6M..P0D', 0, 9",
  })
  void refusesOthers(String text, String reason, int at, int length) {
    assertThat(LeadTime.parse(text)).isEqualTo(new Parsed.Bad<LeadTime>(reason, at, length));
  }

  @Test
  void saysOnWhichSideOfTheWindowAPartWasMade() {
    LeadTime lead = lead("P6M..P0D");
    DateRange made = span("1934-05-01/1934-05-31");
    assertThat(lead.timing(made, day("1934-04-30"))).isEqualTo(LeadTime.Timing.TOO_LATE);
    assertThat(lead.timing(made, day("1934-05-01"))).isEqualTo(LeadTime.Timing.ALLOWED);
    assertThat(lead.timing(made, day("1934-11-30"))).isEqualTo(LeadTime.Timing.ALLOWED);
    assertThat(lead.timing(made, day("1934-12-01"))).isEqualTo(LeadTime.Timing.TOO_EARLY);
    assertThat(lead.cuts(made)).containsExactly(day("1934-05-01"), day("1934-12-01"));
  }

  @Test
  void openEndsHaveNoCut() {
    LeadTime lead = lead("P6M..P0D");
    assertThat(lead.cuts(span("../1934-05-31"))).containsExactly(day("1934-12-01"));
    assertThat(lead.cuts(span("1934-05-01/.."))).containsExactly(day("1934-05-01"));
    assertThat(lead.cuts(DateRange.ALL)).isEmpty();
    assertThat(lead.allows(DateRange.ALL, day("1934-05-01"))).isTrue();
  }

  /** Counts the days one by one through two years at a time, with and without a 29 February. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "P6M..P0D",
        "P1M..P0D",
        "P1M..P28D",
        "P1Y..P1M",
        "P90D..P1W",
        "P2M3D..P1M1D",
        "P0D..P0D"
      })
  void cutsAreWhereTheAnswerChanges(String text) {
    LeadTime lead = lead(text);
    for (String start : List.of("1935-01-01", "1936-01-01", "1899-06-01")) {
      LocalDate from = day(start);
      from.datesUntil(from.plusYears(2))
          .forEach(
              first -> {
                for (int length : new int[] {0, 6, 30}) {
                  DateRange made = DateRange.of(first, first.plusDays(length));
                  assertThat(lead.cuts(made)).as(made + "").isEqualTo(counted(lead, made));
                }
              });
    }
  }

  private static List<LocalDate> counted(LeadTime lead, DateRange made) {
    List<LocalDate> changes = new ArrayList<>();
    LocalDate from = made.first().minusDays(3);
    LeadTime.Timing before = lead.timing(made, from);
    for (LocalDate built : from.datesUntil(made.last().plusDays(405)).toList()) {
      LeadTime.Timing now = lead.timing(made, built);
      if (now != before) {
        changes.add(built);
      }
      assertThat(now == LeadTime.Timing.ALLOWED)
          .isEqualTo(
              !made.first().isAfter(built.minus(lead.latest()))
                  && !made.last().isBefore(built.minus(lead.earliest())));
      before = now;
    }
    return changes;
  }

  @Test
  void aSetIsAllowedWhereAnySpanIs() {
    LeadTime lead = lead("P6M..P0D");
    DateRangeSet made =
        DateRangeSet.of(List.of(span("1925-05-01/1925-05-31"), span("1935-05-01/1935-05-31")));
    List<LocalDate> cuts = lead.cuts(made);
    assertThat(cuts)
        .containsExactly(
            day("1925-05-01"), day("1925-12-01"), day("1935-05-01"), day("1935-12-01"));
    assertThat(lead.allows(made, day("1925-11-30"))).isTrue();
    assertThat(lead.allows(made, day("1930-01-01"))).isFalse();
    assertThat(lead.allows(made, day("1935-11-30"))).isTrue();
  }

  private static LeadTime lead(String text) {
    return Dates.ok(LeadTime.parse(text), text);
  }
}
