package assize.judge;

import static assize.judge.ScoredItem.Bound.HIGH;
import static assize.judge.ScoredItem.Bound.LIKELY;
import static assize.judge.ScoredItem.Bound.LOW;

import assize.judge.CauseGroup.Choice;
import assize.judge.ScoredItem.Bound;
import assize.judgment.AreaJudgment.AreaInPeriod;
import assize.judgment.AreaJudgment.CreditedBack;
import assize.judgment.ScoreRange;
import assize.judgment.Tally;
import assize.ruleset.Area;
import assize.ruleset.RuleSet;
import assize.ruleset.Scale;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/** The score of one stretch of build days, from the points of its items. */
final class ScoreCalculator {
  private final Scale scale;
  private final List<Area> areas;
  private final Map<Bound, List<List<CauseGroup>>> blocks = new LinkedHashMap<>();

  private ScoreCalculator(RuleSet rules, List<ScoredArea> lots, Recall recall) {
    this.scale = rules.scale();
    this.areas = rules.areas();
    for (Bound bound : Bound.values()) {
      blocks.put(
          bound,
          IntStream.range(0, areas.size())
              .mapToObj(i -> recall.blocks(lots.get(i), areas.get(i), bound))
              .toList());
    }
  }

  /**
   * What scoring one stretch gave.
   *
   * @param areas one for each area of the rule set
   */
  record StretchScore(ScoreRange score, List<AreaScore> areas) {}

  /**
   * One area.
   *
   * @param meanLow points earned in the low case, an item that may apply counting half
   * @param meanHigh the same in the high case
   * @param leastShare the least share of its points that it can earn; empty where nothing can count
   * @param greatestShare the greatest; empty where it can be that nothing counts
   */
  record AreaScore(
      AreaInPeriod inStretch,
      BigFraction meanLow,
      BigFraction meanHigh,
      Optional<BigFraction> leastShare,
      Optional<BigFraction> greatestShare) {}

  /** Scores one stretch: the lots of each area, in their order. */
  static StretchScore score(RuleSet rules, List<ScoredArea> lots) {
    return score(rules, lots, Recall.nothing());
  }

  /** Scores one stretch, unless the same was scored before. */
  static StretchScore score(RuleSet rules, List<ScoredArea> lots, Recall recall) {
    return recall.score(lots, () -> new ScoreCalculator(rules, lots, recall).score());
  }

  private StretchScore score() {
    List<List<Choice>> low = choice(LOW);
    List<List<Choice>> high = choice(HIGH);
    List<AreaScore> scores = new ArrayList<>();
    for (int i = 0; i < areas.size(); i++) {
      scores.add(area(i, low.get(i), high.get(i)));
    }
    long lowScore = ExactMath.round(extreme(LOW, low));
    long highScore = ExactMath.round(extreme(HIGH, high));
    long likely = ExactMath.round(likely(scores));
    return new StretchScore(new ScoreRange(lowScore, likely, highScore), scores);
  }

  /** Returns the chosen way of each block of each area for the least or the greatest score. */
  private List<List<Choice>> choice(Bound bound) {
    List<List<CauseGroup>> ofAreas = blocksOf(bound);
    return switch (scale.method()) {
      case SUM -> split(best(ofAreas.stream().flatMap(List::stream).toList(), bound), ofAreas);
      case AREAS -> ofAreas.stream().map(ofArea -> best(ofArea, bound)).toList();
      case DEDUCTIONS ->
          ofAreas.stream()
              .map(ofArea -> ofArea.stream().map(block -> dearest(block, bound)).toList())
              .toList();
    };
  }

  private List<List<CauseGroup>> blocksOf(Bound bound) {
    List<List<CauseGroup>> found = blocks.get(bound);
    return found == null ? List.of() : found;
  }

  private static List<Choice> best(List<CauseGroup> blocks, Bound bound) {
    Optional<List<Choice>> best =
        bound == LOW ? RatioBounds.least(blocks) : RatioBounds.greatest(blocks);
    return best.orElseGet(() -> blocks.stream().map(block -> block.ways().get(0)).toList());
  }

