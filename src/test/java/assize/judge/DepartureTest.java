package assize.judge;

import static org.assertj.core.api.Assertions.assertThat;

import assize.aspect.Aspect;
import assize.aspect.Verdict;
import assize.judgment.AspectJudgment;
import assize.judgment.Judgment;
import assize.judgment.ScoreRange;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the owner departs from, and what is allowed for it; worked by hand. */
class DepartureTest {
  private static final String RULES =
      """
      rule_set: bench
      name: Bench
      edition: "1"
      scale: {method: sum, out_of: 100, not_assessed: 1/4, allowances: {safety: 1, law: 1/2}}
      models: {B1: {name: Bench, production: 1934}}
      finishes: {nickel: {name: Nickel}, chrome: {name: Chrome}}
      conditions: {good: 1, poor: 0.3}
      areas:
        all:
          name: All
          items:
            lamp: {title: Lamp, points: 10, expect: {finish: nickel}}
            rest: {title: Rest, points: 90, expect: {present: yes}}
      """;

  private static Judgment judge(String lamp) {
    return Judging.judge(
        RULES,
        "record: r\nrules: bench\nvehicle: {name: R, model: B1}\n"
            + "observations: {rest: {present: yes}, lamp: {%s}}\n".formatted(lamp));
  }

  private static AspectJudgment lamp(Judgment judgment) {
    return Judging.item(judgment, "lamp").stretches().get(0).aspects().get(0);
  }

  @ParameterizedTest
  @CsvSource({
    "safety, INCORRECT, 10000, 100000",
    "law, INCORRECT, 5000, 95000",
    "taste, INCORRECT, 0, 90000"
  })
  void anAllowedReasonKeepsItsCredit(String reason, Verdict verdict, long points, long score) {
    Judgment judgment = judge("finish: chrome, departure: {reason: " + reason + "}");
    assertThat(lamp(judgment).verdict()).isEqualTo(verdict);
    assertThat(lamp(judgment).earned()).isEqualTo(new ScoreRange(points, points, points));
    assertThat(lamp(judgment).withoutAllowances()).isEqualTo(ScoreRange.ZERO);
    assertThat(judgment.score()).isEqualTo(new ScoreRange(score, score, score));
    assertThat(judgment.withoutAllowances()).isEqualTo(new ScoreRange(90_000, 90_000, 90_000));
    assertThat(judgment.stretches().get(0).withoutAllowances())
        .isEqualTo(judgment.withoutAllowances());
    assertThat(lamp(judgment).allowed().isPresent()).isEqualTo(points > 0);
  }

  @Test
  void whatMeetsNeedsNoAllowance() {
    Judgment judgment = judge("finish: nickel, departure: {reason: law}");
    assertThat(lamp(judgment).allowed()).isEmpty();
    assertThat(lamp(judgment).earned()).isEqualTo(new ScoreRange(10_000, 10_000, 10_000));
    assertThat(judgment.withoutAllowances()).isEqualTo(judgment.score());
  }

  /** Nothing is known of what is there, and what is allowed is kept at least. */
  @ParameterizedTest
  @CsvSource({"law, 5000, 5000, 10000", "safety, 10000, 10000, 10000", "taste, 0, 2500, 10000"})
  void aDepartureMayStandAlone(String reason, long low, long likely, long high) {
    Judgment judgment = judge("departure: {reason: " + reason + "}");
    assertThat(lamp(judgment).verdict()).isEqualTo(Verdict.NOT_ASSESSED);
    assertThat(Judging.words(judgment, "lamp", lamp(judgment))).isEqualTo("not assessed");
    assertThat(lamp(judgment).earned()).isEqualTo(new ScoreRange(low, likely, high));
    assertThat(lamp(judgment).withoutAllowances()).isEqualTo(new ScoreRange(0, 2_500, 10_000));
  }

  /** Telling what was found never costs points: the rest of the item is covered as well. */
  @Test
  void aDepartureCoversTheWholeItem() {
    Judgment judgment =
        Judging.judge(
            RULES.replace(
                "expect: {finish: nickel}", "expect: {finish: nickel, condition: graded}"),
            "record: r\nrules: bench\nvehicle: {name: R, model: B1}\n"
                + "observations: {lamp: {condition: poor, departure: {reason: law}}}\n");
    AspectJudgment finish = Judging.aspect(judgment, "lamp", Aspect.FINISH);
    assertThat(finish.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
    assertThat(finish.allowed()).contains(BigFraction.of(1, 2));
    assertThat(finish.earned()).isEqualTo(new ScoreRange(2_500, 2_500, 5_000));
    assertThat(finish.withoutAllowances()).isEqualTo(new ScoreRange(0, 1_250, 5_000));
    AspectJudgment condition = Judging.aspect(judgment, "lamp", Aspect.CONDITION);
    assertThat(condition.allowed()).contains(BigFraction.of(1, 2));
    assertThat(condition.earned()).isEqualTo(new ScoreRange(2_500, 2_500, 2_500));
    assertThat(condition.withoutAllowances()).isEqualTo(new ScoreRange(1_500, 1_500, 1_500));
  }

  /** Worked by hand: two thirds hold nickel (0, so 1/2), one third enamel for 0.8. */
  @Test
  void theAllowanceLiftsEachPosition() {
    Judgment judgment =
        Judging.judge(
            RULES
                .replace(
                    "models:",
                    "sources: {b: {kind: drawing, grade: B, title: B}, c: {kind: drawing, grade: C, title: C}}\nmodels:")
                .replace("chrome: {name: Chrome}", "chrome: {name: Chrome}, enamel: {name: E}")
                .replace(
                    "expect: {finish: nickel}",
                    "claims: [{source: b, says: {finish: nickel}},"
                        + " {source: c, says: {finish: {chrome: 1, enamel: 0.8}}}]"),
            "record: r\nrules: bench\nvehicle: {name: R, model: B1}\n"
                + "observations: {lamp: {finish: enamel, departure: {reason: law}}}\n");
    assertThat(lamp(judgment).earned()).isEqualTo(new ScoreRange(5_000, 6_000, 8_000));
  }

  /** What was not assessed can at most give the best credit that is listed. */
  @Test
  void whatWasNotAssessedGivesAtMostTheBestListed() {
    Judgment judgment =
        Judging.judge(
            RULES.replace("{finish: nickel}", "{finish: {nickel: 0.9, chrome: 0.5}}"),
            "record: r\nrules: bench\nvehicle: {name: R, model: B1}\n");
    assertThat(lamp(judgment).earned()).isEqualTo(new ScoreRange(0, 2_250, 9_000));
  }

  @Test
  void nothingIsAllowedForWhatWasNotLookedAt() {
    Judgment judgment =
        Judging.judge(RULES, "record: r\nrules: bench\nvehicle: {name: R, model: B1}\n");
    assertThat(lamp(judgment).verdict()).isEqualTo(Verdict.NOT_ASSESSED);
    assertThat(lamp(judgment).allowed()).isEqualTo(Optional.empty());
    assertThat(judgment.withoutAllowances()).isEqualTo(judgment.score());
  }
}
