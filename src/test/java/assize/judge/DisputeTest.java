package assize.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import assize.aspect.Aspect;
import assize.aspect.Verdict;
import assize.evidence.DisputeState;
import assize.evidence.Grade;
import assize.judgment.AspectJudgment;
import assize.judgment.Judgment;
import assize.judgment.PositionJudgment;
import assize.judgment.ScoreRange;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sources that disagree; the figures are worked in docs/evidence.md. */
class DisputeTest {
  private static final String HEAD =
      """
      rule_set: bench
      name: Bench
      edition: "1"
      scale: {method: sum, out_of: 10}
      models: {B1: {name: Bench one, production: 1934-01-01/1934-12-31}}
      markets: {home: Home, export: Export}
      equipment: {heater: Heater}
      colors: {green: {name: Green}, body: {name: Body}, black: {name: Black}}
      finishes: {nickel: {name: Nickel}, chrome: {name: Chrome}, brass: {name: Brass}}
      sources:
        drawing: {kind: drawing, grade: A, title: Drawing}
        guide: {kind: club guide, grade: C, title: Guide}
        copy-1: {kind: club guide, grade: C, title: Copy, copies: [guide]}
        copy-2: {kind: recollection, grade: C, title: Copy of a copy, copies: [copy-1]}
        photo: {kind: factory photograph, grade: B, title: Photograph}
      areas:
        all:
          name: All
          items:
            bed:
              title: Bed
              points: 10
              claims:
      """;

  private static Judgment judge(String claims, String record) {
    return Judging.judge(
        HEAD + claims.indent(10),
        "record: one\nrules: bench\nvehicle: {name: One, model: B1}\n" + record);
  }

  private static AspectJudgment bed(String claims, String record) {
    return Judging.aspect(judge(claims, record), "bed", Aspect.COLOR);
  }

  private static final String GREEN = "observations: {bed: {color: green}}\n";

  private static final String AGAINST =
      """
      - {source: drawing, says: {color: green}}
      - {source: guide, says: {color: body}}
      """;

  @Test
  void aDrawingAgainstAGuideIsDisputed() {
    AspectJudgment bed = bed(AGAINST, GREEN);
    assertThat(bed.dispute()).isEqualTo(DisputeState.DISPUTED);
    assertThat(bed.conflict()).isCloseTo(0.45, within(1e-12));
    PositionJudgment green = bed.positions().get(0);
    assertThat(green.belief()).isCloseTo(0.45 / 0.55, within(1e-12));
    assertThat(green.plausibility()).isCloseTo(0.5 / 0.55, within(1e-12));
    assertThat(bed.unassigned()).isCloseTo(0.05 / 0.55, within(1e-12));
    // shares: green 0.45 + 0.05/3, body 0.05 + 0.05/3, together 0.5 + 0.1/3: 7/8 and 1/8
    assertThat(green.share()).isCloseTo(0.875, within(1e-12));
    assertThat(bed.earned()).isEqualTo(new ScoreRange(0, 8_750, 10_000));
    assertThat(bed.verdict()).isEqualTo(Verdict.UNDECIDED);
    assertThat(bed.pointsAtStake()).isEqualTo(10_000);
    assertThat(Judging.item(judge(AGAINST, GREEN), "bed").dispute())
        .isEqualTo(DisputeState.DISPUTED);
  }

  @Test
  void saysWhatWouldSettleIt() {
    PositionJudgment green = bed(AGAINST, GREEN).positions().get(0);
    // one more B for green gives 0.485 / 0.515 = 0.942; one more D gives 0.465 / 0.535 = 0.869
    assertThat(green.settling())
        .contains(
            new PositionJudgment.SourcesNeeded(Grade.B, 1),
            new PositionJudgment.SourcesNeeded(Grade.D, 1));
  }

  @Test
  void aPhotographSettlesItAgainstDissent() {
    AspectJudgment bed = bed(AGAINST + "- {source: photo, says: {color: green}}\n", GREEN);
    assertThat(bed.dispute()).isEqualTo(DisputeState.SETTLED);
    assertThat(bed.positions().get(0).belief()).isCloseTo(0.485 / 0.515, within(1e-12));
    assertThat(bed.earned()).isEqualTo(new ScoreRange(10_000, 10_000, 10_000));
    assertThat(bed.positions()).extracting(PositionJudgment::scored).containsExactly(true, false);
  }