  private static List<List<Choice>> split(List<Choice> ways, List<List<CauseGroup>> ofAreas) {
    List<List<Choice>> parts = new ArrayList<>();
    int from = 0;
    for (List<CauseGroup> ofArea : ofAreas) {
      parts.add(ways.subList(from, from + ofArea.size()));
      from += ofArea.size();
    }
    return parts;
  }

  private static Choice dearest(CauseGroup block, Bound bound) {
    Comparator<Choice> byLoss = Comparator.comparingLong(Choice::lost);
    Comparator<Choice> order = bound == LOW ? byLoss.reversed() : byLoss;
    return block.ways().stream().min(order).orElseThrow();
  }

  private BigFraction extreme(Bound bound, List<List<Choice>> chosen) {
    return switch (scale.method()) {
      case SUM ->
          share(
              chosen.stream().mapToLong(RatioBounds::earned).sum(),
              chosen.stream().mapToLong(RatioBounds::possible).sum());
      case AREAS -> extremeOfAreas(bound, chosen);
      case DEDUCTIONS ->
          deducted(whole(chosen.stream().flatMap(List::stream).mapToLong(Choice::lost).sum()));
    };
  }

  /** An area in which nothing certainly counts is in or out, whichever gives the extreme. */
  private BigFraction extremeOfAreas(Bound bound, List<List<Choice>> chosen) {
    BigFraction weighted = BigFraction.ZERO;
    BigFraction weights = BigFraction.ZERO;
    List<BigFraction[]> optional = new ArrayList<>();
    for (int i = 0; i < areas.size(); i++) {
      long possible = RatioBounds.possible(chosen.get(i));
      if (possible == 0) {
        continue;
      }
      BigFraction ratio = ratio(RatioBounds.earned(chosen.get(i)), possible);
      BigFraction weight = whole(areas.get(i).points());
      if (certain(i)) {
        weighted = weighted.add(ratio.multiply(weight));
        weights = weights.add(weight);
      } else {
        optional.add(new BigFraction[] {ratio, weight});
      }
    }
    Comparator<BigFraction[]> byRatio = Comparator.comparing(one -> one[0]);
    optional.sort(bound == LOW ? byRatio : byRatio.reversed());
    int sign = bound == LOW ? 1 : -1;
    for (BigFraction[] one : optional) {
      boolean nothingYet = weights.signum() == 0;
      if (nothingYet || one[0].compareTo(weighted.divide(weights)) * sign < 0) {
        weighted = weighted.add(one[0].multiply(one[1]));
        weights = weights.add(one[1]);
      }
    }
    return weights.signum() == 0 ? BigFraction.ZERO : weighted.divide(weights).multiply(outOf());
  }

  private BigFraction likely(List<AreaScore> scores) {
    Tally all = scores.stream().map(it -> it.inStretch().likely()).reduce(Tally.EMPTY, Tally::plus);
    return switch (scale.method()) {
      case SUM ->
          all.isEmpty() ? BigFraction.ZERO : all.earned().divide(all.possible()).multiply(outOf());
      case AREAS -> likelyOfAreas(scores);
      case DEDUCTIONS ->
          blocksOf(LIKELY).stream()
              .flatMap(List::stream)
              .map(block -> block.mean(Choice::lost))
              .reduce(BigFraction::add)
              .map(this::deducted)
              .orElse(outOf());
    };
  }

  private BigFraction likelyOfAreas(List<AreaScore> scores) {
    BigFraction weighted = BigFraction.ZERO;
    BigFraction weights = BigFraction.ZERO;
    for (int i = 0; i < areas.size(); i++) {
      Tally tally = scores.get(i).inStretch().likely();
      if (tally.isEmpty()) {
        continue;
      }
      BigFraction nothingCounts =
          blocksOf(LIKELY).get(i).stream()
              .map(block -> block.mean(way -> way.possible() == 0 ? 1 : 0))
              .reduce(BigFraction.ONE, BigFraction::multiply);
      BigFraction weight =
          whole(areas.get(i).points()).multiply(BigFraction.ONE.subtract(nothingCounts));
      weighted = weighted.add(tally.earned().divide(tally.possible()).multiply(weight));
      weights = weights.add(weight);
    }
    return weights.signum() == 0 ? BigFraction.ZERO : weighted.divide(weights).multiply(outOf());
  }

