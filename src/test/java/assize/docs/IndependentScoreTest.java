package assize.docs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import assize.aspect.Verdict;
import assize.judgment.AspectJudgment;
import assize.judgment.BuildPeriod;
import assize.judgment.ItemInPeriod;
import assize.judgment.ItemJudgment;
import assize.judgment.Judgment;
import assize.judgment.PositionJudgment;
import assize.judgment.ScoreRange;
import assize.ruleset.Area;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BinaryOperator;
import java.util.function.ToLongFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The scores of the demonstration, added up from the rows of their reports the long way round:
 * every choice of what may apply is tried, every combination of what sources say is multiplied out.
 */
class IndependentScoreTest {
  private static final MathContext PRECISE = MathContext.DECIMAL128;

  private static Demonstration demonstration;

  @BeforeAll
  static void judge() throws IOException {
    demonstration = new Demonstration();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"l45-4388", "l41-half-recorded", "q-1187", "l45-4388/areas", "l45-4388/no-worth"})
  void eachStretchAddsUp(String name) {
    Judgment judgment = demonstration.of(name);
    for (int i = 0; i < judgment.stretches().size(); i++) {
      ScoreRange score = judgment.stretches().get(i).score();
      List<ScoreRow> rows = rows(judgment, i);
      assertThat(extreme(judgment, rows, ScoreRow::low, BigDecimal::min)).isEqualTo(score.low());
      assertThat(extreme(judgment, rows, ScoreRow::high, BigDecimal::max)).isEqualTo(score.high());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"l45-4388", "l41-half-recorded", "q-1187"})
  void lowIsTheLeastHighTheGreatestAndLikelyTheMeanOverTheDays(String name) {
    Judgment judgment = demonstration.of(name);
    BigDecimal sum = BigDecimal.ZERO;
    long days = 0;
    long low = Long.MAX_VALUE;
    long high = 0;
    for (BuildPeriod stretch : judgment.stretches()) {
      long of = stretch.days().last().toEpochDay() - stretch.days().first().toEpochDay() + 1;
      sum = sum.add(BigDecimal.valueOf(of * stretch.score().likely()));
      days += of;
      low = Math.min(low, stretch.score().low());
      high = Math.max(high, stretch.score().high());
    }
    BigDecimal mean = Calculator.rounded(sum.divide(BigDecimal.valueOf(days), PRECISE), 0);
    assertThat(judgment.score()).isEqualTo(new ScoreRange(low, mean.longValueExact(), high));
  }

  @ParameterizedTest
  @ValueSource(strings = {"l41-half-recorded", "q-1187"})
  void likelyIsWhatEveryChoiceGivesOnTheAverage(String name) {
    Judgment judgment = demonstration.of(name);
    for (int i = 0; i < judgment.stretches().size(); i++) {
      List<ScoreRow> rows = rows(judgment, i);
      List<Map<String, Sum>> ways = ways(judgment, rows, ScoreRow::likely);
      BigDecimal earned = BigDecimal.ZERO;
      BigDecimal possible = BigDecimal.ZERO;
      for (Map<String, Sum> way : ways) {
        for (Sum area : way.values()) {
          earned = earned.add(BigDecimal.valueOf(area.possible() - area.lost()));
          possible = possible.add(BigDecimal.valueOf(area.possible()));
        }
      }
      BigDecimal outOf = BigDecimal.valueOf(judgment.rules().scale().outOf());
      BigDecimal likely =
          switch (judgment.rules().scale().method()) {
            case SUM -> earned.multiply(outOf).divide(possible, PRECISE);
            case DEDUCTIONS ->
                outOf.subtract(
                    possible.subtract(earned).divide(BigDecimal.valueOf(ways.size()), PRECISE));
            case AREAS -> throw new AssertionError("not here");
          };
      assertThat(judgment.stretches().get(i).score().likely())
          .isEqualTo(Calculator.rounded(likely, 0).longValueExact());
    }
  }

  /** What each source leaves standing, as the rule set and the record of the demonstration say. */
  @ParameterizedTest
  @CsvSource({
    "l45-4388, tool-roll, count, 10=.9 12=.5, 10 12",
    "l45-4388, frame-gloss, gloss, semi-gloss=.9 20_to_30=.7 gloss=.5, semi-gloss 20_to_30 gloss",
    "l45-4388, wheel-color, color, wheel-cream=.9 wheel-cream=.7 chassis-black=.5, wheel-cream",
    "l45-4388, headlamp-shells, finish, nickel=.9 stove-enamel|oil-black=.7,"
        + " nickel stove-enamel oil-black",
    "l45-4388, bed-color, color, works-green=.9 works-green|chassis-black=.7 chassis-black=.7"
        + " same_as_cab-color=.5 same_as_cab-color=.5 works-green|same_as_cab-color|other=.7"
        + " same_as_cab-color=.5 chassis-black=.7, works-green chassis-black same_as_cab-color",
  })
  void dempstersRule(String record, String item, String word, String sources, String judged) {
    Set<String> frame = new HashSet<>(Set.of("other"));
    for (String source : sources.split(" ")) {
      frame.addAll(List.of(source.split("=")[0].split("\\|")));
    }
    Map<Set<String>, BigDecimal> masses = Map.of(frame, BigDecimal.ONE);
    for (String source : sources.split(" ")) {
      String[] parts = source.split("=");
      masses = combined(masses, Set.of(parts[0].split("\\|")), new BigDecimal(parts[1]));
    }
    BigDecimal conflict = masses.getOrDefault(Set.<String>of(), BigDecimal.ZERO);
    BigDecimal rest = BigDecimal.ONE.subtract(conflict);
    AspectJudgment aspect = aspect(demonstration.of(record), item, word);
    assertThat(aspect.conflict()).isCloseTo(conflict.doubleValue(), within(1e-12));
    assertThat(aspect.positions()).hasSize(frame.size() - 1);
    Set<String> live = Set.of(judged.split(" "));
    BigDecimal bets = BigDecimal.ZERO;
    for (String position : live) {
      bets = bets.add(bet(masses, position));
    }
    for (PositionJudgment position : aspect.positions()) {
      String name = position.accepts().get(0).key().replace(' ', '_');
      BigDecimal belief = masses.getOrDefault(Set.of(name), BigDecimal.ZERO);
      assertThat(position.belief())
          .isCloseTo(belief.divide(rest, PRECISE).doubleValue(), within(1e-12));
      BigDecimal share =
          live.contains(name) ? bet(masses, name).divide(bets, PRECISE) : BigDecimal.ZERO;
      assertThat(position.share()).isCloseTo(share.doubleValue(), within(1e-12));
    }
  }

  @Test
  void theCalculatorKnowsTheNormalDistribution() throws IOException {
    Path table = Path.of("src/test/resources/published/measure/phi.csv");
    List<String[]> rows;
    try (Stream<String> lines = Files.lines(table)) {
      rows =
          lines
              .filter(line -> line.matches("[-0-9].*"))
              .map(line -> line.split(","))
              .filter(row -> Math.abs(Double.parseDouble(row[0])) <= 8)
              .toList();
    }
    assertThat(rows).hasSizeGreaterThan(20);
    assertThat(rows)
        .allSatisfy(
            row ->
                assertThat(Calculator.phi(Double.parseDouble(row[0])))
                    .isCloseTo(Double.parseDouble(row[1]), within(1e-9)));
  }

  /** An item as its report prints it, within one stretch; in thousandths of a point. */
  private record ScoreRow(
      String item,
      String area,
      String cause,
      boolean may,
      long possible,
      long low,
      long likely,
      long high) {}

  private record Sum(long possible, long lost) {}

  private static List<ScoreRow> rows(Judgment judgment, int stretch) {
    List<ScoreRow> rows = new ArrayList<>();
    for (ItemJudgment item : judgment.items()) {
      ItemInPeriod one = item.stretches().get(stretch);
      if (one.possible() > 0) {
        rows.add(
            new ScoreRow(
                item.item().id(),
                item.item().area(),
                item.item().cause().orElse(""),
                one.verdict() == Verdict.MAY_APPLY,
                one.possible(),
                one.earned().low(),
                one.earned().likely(),
                one.earned().high()));
      }
    }
    return rows;
  }

  /** Adds up each area once for every choice of the items that may apply. */
  private static List<Map<String, Sum>> ways(
      Judgment judgment, List<ScoreRow> rows, ToLongFunction<ScoreRow> earned) {
    List<ScoreRow> may = rows.stream().filter(ScoreRow::may).toList();
    List<Map<String, Sum>> ways = new ArrayList<>();
    for (int in = 0; in < 1 << may.size(); in++) {
      int chosen = in;
      List<ScoreRow> counted =
          rows.stream().filter(row -> !row.may() || (chosen >> may.indexOf(row) & 1) == 1).toList();
      Map<String, Sum> areas = new HashMap<>();
      for (Area area : judgment.rules().areas()) {
        areas.put(
            area.id(),
            sum(
                area,
                counted.stream().filter(row -> row.area().equals(area.id())).toList(),
                earned));
      }
      ways.add(areas);
    }
    return ways;
  }

  private static Sum sum(Area area, List<ScoreRow> rows, ToLongFunction<ScoreRow> earned) {
    long possible = 0;
    long lost = 0;
    Map<String, Long> dearest = new HashMap<>();
    for (ScoreRow row : rows) {
      long one = row.possible() - earned.applyAsLong(row);
      possible += row.possible();
      if (row.cause().isEmpty()) {
        lost += one;
      } else {
        dearest.merge(row.cause(), one, Math::max);
      }
    }
    lost += dearest.values().stream().mapToLong(Long::longValue).sum();
    return new Sum(possible, Math.min(lost, area.maxLoss().orElse(Long.MAX_VALUE)));
  }

  private static long extreme(
      Judgment judgment,
      List<ScoreRow> rows,
      ToLongFunction<ScoreRow> earned,
      BinaryOperator<BigDecimal> better) {
    return ways(judgment, rows, earned).stream()
        .map(way -> total(judgment, way))
        .reduce(better)
        .map(exact -> Calculator.rounded(exact, 0).longValueExact())
        .orElseThrow();
  }

  private static BigDecimal total(Judgment judgment, Map<String, Sum> areas) {
    BigDecimal outOf = BigDecimal.valueOf(judgment.rules().scale().outOf());
    long possible = areas.values().stream().mapToLong(Sum::possible).sum();
    long lost = areas.values().stream().mapToLong(Sum::lost).sum();
    return switch (judgment.rules().scale().method()) {
      case SUM -> outOf.multiply(ratio(possible - lost, possible), PRECISE);
      case DEDUCTIONS -> outOf.subtract(BigDecimal.valueOf(lost)).max(BigDecimal.ZERO);
      case AREAS -> {
        BigDecimal weighed = BigDecimal.ZERO;
        BigDecimal points = BigDecimal.ZERO;
        for (Area area : judgment.rules().areas()) {
          Sum sum = areas.getOrDefault(area.id(), new Sum(0, 0));
          if (sum.possible() > 0) {
            BigDecimal weight = BigDecimal.valueOf(area.points());
            BigDecimal share = ratio(sum.possible() - sum.lost(), sum.possible());
            weighed = weighed.add(share.multiply(weight, PRECISE), PRECISE);
            points = points.add(weight);
          }
        }
        yield outOf.multiply(weighed, PRECISE).divide(points, PRECISE);
      }
    };
  }

  private static BigDecimal ratio(long earned, long possible) {
    return BigDecimal.valueOf(earned).divide(BigDecimal.valueOf(possible), PRECISE);
  }

  private static Map<Set<String>, BigDecimal> combined(
      Map<Set<String>, BigDecimal> masses, Set<String> stands, BigDecimal weight) {
    Map<Set<String>, BigDecimal> product = new HashMap<>();
    masses.forEach(
        (set, mass) -> {
          Set<String> common = new HashSet<>(set);
          common.retainAll(stands);
          product.merge(common, mass.multiply(weight), BigDecimal::add);
          product.merge(set, mass.multiply(BigDecimal.ONE.subtract(weight)), BigDecimal::add);
        });
    return product;
  }

  private static BigDecimal bet(Map<Set<String>, BigDecimal> masses, String position) {
    BigDecimal bet = BigDecimal.ZERO;
    for (Map.Entry<Set<String>, BigDecimal> entry : masses.entrySet()) {
      if (entry.getKey().contains(position)) {
        bet = bet.add(entry.getValue().divide(BigDecimal.valueOf(entry.getKey().size()), PRECISE));
      }
    }
    return bet;
  }

  private static AspectJudgment aspect(Judgment judgment, String item, String word) {
    return judgment.items().stream()
        .filter(it -> it.item().id().equals(item))
        .flatMap(it -> it.stretches().get(0).aspects().stream())
        .filter(it -> it.rule().aspect().word().equals(word))
        .findFirst()
        .orElseThrow();
  }
}
