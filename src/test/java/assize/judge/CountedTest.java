package assize.judge;

import static org.assertj.core.api.Assertions.assertThat;

import assize.judgment.ScoreRange;
import assize.judgment.Totals;
import assize.judgment.Verdict;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures alone, of a few items of every kind: the same as those of the judgment. */
class CountedTest {
  private static final String RULES =
      """
      rule_set: bench
      name: Bench
      edition: "1"
      scale: {method: %s, out_of: 100, not_shown: 1/3, allow: {safety: 1, law: 1/2}}
      %s
      models: {B1: {name: Bench, built: 1934-01-01/1934-12-31}}
      equipment: {heater: Heater}
      finishes: {nickel: {name: N}, chrome: {name: C}}
      conditions: {good: 1, fair: 0.6, poor: 0.2}
      sources:
        guide: {kind: club guide, grade: C, title: G}
        photo: {kind: works photograph, grade: C, title: P}
      areas:
        cab:
          name: Cab
          items:
            dash: {title: Dash, points: 10, expect: {finish: nickel, condition: graded}}
            duct: {title: Duct, points: 6, equipment: [heater], expect: {condition: graded}}
        rest:
          name: Rest
          most: 9
          items:
            horn:
              title: Horn
              points: 7
              claims:
                - {source: guide, built: ../1934-06, says: {finish: nickel}}
                - {source: photo, says: {finish: chrome}}
                - {source: guide, equipment: [heater], says: {finish: nickel}}
            axle: {title: Axle, points: 5, cause: wrong axle, expect: {condition: graded}}
            drum: {title: Drum, points: 4, cause: wrong axle, expect: {condition: graded}}
            bolt: {title: Bolt, points: 3, built: ../1934-03, expect: {size: at most 2 mm}}
      """;

  private static final List<String> AWARDS =
      List.of(
          "notes: none",
          "awards: {first: {name: F, at: 60}, second: {name: S, at: 30}}",
          "awards: {first: {name: F, at: 40, no_area_under: 50 %}, second: {name: S, at: 20}}",
          "awards: {first: {name: F, at: 40, no_item_over: 3}, second: {name: S, at: 20}}",
          "awards: {first: {name: F, at: 5, no_item_over: 7}}");

  private static final List<String> DASHES =
      List.of(
          "dash: {finish: nickel, condition: good}",
          "dash: {finish: chrome, condition: fair}",
          "dash: {finish: chrome, condition: poor, departure: {reason: law}}",
          "dash: {condition: poor, departure: {reason: taste}}",
          "dash: {finish: nickel}");

  private static final List<String> OTHERS =
      List.of(
          "horn: {finish: nickel}, axle: {condition: good}, bolt: {size: 2 mm ± 0.1 mm}",
          "horn: {finish: chrome}, axle: {condition: poor}, drum: {condition: fair},"
              + " duct: {condition: poor}, bolt: {size: 3 mm}",
          "duct: {condition: good}, axle: {condition: good}, drum: {condition: poor},"
              + " bolt: {size: 1 mm}");

  private static final List<String> FACTS =
      List.of(
          "",
          "equipment: {heater: yes}\nbuilt: 1934-02\n",
          "equipment: {heater: no}\n",
          "built: 1934-05/1934-08\ntraces: [{item: horn, grade: B, says: {finish: nickel}}]\n");

  @ParameterizedTest
  @CsvSource({"sum, 0", "sum, 1", "sum, 2", "sum, 4", "areas, 2", "deductions, 3"})
  void areThoseOfTheJudgment(String method, int awards) {
    RuleSet rules = Judging.rules(RULES.formatted(method, AWARDS.get(awards)));
    Judge judge = Judge.by(rules);
    for (String facts : FACTS) {
      for (String dash : DASHES) {
        for (String others : OTHERS) {
          TotalsTest.assertSame(judge, rules, vehicle(rules, facts, dash + ", " + others));
        }
      }
    }
  }

  private static VehicleRecord vehicle(RuleSet rules, String facts, String observations) {
    return Judging.vehicle(
        rules,
        "record: r\nrules: bench\nvehicle: {name: R, model: B1}\n%sobservations: {%s}\n"
            .formatted(facts, observations));
  }

  /**
   * Built in February with a heater: the dash loses 4 of its 10 points, the duct 4.8 of 6; the axle
   * loses 4, the drum nothing, the horn, of which both finishes are said at the same grade, half of
   * 7, the bolt half of 3. That is 35 points less 8.8 and, of the rest, 9, its limit: 17.2 / 35.
   */
  @Test
  void byHand() {
    RuleSet rules =
        Judging.rules(
            RULES
                .formatted("sum", "notes: none")
                .replace("expect: {finish: nickel, condition", "expect: {condition"));
    Totals totals =
        Judge.by(rules)
            .totals(
                vehicle(
                    rules,
                    FACTS.get(1),
                    "dash: {condition: fair}, duct: {condition: poor}, axle: {condition: poor},"
                        + " drum: {condition: good}, horn: {finish: nickel},"
                        + " bolt: {size: 2 mm ± 0.1 mm}"));
    assertThat(totals.verdicts())
        .isEqualTo(Map.of(Verdict.PARTLY, 3, Verdict.MEETS, 1, Verdict.OPEN, 2));
    // low: of the rest 4 + 7 + 3 are lost, of which 9 count; high: 4; likely 4 + 3.5 + 1.5 = 9
    long least = Exact.part(100_000, 35_000 - 8_800 - 9_000, 35_000);
    long most = Exact.part(100_000, 35_000 - 8_800 - 4_000, 35_000);
    assertThat(totals.score()).isEqualTo(new ScoreRange(least, least, most));
    assertThat(totals.strict()).isEqualTo(totals.score());
  }
}