  private AreaScore area(int i, List<Choice> low, List<Choice> high) {
    List<CauseGroup> likely = blocksOf(LIKELY).get(i);
    AreaInPeriod inStretch =
        new AreaInPeriod(
            tally(low),
            new Tally(mean(likely, Choice::earned), mean(likely, Choice::possible)),
            tally(high),
            out(low),
            out(high),
            creditedBack(i, low, high));
    return new AreaScore(
        inStretch,
        mean(blocksOf(LOW).get(i), Choice::earned),
        mean(blocksOf(HIGH).get(i), Choice::earned),
        RatioBounds.least(blocksOf(LOW).get(i)).map(ScoreCalculator::share),
        RatioBounds.greatest(blocksOf(HIGH).get(i))
            .filter(ways -> certain(i))
            .map(ScoreCalculator::share));
  }

  /** Says whether something in an area counts, whatever may apply. */
  private boolean certain(int i) {
    return blocksOf(LIKELY).get(i).stream()
        .anyMatch(block -> block.ways().stream().allMatch(way -> way.possible() > 0));
  }

  private static BigFraction share(List<Choice> ways) {
    return ratio(RatioBounds.earned(ways), RatioBounds.possible(ways));
  }

  private List<CreditedBack> creditedBack(int i, List<Choice> low, List<Choice> high) {
    Map<String, BigFraction> inLow = new LinkedHashMap<>();
    Map<String, BigFraction> inLikely = new LinkedHashMap<>();
    Map<String, BigFraction> inHigh = new LinkedHashMap<>();
    for (int b = 0; b < low.size(); b++) {
      add(inLow, low.get(b).creditedBack(), 1);
      add(inHigh, high.get(b).creditedBack(), 1);
      CauseGroup block = blocksOf(LIKELY).get(i).get(b);
      block.ways().forEach(way -> add(inLikely, way.creditedBack(), block.ways().size()));
    }
    Set<String> reasons = new java.util.LinkedHashSet<>(inLow.keySet());
    reasons.addAll(inLikely.keySet());
    reasons.addAll(inHigh.keySet());
    BigFraction none = BigFraction.ZERO;
    return reasons.stream()
        .map(
            reason ->
                new CreditedBack(
                    reason,
                    inLow.getOrDefault(reason, none),
                    inLikely.getOrDefault(reason, none),
                    inHigh.getOrDefault(reason, none)))
        .filter(it -> it.low().signum() + it.likely().signum() + it.high().signum() > 0)
        .toList();
  }

  private static void add(Map<String, BigFraction> sums, Map<String, Long> spared, int ways) {
    spared.forEach((reason, points) -> sums.merge(reason, ratio(points, ways), BigFraction::add));
  }

  private static Tally tally(List<Choice> ways) {
    return new Tally(whole(RatioBounds.earned(ways)), whole(RatioBounds.possible(ways)));
  }

  private static Set<String> out(List<Choice> ways) {
    Set<String> out = new HashSet<>();
    ways.forEach(way -> out.addAll(way.out()));
    return out;
  }

  private static BigFraction mean(List<CauseGroup> blocks, ToLongFunction<Choice> figure) {
    return blocks.stream()
        .map(block -> block.mean(figure))
        .reduce(BigFraction.ZERO, BigFraction::add);
  }

  private BigFraction share(long earned, long possible) {
    return possible == 0 ? BigFraction.ZERO : ratio(earned, possible).multiply(outOf());
  }

  private BigFraction deducted(BigFraction lost) {
    BigFraction left = outOf().subtract(lost);
    return left.signum() < 0 ? BigFraction.ZERO : left;
  }

  private BigFraction outOf() {
    return whole(scale.outOf());
  }

  private static BigFraction ratio(long earned, long possible) {
    return BigFraction.of(BigInteger.valueOf(earned), BigInteger.valueOf(possible));
  }

  private static BigFraction whole(long value) {
    return BigFraction.of(BigInteger.valueOf(value));
  }
}