  @Test
  void copiesAddNothing() {
    AspectJudgment alone = bed(AGAINST, GREEN);
    AspectJudgment crowd =
        bed(
            AGAINST
                + """
                - {source: copy-1, says: {color: body}}
                - {source: copy-2, says: {color: body}}
                """,
            GREEN);
    assertThat(crowd.positions().get(1).repeatingSources())
        .containsExactlyInAnyOrder("copy-1", "copy-2");
    assertThat(crowd.positions().get(0).belief()).isEqualTo(alone.positions().get(0).belief());
    assertThat(crowd.earned()).isEqualTo(alone.earned());
  }

  @Test
  void aCopyThatDiffersCounts() {
    AspectJudgment bed = bed(AGAINST + "- {source: copy-1, says: {color: green}}\n", GREEN);
    assertThat(bed.positions().get(0).sources()).containsExactlyInAnyOrder("drawing", "copy-1");
    assertThat(bed.positions().get(0).belief()).isGreaterThan(0.45 / 0.55);
  }

  @Test
  void aTraceSpeaksAsOneMoreSource() {
    String trace = "traces:\n  - {item: bed, grade: B, says: {color: green}}\n";
    assertThat(bed(AGAINST, GREEN + trace).dispute()).isEqualTo(DisputeState.SETTLED);
    assertThat(bed(AGAINST, GREEN + trace).positions().get(0).sources())
        .containsExactly("drawing", "trace 1");
  }

  @Test
  void aPhotographThatCannotTellLeavesOpen() {
    AspectJudgment bed = bed("- {source: photo, leaves_open: {color: [green, black]}}\n", GREEN);
    assertThat(bed.dispute()).isEqualTo(DisputeState.DISPUTED);
    assertThat(bed.positions()).hasSize(2);
    assertThat(bed.earned()).isEqualTo(new ScoreRange(0, 5_000, 10_000));
  }

  @Test
  void ruledOutLeavesTheRest() {
    AspectJudgment bed =
        bed(
            """
            - {source: photo, leaves_open: {color: [green, black]}}
            - {source: drawing, rules_out: {color: black}}
            """,
            GREEN);
    assertThat(bed.dispute()).isEqualTo(DisputeState.AGREED);
    assertThat(bed.earned().low()).isEqualTo(10_000);
  }

  @Test
  void eitherOfSeveralIsOnePositionAndANarrowerOneCanBeMetToo() {
    AspectJudgment bed =
        bed(
            """
            - {source: drawing, says: {color: [green, black]}}
            - {source: guide, says: {color: green}}
            """,
            GREEN);
    assertThat(bed.dispute()).isEqualTo(DisputeState.DISPUTED);
    assertThat(bed.verdict()).isEqualTo(Verdict.CORRECT);
    assertThat(bed.earned()).isEqualTo(new ScoreRange(10_000, 10_000, 10_000));
    assertThat(bed.pointsAtStake()).isZero();
  }

  @Test
  void aRunningChangeIsNoDispute() {
    String claims =
        """
        - {source: drawing, built: ../1934-05, says: {color: green}}
        - {source: drawing, built: 1934-06/.., says: {color: black}}
        """;
    Judgment judgment = judge(claims, GREEN);
    assertThat(judgment.stretches()).hasSize(2);
    assertThat(Judging.item(judgment, "bed").dispute()).isEqualTo(DisputeState.AGREED);
    assertThat(judgment.stretches().get(0).score())
        .isEqualTo(new ScoreRange(10_000, 10_000, 10_000));
    assertThat(judgment.stretches().get(1).score()).isEqualTo(ScoreRange.ZERO);
    // 151 days of January to May, of 365: 10 × 151 / 365
    assertThat(judgment.score()).isEqualTo(new ScoreRange(0, 4_137, 10_000));
  }

  @Test
  void whileOldStockWasUsedUpBothAreRight() {
    String claims =
        """
        - {source: drawing, built: ../1934-08, says: {color: green}}
        - {source: drawing, built: 1934-06/.., says: {color: black}}
        """;
    Judgment judgment = judge(claims, GREEN);
    assertThat(judgment.stretches()).hasSize(3);
    assertThat(judgment.stretches().get(1).score().low()).isEqualTo(10_000);
    assertThat(Judging.item(judgment, "bed").dispute()).isEqualTo(DisputeState.AGREED);
  }

