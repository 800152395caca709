package assize.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import assize.evidence.Ternary;
import assize.judge.ScoreCalculator.StretchScore;
import assize.judgment.AreaJudgment.CreditedBack;
import assize.judgment.ScoreRange;
import assize.ruleset.Area;
import assize.ruleset.RuleSet;
import assize.ruleset.Scale;
import assize.ruleset.Scale.Method;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Scores against XCCDF 1.2 (NISTIR 7275 rev. 4, section 7.3.2, tables 40 and 41) and against
 * looking at every choice.
 */
class ScoreCalculatorTest {
  private static final double HUNDRED = 100_000;

  /** The cases of the file whose trees have at most two levels: rules, or groups of rules. */
  static Stream<JsonNode> xccdfCases() throws IOException {
    try (InputStream file = ScoreCalculatorTest.class.getResourceAsStream("xccdf_scoring.json")) {
      List<JsonNode> cases = new ArrayList<>();
      for (JsonNode one : JsonMapper.shared().readTree(file).get("cases")) {
        if (one.get("depth").asInt() <= 2 && !one.has("undefined_by_spec")) {
          cases.add(one);
        }
      }
      assertThat(cases).hasSizeGreaterThanOrEqualTo(20);
      return cases.stream();
    }
  }

  @ParameterizedTest
  @MethodSource("xccdfCases")
  void defaultModelIsTheAreasMethod(JsonNode one) {
    Optional<JsonNode> expected = expected(one, "default");
    if (expected.isEmpty()) {
      assertThat(one.has("published")).isTrue();
      return;
    }
    ScoreRange score = score(Method.AREAS, one.get("tree"));
    double wanted = expected.get().get("score").asDouble() * 1000;
    assertThat((double) score.likely()).isCloseTo(wanted, within(0.5001));
    assertThat(score.isPoint()).isTrue();
  }

  @ParameterizedTest
  @MethodSource("xccdfCases")
  void flatModelIsTheSumMethod(JsonNode one) {
    Optional<JsonNode> expected = expected(one, "flat").filter(it -> it.has("maximum"));
    if (expected.isEmpty()) {
      assertThat(one.has("published")).isTrue();
      return;
    }
    double maximum = expected.get().get("maximum").asDouble();
    double share = maximum == 0 ? 0 : expected.get().get("score").asDouble() / maximum;
    ScoreRange score = score(Method.SUM, one.get("tree"));
    assertThat((double) score.likely()).isCloseTo(share * HUNDRED, within(0.5001));
  }

  private static Optional<JsonNode> expected(JsonNode one, String model) {
    return Stream.of("published", "derived")
        .map(part -> one.get(part).get(model))
        .filter(java.util.Objects::nonNull)
        .findFirst();
  }

  /** A group becomes an area; a rule that stands in no group becomes an area of its own. */
  private static ScoreRange score(Method method, JsonNode tree) {
    List<Area> areas = new ArrayList<>();
    Map<String, List<ScoredItem>> lots = new LinkedHashMap<>();
    int number = 0;
    for (JsonNode child : tree.get("children")) {
      String id = "area-" + number++;
      areas.add(RuleSets.area(id, thousandths(child.get("weight")), OptionalLong.empty()));
      List<ScoredItem> within = new ArrayList<>();
      if (child.has("group")) {
        for (JsonNode rule : child.get("children")) {
          lot(rule, id + "-" + within.size()).ifPresent(within::add);
        }
      } else {
        lot(child, id).ifPresent(within::add);
      }
      lots.put(id, within);
    }
    Scale scale = RuleSets.scale(method, (long) HUNDRED);
    return score(scale, areas, lots).score();
  }

  /** Scores, and holds the score that is added up directly to it. */
  private static StretchScore score(
      Scale scale, List<Area> areas, Map<String, List<ScoredItem>> lots) {
    RuleSet rules = RuleSets.bare(scale, areas);
    List<ScoredArea> ofAreas =
        areas.stream().map(area -> together(lots.getOrDefault(area.id(), List.of()))).toList();
    StretchScore score = ScoreCalculator.score(rules, ofAreas);
    return score;
  }

  private static ScoredArea together(List<ScoredItem> lots) {
    ScoredArea all = new ScoredArea();
    lots.forEach(all::add);
    return all;
  }

  private static long thousandths(JsonNode weight) {
    return Math.round(weight.asDouble() * 1000);
  }

  private static Optional<ScoredItem> lot(JsonNode rule, String id) {
    List<String> counted = new ArrayList<>();
    for (JsonNode result : rule.get("results")) {
      boolean counts =
          !result.asString().matches("notapplicable|notchecked|informational|notselected");
      if (counts && !rule.has("role")) {
        counted.add(result.asString());
      }
    }
    if (counted.isEmpty()) {
      return Optional.empty();
    }
    long passed = counted.stream().filter(result -> result.matches("pass|fixed")).count();
    long possible = thousandths(rule.get("weight"));
    long earned = possible * passed / counted.size();
    return Optional.of(
        new ScoredItem(
            id, Ternary.YES, possible, new ScoreRange(earned, earned, earned), Optional.empty()));
  }

