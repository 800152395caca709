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
    BigFraction weighted = BigFraction.ZERO;
    long weights = 0;
    for (int i = 0; i < lots.size(); i++) {
      Area area = rules.areas().get(i);
      long of = lots.get(i).possible();
      long one = Math.min(lots.get(i).lost(bound), area.most().orElse(Long.MAX_VALUE));
      possible += of;
      lost += one;
      if (of > 0) {
        weights += area.points();
        weighted = weighted.add(Exact.of(of - one, of).multiply(Exact.of(area.points(), 1)));
      }
    }
    long outOf = rules.scale().outOf();
    return switch (rules.scale().method()) {
      case SUM -> possible == 0 ? 0 : Exact.part(outOf, Exact.of(possible - lost, possible));
      case AREAS -> weights == 0 ? 0 : Exact.part(outOf, weighted.divide(Exact.of(weights, 1)));
      case DEDUCTIONS -> Math.max(0, outOf - lost);
    };
  }
}
