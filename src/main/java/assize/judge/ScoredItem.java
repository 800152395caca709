package assize.judge;

import assize.evidence.Ternary;
import assize.judgment.ScoreRange;
import assize.ruleset.Item;
import java.util.Optional;

/**
 * One item as the score sees it.
 *
 * @param applies never {@code NO}
 * @param possible in thousandths of a point
 * @param earned in thousandths of a point, at most {@code possible}
 * @param cause what it shares its loss with
 */
record ScoredItem(
    String item, Ternary applies, long possible, ScoreRange earned, Optional<String> cause) {

  static ScoredItem of(Item item, Ternary applies, long possible, ScoreRange earned) {
    return new ScoredItem(item.id(), applies, possible, earned, item.cause());
  }

  /** The three figures of a range. */
  enum Bound {
    LOW,
    LIKELY,
    HIGH;

    long of(ScoreRange range) {
      return switch (this) {
        case LOW -> range.low();
        case LIKELY -> range.likely();
        case HIGH -> range.high();
      };
    }
  }

  long lost(Bound bound) {
    return possible - bound.of(earned);
  }

  boolean maybe() {
    return applies == Ternary.UNKNOWN;
  }
}
