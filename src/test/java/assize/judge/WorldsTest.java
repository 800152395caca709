package assize.judge;

import static org.assertj.core.api.Assertions.assertThat;

import assize.aspect.Aspect;
import assize.aspect.Verdict;
import assize.date.DateRange;
import assize.evidence.DisputeState;
import assize.judgment.AspectJudgment;
import assize.judgment.Judgment;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Facts that are not known are looked at together, and only as they can come together. */
class WorldsTest {
  private static final String HEAD =
      """
      rule_set: bench
      name: Bench
      edition: "1"
      models:
        X1: {name: X1, production: 1930/1939}
        X2: {name: X2, production: 1934-06/1939}
      plants: {north: North, south: South}
      markets: {home: Home, export: Export}
      equipment: {heater: Heater, winch: Winch}
      finishes: {nickel: {name: N}, chrome: {name: C}}
      number_tables:
        chassis:
          name: Chassis number
          series:
            - {prefix: N, plant: north, first_numbers: {1: 1930, 500: 1935}, last: {number: 900, built: 1939}}
            - {prefix: S, models: [X2], plant: south, first_numbers: {1: 1934-06}, last: {number: 900, built: 1939}}
      sources:
        a: {kind: drawing, grade: A, title: A}
        b: {kind: drawing, grade: A, title: B}
      areas:
        g:
          name: G
          items:
      """;

  private static String rules(String... items) {
    StringBuilder yaml = new StringBuilder(HEAD);
    for (int i = 0; i < items.length; i++) {
      yaml.append("      i%d: {title: I, points: 8, %s}\n".formatted(i + 1, items[i]));
    }
    return yaml.toString();
  }

  private static Judgment judged(String rules, String facts) {
    return Judging.judge(
        rules,
        "record: r\nrules: bench\nvehicle: {name: R}\n"
            + facts
            + "\nobservations: {i1: {finish: nickel}}\n");
  }

  private static AspectJudgment finish(Judgment judgment) {
    return Judging.aspect(judgment, "i1", Aspect.FINISH);
  }

  private static final String TWO =
      "claims: [{source: a, says: {finish: nickel}}, {source: b, %s, says: {finish: chrome}}]";

  @Test
  void aClaimOnVehiclesThatTheItemIsNotForIsNeverHeard() {
    AspectJudgment north =
        finish(judged(rules("plant: [north], " + TWO.formatted("plant: [south]")), ""));
    assertThat(north.dispute()).isEqualTo(DisputeState.AGREED);
    assertThat(north.conflict()).isZero();
    AspectJudgment bare =
        finish(
            judged(
                rules("none_of: [{equipment: [heater]}], " + TWO.formatted("equipment: [heater]")),
                ""));
    assertThat(bare.conflict()).isZero();
  }

  @Test
  void claimsForTwoMarketsAreNeverSetAgainstEachOther() {
    String rules =
        rules(
            "claims: [{source: a, market: [home], says: {finish: nickel}},"
                + " {source: b, market: [export], says: {finish: chrome}}]");
    AspectJudgment either = finish(judged(rules, ""));
    assertThat(either.conflict()).isZero();
    assertThat(either.low()).isEqualTo(BigFraction.ZERO);
    assertThat(either.likely()).isEqualTo(BigFraction.of(1, 2));
    assertThat(either.high()).isEqualTo(BigFraction.ONE);
    assertThat(finish(judged(rules, "market: home")).low()).isEqualTo(BigFraction.ONE);
  }

  @Test
  void whatHoldsHoweverItIsAppliesForCertain() {
    String either = "any_of: [{plant: [north]}, {plant: [south]}], " + TWO.formatted("built: 1931");
    Judgment judgment = judged(rules(either), "built: 1933");
    assertThat(Judging.item(judgment, "i1").verdict()).isEqualTo(Verdict.CORRECT);
  }

  @Test
  void aNumberTellsTheModelAndThePlantThatItsSeriesNames() {
    String rules = rules("plant: [south], " + TWO.formatted("built: 1931"));
    assertThat(Judging.item(judged(rules, "numbers: {chassis: S77}"), "i1").verdict())
        .isEqualTo(Verdict.CORRECT);
    assertThat(Judging.item(judged(rules, "numbers: {chassis: N77}"), "i1").verdict())
        .isEqualTo(Verdict.NOT_APPLICABLE);
    String model = rules("models: [X1], " + TWO.formatted("built: 1931"));
    assertThat(Judging.item(judged(model, "numbers: {chassis: S77}"), "i1").verdict())
        .isEqualTo(Verdict.NOT_APPLICABLE);
  }

  @Test
  void whatContradictsAllElseNarrowsNothing() {
    String rules = rules("plant: [north], " + TWO.formatted("built: 1931"));
    Judgment judgment = judged(rules, "plant: north\nnumbers: {chassis: S77}\nbuilt: 1935");
    assertThat(Judging.item(judgment, "i1").verdict()).isEqualTo(Verdict.CORRECT);
  }

  @Test
  void datingsNarrowTheBuildDaysTogether() {
    Judgment judgment = judged(rules(TWO.formatted("built: 1931")), "numbers: {chassis: N600}");
    assertThat(judgment.build().days().first()).isEqualTo(LocalDate.of(1935, 1, 1));
    Judgment both =
        judged(
            rules(TWO.formatted("built: 1931")),
            "numbers: {chassis: N600}\nbuilt: 1934-12/1935-01");
    assertThat(both.build().days())
        .isEqualTo(DateRange.of(LocalDate.of(1935, 1, 1), LocalDate.of(1935, 1, 31)));
  }

  /** Worked by hand: ten days of X1 alone, ten of X1 or X2; so X2 weighs a quarter. */
  @Test
  void eachDayWeighsAlikeAndOnItEachModel() {
    RuleSet rules = Judging.rules(rules(TWO.formatted("models: [X2]")));
    VehicleRecord vehicle =
        Judging.vehicle(rules, "record: r\nrules: bench\nvehicle: {name: R}\nplant: north\n");
    DateRange may = DateRange.of(LocalDate.of(1934, 5, 22), LocalDate.of(1934, 5, 31));
    DateRange june = DateRange.of(LocalDate.of(1934, 6, 1), LocalDate.of(1934, 6, 10));
    Map<DateRange, List<World>> worlds =
        Worlds.of(new CompiledRuleSet(rules), vehicle, List.of(may, june)).orElseThrow();
    BigFraction all = BigFraction.ZERO;
    BigFraction second = BigFraction.ZERO;
    for (Map.Entry<DateRange, List<World>> one : worlds.entrySet()) {
      for (World world : one.getValue()) {
        BigFraction weight = world.weight().multiply((int) one.getKey().days());
        all = all.add(weight);
        second = world.supposed().model().orElseThrow().equals("X2") ? second.add(weight) : second;
      }
    }
    assertThat(second.divide(all)).isEqualTo(BigFraction.of(1, 4));
  }
}