  @Test
  void anUnknownMarketIsJudgedBothWays() {
    String claims =
        """
        - {source: drawing, says: {color: green}}
        - {source: photo, market: [export], says: {color: black}}
        """;
    AspectJudgment bed = bed(claims, GREEN);
    assertThat(bed.earned().low()).isZero();
    assertThat(bed.earned().high()).isEqualTo(10_000);
    // with the photograph 0.9·0.3 + 0.03/3 for green and 0.07 + 0.01 for black make 7/9; without, 1
    AspectJudgment home = bed(claims, GREEN + "market: home\n");
    assertThat(home.earned()).isEqualTo(new ScoreRange(10_000, 10_000, 10_000));
    AspectJudgment export = bed(claims, GREEN + "market: export\n");
    assertThat(bed.earned().likely())
        .isEqualTo((home.earned().likely() + export.earned().likely()) / 2);
  }

  @Test
  void unknownEquipmentMakesAnItemMayApply() {
    String claims = "- {source: drawing, says: {color: green}}\n";
    Judgment judgment =
        Judging.judge(
            HEAD.replace("points: 10", "points: 10\n        equipment: [heater]")
                + claims.indent(10),
            "record: one\nrules: bench\nvehicle: {name: One, model: B1}\n" + GREEN);
    assertThat(Judging.item(judgment, "bed").verdict()).isEqualTo(Verdict.MAY_APPLY);
  }

  @Test
  void nothingIsSaidOfWhatNoSourceSpeaksOf() {
    Judgment judgment =
        judge("- {source: drawing, built: 1934-07/.., says: {color: green}}\n", GREEN);
    assertThat(Judging.item(judgment, "bed").verdict()).isEqualTo(Verdict.MAY_APPLY);
    assertThat(judgment.stretches().get(0).score()).isEqualTo(ScoreRange.ZERO);
  }

  @Test
  void theSameValueWithAnotherToleranceIsAnotherPosition() {
    String narrow = "- {source: guide, says: {color: {any: [green], tolerance: 1}}}\n";
    AspectJudgment bed = bed("- {source: drawing, says: {color: green}}\n" + narrow, GREEN);
    assertThat(bed.positions()).hasSize(2);
    assertThat(bed.dispute()).isEqualTo(DisputeState.DISPUTED);
  }

  @Test
  void theOrderOfValuesMakesNoOtherPosition() {
    AspectJudgment bed =
        bed(
            """
            - {source: drawing, says: {color: [green, black]}}
            - {source: guide, says: {color: [black, green]}}
            """,
            GREEN);
    assertThat(bed.positions()).hasSize(1);
    assertThat(bed.dispute()).isEqualTo(DisputeState.AGREED);
  }

  @Test
  void sourcesForDifferentMarketsDoNotDisagree() {
    AspectJudgment bed =
        bed(
            """
            - {source: drawing, market: [home], says: {color: green}}
            - {source: photo, market: [export], says: {color: black}}
            """,
            GREEN);
    assertThat(bed.dispute()).isEqualTo(DisputeState.AGREED);
    assertThat(bed.conflict()).isZero();
    assertThat(bed.verdict()).isEqualTo(Verdict.UNDECIDED);
    assertThat(bed.earned()).isEqualTo(new ScoreRange(0, 5_000, 10_000));
  }

  private static List<String> sayers(AspectJudgment bed) {
    return bed.positions().stream().flatMap(position -> position.sources().stream()).toList();
  }

  /** Of cases as disputed as each other the one is shown in which most sources speak. */
  @Test
  void ofCasesThatAreAlikeTheFullestIsShown() {
    String claims =
        """
        - {source: drawing, says: {color: green}}
        - {source: guide, equipment: [heater], says: {color: green}}
        - {source: photo, market: [export], says: {color: green}}
        """;
    assertThat(sayers(bed(claims, GREEN))).containsExactly("drawing", "guide", "photo");
  }

  @Test
  void theMostDisputedCaseIsShown() {
    String more = "- {source: photo, equipment: [heater], says: {color: green}}\n";
    AspectJudgment settled = bed(AGAINST + more, GREEN + "equipment: {heater: yes}\n");
    assertThat(settled.dispute()).isEqualTo(DisputeState.SETTLED);
    AspectJudgment open = bed(AGAINST + more, GREEN);
    assertThat(open.dispute()).isEqualTo(DisputeState.DISPUTED);
    assertThat(sayers(open)).containsExactly("drawing", "guide");
    String first = "- {source: drawing, says: {color: green}}\n";
    String against = "- {source: guide, equipment: [heater], says: {color: body}}\n";
    assertThat(sayers(bed(first + against, GREEN))).containsExactly("drawing", "guide");
  }