  @Test
  void lowAndHighAreTheExtremesOverEveryChoice() {
    Seeds.each(400, this::lowAndHighAreTheExtremesOverEveryChoice);
  }

  private void lowAndHighAreTheExtremesOverEveryChoice(long seed) {
    Random random = new Random(seed);
    Method method = Method.values()[random.nextInt(3)];
    List<Area> areas = new ArrayList<>();
    Map<String, List<ScoredItem>> lots = new LinkedHashMap<>();
    for (int a = 0; a < 3; a++) {
      String id = "area-" + a;
      OptionalLong most =
          random.nextInt(3) == 0 ? OptionalLong.of(random.nextInt(4000)) : OptionalLong.empty();
      areas.add(RuleSets.area(id, 1000 * (1 + random.nextInt(9)), most));
      lots.put(
          id, IntStream.range(0, random.nextInt(4)).mapToObj(i -> lot(random, id + i)).toList());
    }
    Scale scale = RuleSets.scale(method, (long) HUNDRED);
    ScoreRange score = score(scale, areas, lots).score();
    List<ScoreRange> every = everyChoice(scale, areas, lots);

    assertThat(score.low()).isEqualTo(every.stream().mapToLong(ScoreRange::low).min().orElse(0));
    assertThat(score.high()).isEqualTo(every.stream().mapToLong(ScoreRange::high).max().orElse(0));
    assertThat(score.likely()).isBetween(score.low(), score.high());
  }

  private static ScoredItem lot(Random random, String id) {
    long possible = 1 + random.nextInt(6000);
    long low = random.nextLong(possible + 1);
    long high = low + random.nextLong(possible - low + 1);
    long likely = low + random.nextLong(high - low + 1);
    Optional<String> cause =
        random.nextInt(3) == 0 ? Optional.of("cause-" + random.nextInt(2)) : Optional.empty();
    Ternary applies = random.nextInt(3) == 0 ? Ternary.UNKNOWN : Ternary.YES;
    return new ScoredItem(id, applies, possible, new ScoreRange(low, likely, high), cause);
  }

  /**
   * Scores every choice of the items that may apply; a choice in which nothing counts is no score.
   */
  private static List<ScoreRange> everyChoice(
      Scale scale, List<Area> areas, Map<String, List<ScoredItem>> lots) {
    List<ScoredItem> maybes =
        lots.values().stream().flatMap(List::stream).filter(ScoredItem::maybe).toList();
    List<ScoreRange> scores = new ArrayList<>();
    for (int in = 0; in < 1 << maybes.size(); in++) {
      Map<String, List<ScoredItem>> chosen = new LinkedHashMap<>();
      int choice = in;
      lots.forEach(
          (area, all) ->
              chosen.put(
                  area,
                  all.stream()
                      .filter(lot -> !lot.maybe() || (choice & (1 << maybes.indexOf(lot))) != 0)
                      .map(
                          lot ->
                              new ScoredItem(
                                  lot.item(),
                                  Ternary.YES,
                                  lot.possible(),
                                  lot.earned(),
                                  lot.cause()))
                      .toList()));
      boolean counts = chosen.values().stream().anyMatch(list -> !list.isEmpty());
      boolean canCount = lots.values().stream().anyMatch(list -> !list.isEmpty());
      if (counts || !canCount || scale.method() == Method.DEDUCTIONS) {
        scores.add(score(scale, areas, chosen).score());
      }
    }
    return scores;
  }

  @Test
  void oneCauseLosesOnceAndAnAreaNoMoreThanItsLimit() {
    List<Area> areas = List.of(RuleSets.area("a", 10_000, OptionalLong.of(5_000)));
    Map<String, List<ScoredItem>> lots =
        Map.of(
            "a",
            List.of(
                fixed("one", 4_000, 0, Optional.of("wrong axle")),
                fixed("two", 3_000, 0, Optional.of("wrong axle")),
                fixed("three", 3_000, 1_000, Optional.empty())));
    StretchScore score = score(RuleSets.scale(Method.SUM, 10_000), areas, lots);

    // 4 once for the axle and 2 for the third are 6, of which the area loses 5: 10 − 5
    assertThat(score.score()).isEqualTo(new ScoreRange(5_000, 5_000, 5_000));
    assertThat(score.areas().get(0).inStretch().creditedBack())
        .containsExactly(
            creditedBack("wrong axle", 3_000, 3_000, 3_000), creditedBack("", 1_000, 1_000, 1_000));
  }

