package assize.judge;

import static org.assertj.core.api.Assertions.assertThat;

import assize.date.DateRange;
import assize.judgment.BuildPeriod;
import assize.judgment.Judgment;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A build day within a stretch is judged as it would be alone. */
class PeriodSplitterTest {
  private static final String RULES =
      """
      rule_set: bench
      name: Bench
      edition: "1"
      models: {B1: {name: Bench, production: 1934-01-01/1937-12-31}}
      sources: {drawing: {kind: drawing, grade: D, title: D}}
      areas:
        all:
          name: All
          items:
            coil:
              title: Coil
              points: 1
              claims:
                - source: drawing
                  says: {date_code: {pattern: '(?P<year>[0-9])', lead_time: P1Y..P0D}}
      """;

  private static Judgment judge(String code, String trace, String built) {
    return Judging.judge(
        RULES,
        """
        record: r
        rules: bench
        vehicle: {name: R, model: B1}
        %s
        observations: {coil: {date_code: "%s"}}
        traces: [%s]
        """
            .formatted(built, code, trace));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // 1930 or 1940: nearer to the one, then to the other; halfway by hand from 31 December 1930
        // and 1 January 1940 is 2 January 1936, the window beginning a year before that
        "0 | 1934-01-01",
        "0 | 1935-12-31",
        "0 | 1936-01-15",
        "0 | 1937-12-31",
        "4 | 1934-06-01",
        "4 | 1935-12-31",
        "4 | 1936-01-01"
      })
  void eachDayIsJudgedAsItIsAlone(String code, LocalDate day) {
    assertAlike(code, "", day);
  }

  @ParameterizedTest
  @CsvSource({"1934-02-01", "1934-07-31", "1935-06-30", "1935-07-01", "1936-12-31"})
  void aTraceMayCutTheDaysToo(LocalDate day) {
    assertAlike(
        "4",
        """
        {item: coil, grade: A, where: on its twin,
         says: {date_code: {pattern: '(?P<year>[3-5])', lead_time: P6M..P0D}}}""",
        day);
  }

  private static void assertAlike(String code, String trace, LocalDate day) {
    Judgment all = judge(code, trace, "");
    Judgment alone = judge(code, trace, "built: " + day);
    assertThat(alone.build().days()).isEqualTo(DateRange.day(day));
    assertThat(
            all.stretches().stream().filter(it -> it.days().contains(day)).map(BuildPeriod::score))
        .containsExactly(alone.score());
  }

  private static final String COLORS =
      """
      rule_set: bench
      name: Bench
      edition: "1"
      models: {B1: {name: Bench, production: 1934-01-01/1937-12-31}}
      colors: {green: {name: Green}, black: {name: Black}}
      sources: {drawing: {kind: drawing, grade: A, title: D}}
      areas:
        all:
          name: All
          items:
            wheel: {title: Wheel, points: 1, expect: {color: green}}
            bed:
              title: Bed
              points: 1
              claims:
                - {source: drawing, built: 1934, says: {color: green}}
                - {source: drawing, built: 1935, says: {color: green}}
                - {source: drawing, built: 1936, says: {color: black}}
                - {source: drawing, built: 1937, says: {color: black}}
      """;

  /** Only where what is shown changes does another stretch begin. */
  @Test
  void stretchesThatAreJudgedAlikeAreOne() {
    Judgment judgment =
        Judging.judge(COLORS, "record: r\nrules: bench\nvehicle: {name: R, model: B1}\n");
    assertThat(judgment.stretches())
        .extracting(BuildPeriod::days)
        .containsExactly(
            DateRange.of(LocalDate.of(1934, 1, 1), LocalDate.of(1935, 12, 31)),
            DateRange.of(LocalDate.of(1936, 1, 1), LocalDate.of(1937, 12, 31)));
    assertThat(judgment.items()).allMatch(item -> item.stretches().size() == 2);
  }
}
