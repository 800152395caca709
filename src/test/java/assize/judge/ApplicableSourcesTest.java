package assize.judge;

import static org.assertj.core.api.Assertions.assertThat;

import assize.aspect.Aspect;
import assize.aspect.Verdict;
import assize.evidence.DisputeState;
import assize.judgment.AspectJudgment;
import assize.judgment.SourceJudgment;
import assize.ruleset.AspectRule;
import assize.ruleset.RuleSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every source that speaks, what it weighs and which positions it leaves standing. */
class ApplicableSourcesTest {
  private static final String RULES =
      """
      rule_set: bench
      name: Bench
      edition: "1"
      colors: {green: {name: Green}, body: {name: Body}, black: {name: Black}}
      sources:
        drawing: {kind: drawing, grade: A, title: Drawing}
        guide: {kind: club guide, grade: C, title: Guide}
        copy: {kind: club guide, grade: D, title: Copy, copies: [guide]}
        photo: {kind: factory photograph, grade: B, title: Photograph}
      areas:
        all:
          name: All
          items:
            bed:
              title: Bed
              points: 10
              claims:
                - {source: guide, says: {color: body}}
                - {source: copy, says: {color: body}}
                - {source: drawing, says: {color: green}}
                - {source: photo, leaves_open: {color: [green, black]}}
      """;

  private static AspectJudgment bed(String traces) {
    return bed(RULES, traces);
  }

  private static AspectJudgment bed(String rules, String traces) {
    return Judging.aspect(
        Judging.judge(rules, "record: r\nrules: bench\nvehicle: {name: R}\n" + traces),
        "bed",
        Aspect.COLOR);
  }

  /**
   * Green is believed most, by a drawing of 0.9 with a photograph of 0.7 that does not speak
   * against it; then body; black, which only the photograph leaves open, least.
   */
  @Test
  void positionsStandByWhatIsBelieved() {
    AspectJudgment bed = bed("");
    assertThat(bed.positions())
        .extracting(position -> position.accepts().get(0).key())
        .containsExactly("green", "body", "black");
    assertThat(bed.positions().get(0).belief()).isGreaterThan(bed.positions().get(1).belief());
  }

  /** Bit 0 is green, 1 body, 2 black, 3 what nobody mentions. */
  @Test
  void sourcesStandByThePositionsOfTheJudgment() {
    assertThat(bed("").sources())
        .containsExactlyInAnyOrder(
            new SourceJudgment("drawing", 900, 0b0001, List.of("drawing")),
            new SourceJudgment("guide", 500, 0b0010, List.of("guide")),
            new SourceJudgment("copy", 300, 0b0010, List.of("copy", "guide")),
            new SourceJudgment("photo", 700, 0b0101, List.of("photo")));
  }

  @Test
  void whatIsRuledOutLeavesTheRestAndWhatNobodyMentions() {
    AspectJudgment bed = bed("traces:\n  - {item: bed, grade: B, rules_out: {color: body}}\n");
    assertThat(bed.sources())
        .contains(new SourceJudgment("trace 1", 700, 0b1101, List.of("trace 1")));
  }

  /** The guide's word is named first and believed less than the photograph's. */
  @Test
  void ofPositionsThatAreDisputedTheMostBelievedIsFirst() {
    String claims = RULES.replace("{source: drawing, says", "{source: photo, says");
    AspectJudgment bed =
        bed(claims.replace("- {source: photo, leaves_open: {color: [green, black]}}", ""), "");
    assertThat(bed.dispute()).isEqualTo(DisputeState.DISPUTED);
    assertThat(bed.positions())
        .extracting(position -> position.accepts().get(0).key())
        .containsExactly("green", "body");
  }

  @Test
  void withoutAVehicleTheySpeakAlike() {
    RuleSet rules = Judging.rules(RULES);
    AspectRule rule = rules.items().findFirst().orElseThrow().aspects().get(0);
    RuleSetWeigher weighing = RuleSetWeigher.by(rules);
    AspectJudgment weighed = weighing.weigh("bed", rule, rule.claims()).orElseThrow();
    assertThat(weighed.sources()).isEqualTo(bed("").sources());
    assertThat(weighed.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
    assertThat(weighing.weigh("bed", rule, List.of())).isEmpty();
  }
}