  private static CreditedBack creditedBack(String reason, long low, long likely, long high) {
    return new CreditedBack(
        reason, ExactMath.of(low, 1), ExactMath.of(likely, 1), ExactMath.of(high, 1));
  }

  /** Alone with its cause, an item loses all that it loses. */
  @Test
  void nothingIsSparedWhereACauseStandsOnce() {
    List<Area> areas = List.of(RuleSets.area("a", 10_000, OptionalLong.empty()));
    Map<String, List<ScoredItem>> lots =
        Map.of("a", List.of(fixed("one", 4_000, 0, Optional.of("wrong axle"))));
    StretchScore score = score(RuleSets.scale(Method.SUM, 10_000), areas, lots);
    assertThat(score.areas().get(0).inStretch().creditedBack()).isEmpty();
  }

  /** In low and high what is spared differs: the second loses 1 to 3 points of the first's 4. */
  @Test
  void whatIsSparedIsARangeToo() {
    List<Area> areas = List.of(RuleSets.area("a", 10_000, OptionalLong.empty()));
    Optional<String> cause = Optional.of("wrong axle");
    ScoredItem second =
        new ScoredItem("two", Ternary.YES, 3_000, new ScoreRange(0, 1_000, 2_000), cause);
    Map<String, List<ScoredItem>> lots =
        Map.of("a", List.of(fixed("one", 4_000, 0, cause), second));
    StretchScore score = score(RuleSets.scale(Method.SUM, 7_000), areas, lots);
    assertThat(score.areas().get(0).inStretch().creditedBack())
        .containsExactly(creditedBack("wrong axle", 3_000, 2_000, 1_000));
    assertThat(score.score()).isEqualTo(new ScoreRange(3_000, 3_000, 3_000));
  }

  /**
   * With it 4 of 8 points are earned, without it 4 of 4; in the middle 4 of 6, since what may apply
   * counts half.
   */
  @Test
  void whatMayApplyIsInTheLowAndOutOfTheHigh() {
    List<Area> areas = List.of(RuleSets.area("a", 10_000, OptionalLong.empty()));
    ScoredItem poor =
        new ScoredItem("poor", Ternary.UNKNOWN, 4_000, ScoreRange.ZERO, Optional.empty());
    List<ScoredItem> lots = List.of(fixed("sure", 4_000, 4_000, Optional.empty()), poor);
    for (Method method : List.of(Method.SUM, Method.AREAS)) {
      StretchScore score = score(RuleSets.scale(method, 60_000), areas, Map.of("a", lots));
      assertThat(score.score()).isEqualTo(new ScoreRange(30_000, 40_000, 60_000));
      assertThat(score.areas().get(0).inStretch().outOfLow()).isEmpty();
      assertThat(score.areas().get(0).inStretch().outOfHigh()).containsExactly("poor");
    }
    StretchScore deducted =
        score(RuleSets.scale(Method.DEDUCTIONS, 10_000), areas, Map.of("a", lots));
    assertThat(deducted.score()).isEqualTo(new ScoreRange(6_000, 8_000, 10_000));
    assertThat(deducted.areas().get(0).inStretch().outOfHigh()).containsExactly("poor");
  }

  private static ScoredItem fixed(String id, long possible, long earned, Optional<String> cause) {
    return new ScoredItem(id, Ternary.YES, possible, new ScoreRange(earned, earned, earned), cause);
  }

  @Test
  void deductionsNeverGoBelowZero() {
    List<Area> areas = List.of(RuleSets.area("a", 10_000, OptionalLong.empty()));
    Map<String, List<ScoredItem>> lots =
        Map.of("a", List.of(fixed("one", 9_000, 0, Optional.empty())));
    Scale scale = RuleSets.scale(Method.DEDUCTIONS, 5_000);
    assertThat(score(scale, areas, lots).score()).isEqualTo(ScoreRange.ZERO);
  }

  /** Of 10 points 10, 8 and 4 are lost, and the area loses no more than 5: 5, 3 and nothing. */
  @Test
  void whatTheLimitSparesMayBeOpen() {
    List<Area> areas = List.of(RuleSets.area("a", 10_000, OptionalLong.of(5_000)));
    ScoredItem open =
        new ScoredItem(
            "one", Ternary.YES, 10_000, new ScoreRange(0, 2_000, 6_000), Optional.empty());
    StretchScore score =
        score(RuleSets.scale(Method.SUM, 10_000), areas, Map.of("a", List.of(open)));
    assertThat(score.areas().get(0).inStretch().creditedBack())
        .containsExactly(creditedBack("", 5_000, 3_000, 0));
    assertThat(score.score()).isEqualTo(new ScoreRange(5_000, 5_000, 6_000));
  }
}
