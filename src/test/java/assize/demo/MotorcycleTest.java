package assize.demo;

import static java.util.stream.Collectors.toSet;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import assize.aspect.Aspect;
import assize.aspect.Verdict;
import assize.diagnostic.Result;
import assize.evidence.DisputeState;
import assize.judge.Judge;
import assize.judgment.AspectJudgment;
import assize.judgment.ItemJudgment;
import assize.judgment.Judgment;
import assize.judgment.ScoreRange;
import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.ruleset.Award;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The motorcycle of the demonstration: nothing that judges it knows of trucks. */
class MotorcycleTest {
  private static final Path RULES = Path.of("rules/quillhurst-q.yaml");
  private static final Path RECORD = Path.of("rules/q-1187.yaml");

  private final Result<RuleSet> rules = RuleSetReader.read(RULES, RULES.toString());
  private final Result<VehicleRecord> record =
      RecordReader.read(RECORD, rules.value().orElseThrow());
  private final Judgment judgment =
      Judge.judge(
          rules.value().orElseThrow(),
          record.value().orElseThrow(),
          Optional.of(LocalDate.of(2026, 11, 1)));

  @Test
  void ruleSetAndRecordAreReadWithoutComplaint() {
    assertThat(rules.diagnostics()).isEmpty();
    assertThat(record.diagnostics()).isEmpty();
    assertThat(judgment.items()).hasSizeGreaterThan(60);
  }

  @Test
  void everyAspectIsJudgedSomewhere() {
    assertThat(aspects().map(it -> it.rule().aspect()).collect(toSet()))
        .isEqualTo(EnumSet.allOf(Aspect.class));
  }

  @Test
  void theFrameNumberBoundsTheBuildDays() {
    // D 1100 left on 13 April 1931 and D 1250 on 15 June, by the rule set's table.
    assertThat(judgment.build().days().first()).isEqualTo(LocalDate.of(1931, 4, 13));
    assertThat(judgment.build().days().last()).isEqualTo(LocalDate.of(1931, 6, 15));
  }

  @Test
  void thePointsLostAreTakenFromAHundred() {
    // Letter 9 of 4 May 1931: until the day before, the hand wheel (2.5) and the second stand
    // spring (1) are points lost, from that day they are right.
    ScoreRange before = scoreOn(LocalDate.of(1931, 5, 3));
    ScoreRange after = scoreOn(LocalDate.of(1931, 5, 4));
    assertThat(after.low() - before.low()).isEqualTo(3_500);
    assertThat(after.likely() - before.likely()).isEqualTo(3_500);
    assertThat(after.high() - before.high()).isEqualTo(3_500);
    assertThat(judgment.score().high()).isLessThan(100_000);
  }

  @Test
  void aGuideThatCopiedTheListIsNoSecondWitness() {
    AspectJudgment rim = item("headlamp-rim").stretches().get(0).aspects().get(0);
    assertThat(rim.dispute()).isEqualTo(DisputeState.SETTLED);
    // By hand, Dempster's rule: grades A and B for chromium leave 0.1 * 0.3 open, B for nickel
    // 0.3; K = 0.97 * 0.7, belief 0.97 * 0.3 / (1 - K).
    assertThat(rim.conflict()).isCloseTo(0.97 * 0.7, within(1e-9));
    assertThat(rim.positions().get(0).belief()).isCloseTo(0.291 / 0.321, within(1e-9));
    assertThat(rim.positions().get(1).repeatingSources()).containsExactly("club-guide");
  }

  @Test
  void whatIsNotShownNotKnownAndInDisputeIsSaidToBeSo() {
    assertThat(item("cylinder-bore").verdict()).isEqualTo(Verdict.NOT_ASSESSED);
    assertThat(item("speedometer").verdict()).isEqualTo(Verdict.MAY_APPLY);
    assertThat(item("acetylene-generator").verdict()).isEqualTo(Verdict.NOT_APPLICABLE);
    assertThat(List.of("tank-lining-color", "handlebar-plating", "hub-color", "primary-chaincase"))
        .allSatisfy(id -> assertThat(item(id).dispute()).isEqualTo(DisputeState.DISPUTED));
  }

  @Test
  void bronzeIsReachedAndSilverPossible() {
    assertThat(judgment.award().reached().map(Award::id)).contains("bronze");
    assertThat(judgment.award().possible().map(Award::id)).contains("silver");
  }

  private ScoreRange scoreOn(LocalDate day) {
    return judgment.stretches().stream()
        .filter(it -> !day.isBefore(it.days().first()) && !day.isAfter(it.days().last()))
        .findFirst()
        .orElseThrow()
        .score();
  }

  private ItemJudgment item(String id) {
    return judgment.items().stream()
        .filter(it -> it.item().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private Stream<AspectJudgment> aspects() {
    return judgment.items().stream()
        .flatMap(it -> it.stretches().stream())
        .flatMap(it -> it.aspects().stream());
  }
}
