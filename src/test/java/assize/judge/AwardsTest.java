package assize.judge;

import static org.assertj.core.api.Assertions.assertThat;

import assize.judgment.AwardResult;
import assize.ruleset.Award;
import org.junit.jupiter.api.Test;

/** Awards that hang on an item that may apply; worked by hand. */
class AwardsTest {
  private static final String RULES =
      """
      rule_set: bench
      name: Bench
      edition: "1"
      scale: {method: sum, out_of: 100}
      awards: {first: {name: First, at: 90, no_area_under: %s}}
      models: {B1: {name: Bench, built: 1934}}
      equipment: {heater: Heater}
      conditions: {good: 1, fair: 0.9, worn: 0.6, poor: 0.3}
      areas:
        cab:
          name: Cab
          items:
            dash: {title: Dash, points: 10, expect: {condition: graded}}
            duct: {title: Duct, points: 20, equipment: [heater], expect: {condition: graded}}
        rest:
          name: Rest
          items:
            other: {title: Other, points: 70, expect: {condition: graded}}
      """;

  private static AwardResult award(String least, String dash) {
    return Judging.judge(
            RULES.formatted(least),
            """
            record: r
            rules: bench
            vehicle: {name: R, model: B1}
            observations:
              dash: {condition: %s}
              duct: {condition: fair}
              other: {condition: good}
            """
                .formatted(dash))
        .award();
  }

  /**
   * The low score has the duct in, 94 of 100, and the cab at 0.8; without it the score is 95, yet
   * the cab is at 0.6 only.
   */
  @Test
  void whatAnAreaMayMissIsNotCertain() {
    AwardResult award = award("70 %", "worn");
    assertThat(award.certain()).isEmpty();
    assertThat(award.reached().map(Award::id)).contains("first");
    assertThat(award.possible().map(Award::id)).contains("first");
    assertThat(award("60 %", "worn").certain().map(Award::id)).contains("first");
  }

  /** The high score leaves the duct out, and the cab is at 0.3 then; with it, at 0.7. */
  @Test
  void whatIsReachedIsPossible() {
    AwardResult award = award("50 %", "poor");
    assertThat(award.certain()).isEmpty();
    assertThat(award.reached().map(Award::id)).contains("first");
    assertThat(award.possible().map(Award::id)).contains("first");
    assertThat(award("80 %", "poor").possible()).isEmpty();
  }
}