  /**
   * Two of 0.9 that rule out all that is named leave (1 − 0.9)² of plausibility, 0.01 / (1 − 0.7 ×
   * 0.99) = 0.033: so nothing is left to judge by but everything.
   */
  @Test
  void whereEverythingIsRuledOutEverythingIsJudgedBy() {
    String trace = "traces:\n  - {item: bed, grade: A, rules_out: {color: [green, black]}}\n";
    AspectJudgment bed =
        bed(
            """
            - {source: photo, leaves_open: {color: [green, black]}}
            - {source: drawing, rules_out: {color: [green, black]}}
            """,
            GREEN + trace);
    assertThat(bed.positions().get(0).plausibility()).isCloseTo(0.01 / 0.307, within(1e-12));
    assertThat(bed.positions()).extracting(PositionJudgment::scored).containsExactly(true, true);
    assertThat(bed.earned()).isEqualTo(new ScoreRange(0, 5_000, 10_000));
  }

  private static AspectJudgment finish(String claims, String found) {
    Judgment judgment = judge(claims, "observations: {bed: {finish: " + found + "}}\n");
    return Judging.aspect(judgment, "bed", Aspect.FINISH);
  }

  /** A source that says the same value twice holds it at the greater credit. */
  @Test
  void aValueSaidTwiceKeepsTheGreaterCredit() {
    String half = "- {source: guide, says: {finish: {nickel: 1, chrome: 0.5}}}\n";
    String more = "- {source: guide, says: {finish: {chrome: 0.8, brass: 1}}}\n";
    assertThat(finish(half, "chrome").earned().likely()).isEqualTo(5_000);
    assertThat(finish(half + more, "chrome").earned().likely()).isEqualTo(8_000);
    assertThat(finish(more + half, "chrome").earned().likely()).isEqualTo(8_000);
  }

  /** What a position takes at less than its full credit is no part of what it holds to be right. */
  @Test
  void whatIsLeftOpenIsHeldAgainstWhatIsRight() {
    AspectJudgment bed =
        finish(
            """
            - {source: guide, says: {finish: {nickel: 1, chrome: 0.5}}}
            - {source: photo, leaves_open: {finish: nickel}}
            """,
            "nickel");
    assertThat(bed.positions()).hasSize(1);
    assertThat(bed.conflict()).isZero();
    assertThat(bed.dispute()).isEqualTo(DisputeState.AGREED);
  }

  /** The second aspect's claims are asked as they stand, after those of the first. */
  @Test
  void eachAspectHasItsOwnClaims() {
    String claims =
        """
        - {source: drawing, says: {color: green}}
        - {source: photo, market: [export], says: {color: black}}
        - {source: guide, market: [home], says: {present: yes}}
        - {source: photo, market: [export], says: {present: no}}
        """;
    Judgment judgment =
        judge(claims, "market: export\nobservations: {bed: {color: black, present: no}}\n");
    assertThat(Judging.aspect(judgment, "bed", Aspect.PRESENT).verdict())
        .isEqualTo(Verdict.CORRECT);
    assertThat(Judging.aspect(judgment, "bed", Aspect.PRESENT).positions()).hasSize(1);
  }

  /**
   * Green and body at 0.9 each, black at 0.3: 0.9 × 0.1 × 0.7 twice, 0.3 × 0.1 × 0.1, and 0.007
   * that nobody assigns. Black is plausible by 0.01 of 0.136, less than 0.1.
   */
  @Test
  void whatIsHardlyPlausibleIsNotJudgedBy() {
    String traces =
        """
        traces:
          - {item: bed, grade: A, says: {color: body}}
          - {item: bed, grade: D, says: {color: black}}
        """;
    AspectJudgment bed = bed("- {source: drawing, says: {color: green}}\n", GREEN + traces);
    assertThat(bed.dispute()).isEqualTo(DisputeState.DISPUTED);
    assertThat(bed.positions())
        .extracting(PositionJudgment::scored)
        .containsExactly(true, true, false);
    assertThat(bed.positions().get(2).plausibility()).isCloseTo(0.010 / 0.136, within(1e-12));
    assertThat(bed.earned()).isEqualTo(new ScoreRange(0, 5_000, 10_000));
    AspectJudgment black =
        bed(
            "- {source: drawing, says: {color: green}}\n",
            "observations: {bed: {color: black}}\n" + traces);
    assertThat(black.earned()).isEqualTo(ScoreRange.ZERO);
    assertThat(black.verdict()).isEqualTo(Verdict.INCORRECT);
  }
}
