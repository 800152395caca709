package assize.judge;

import static org.assertj.core.api.Assertions.assertThat;

import assize.judgment.Notice;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What judging notices of a record's edition and of departures that are due. */
class NoticesTest {
  private static final String RULES =
      """
      rule_set: bench
      name: Bench
      edition: "2"
      models: {B1: {name: Bench, production: 1934}}
      areas:
        all:
          name: All
          items:
            thing: {title: Thing, points: 1, expect: {present: yes}}
            lamp: {title: Second lamp, points: 1, expect: {present: no}}
      """;

  private static List<Notice> remarks(String record, Optional<LocalDate> asOf) {
    RuleSet rules = Judging.rules(RULES);
    VehicleRecord vehicle =
        Judging.vehicle(rules, "record: r\nrules: bench\nvehicle: {name: R, model: B1}\n" + record);
    return Judge.judge(rules, vehicle, asOf).notices();
  }

  private static List<Notice> remarks(String record) {
    return remarks(record, Optional.empty());
  }

  @Test
  void anotherEditionIsSaid() {
    assertThat(remarks("edition: \"1\"\n"))
        .containsExactly(
            new Notice(
                Notice.Kind.EDITION,
                "The record was written for edition 1; it is judged by edition 2."));
    assertThat(remarks("edition: \"2\"\n")).isEmpty();
    assertThat(remarks("")).isEmpty();
  }

  private static String lamp(String until) {
    return "observations:\n  thing: {present: yes}\n"
        + "  lamp: {present: yes, departure: {reason: safety%s}}\n".formatted(until);
  }

  private static final Notice DUE =
      new Notice(
          Notice.Kind.DEPARTURE_DUE,
          "The departure at Second lamp was to be looked at again by 31 May 2027.");

  @Test
  void aDepartureIsDueTheDayAfterItsLast() {
    String until = ", review_by: 2027-05";
    assertThat(remarks(lamp(until), Optional.of(LocalDate.of(2027, 6, 1)))).containsExactly(DUE);
    assertThat(remarks(lamp(until), Optional.of(LocalDate.of(2027, 5, 31)))).isEmpty();
    assertThat(remarks(lamp(""), Optional.of(LocalDate.of(2027, 6, 1)))).isEmpty();
    assertThat(remarks(lamp(", review_by: 2027-05/.."), Optional.of(LocalDate.of(2030, 1, 1))))
        .isEmpty();
  }

  @Test
  void withoutADayTheRecordsOwnCounts() {
    String until = ", review_by: 2027-05";
    assertThat(remarks("inspected: {on: 2027-06-01}\n" + lamp(until))).containsExactly(DUE);
    assertThat(remarks("inspected: {on: 2027-05}\n" + lamp(until))).isEmpty();
    assertThat(remarks("inspected: {by: the owner}\n" + lamp(until))).isEmpty();
    assertThat(remarks("inspected: {on: 2028/..}\n" + lamp(until))).isEmpty();
    assertThat(remarks(lamp(until))).isEmpty();
    assertThat(
            remarks("inspected: {on: 2028}\n" + lamp(until), Optional.of(LocalDate.of(2027, 1, 1))))
        .isEmpty();
  }
}
