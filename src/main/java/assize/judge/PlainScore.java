package assize.judge;

import assize.judge.Lot.Bound;
import assize.judgment.ScoreRange;
import assize.ruleset.Area;
import assize.ruleset.RuleSet;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The score of one stretch alone: added up directly where nothing is left to choose, by {@link
 * Scoring} where an item may apply or shares its loss.
 */
final class PlainScore {
  private PlainScore() {}

  static ScoreRange of(RuleSet rules, List<Lots> lots) {
    boolean plain = lots.stream().allMatch(area -> area.others().isEmpty());
    return plain
        ? new ScoreRange(
            score(rules, lots, Bound.LOW),
            score(rules, lots, Bound.LIKELY),
            score(rules, lots, Bound.HIGH))
        : Scoring.score(rules, lots).score();
  }

  private static long score(RuleSet rules, List<Lots> lots, Bound bound) {
    long possible = 0;
    long lost = 0;
    for (int i = 0; i < lots.size(); i++) {
      possible += lots.get(i).possible();
      lost += lost(lots.get(i), rules.areas().get(i), bound);
    }
    long outOf = rules.scale().outOf();
    return switch (rules.scale().method()) {
      case SUM -> possible == 0 ? 0 : Exact.part(outOf, possible - lost, possible);
      case AREAS -> Exact.part(outOf, ofAreas(rules, lots, bound));
      case DEDUCTIONS -> Math.max(0, outOf - lost);
    };
  }

  private static long lost(Lots lots, Area area, Bound bound) {
    return Math.min(lots.lost(bound), area.most().orElse(Long.MAX_VALUE));
  }

  private static BigFraction ofAreas(RuleSet rules, List<Lots> lots, Bound bound) {
    BigFraction weighted = BigFraction.ZERO;
    long weights = 0;
    for (int i = 0; i < lots.size(); i++) {
      Area area = rules.areas().get(i);
      long possible = lots.get(i).possible();
      if (possible > 0) {
        long earned = possible - lost(lots.get(i), area, bound);
        weighted = weighted.add(Exact.of(earned, possible).multiply(Exact.of(area.points(), 1)));
        weights += area.points();
      }
    }
    return weights == 0 ? BigFraction.ZERO : weighted.divide(Exact.of(weights, 1));
  }
}
