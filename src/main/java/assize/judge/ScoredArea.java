package assize.judge;

import assize.judge.ScoredItem.Bound;
import assize.judgment.ScoreRange;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The items of one area as its score sees them: what certainly applies and shares its loss with no
 * other is added up at once, the others are kept one by one.
 */
final class ScoredArea {
  private final List<ScoredItem> others = new ArrayList<>(0);
  private long possible;
  private long low;
  private long likely;
  private long high;

  /** Adds an item, whatever it hangs together with. */
  void add(ScoredItem lot) {
    if (lot.maybe() || lot.cause().isPresent()) {
      others.add(lot);
    } else {
      plain(lot.possible(), lot.earned());
    }
  }

  /** Adds an item that certainly applies and shares its loss with no other. */
  void plain(long of, ScoreRange earned) {
    possible += of;
    low += earned.low();
    likely += earned.likely();
    high += earned.high();
  }

  /** Returns the points possible of what was added up, in thousandths. */
  long possible() {
    return possible;
  }

  /** Returns the points lost of what was added up, in thousandths. */
  long lost(Bound bound) {
    return possible
        - switch (bound) {
          case LOW -> low;
          case LIKELY -> likely;
          case HIGH -> high;
        };
  }

  /** Returns those that may apply or that share their loss, in the order added. */
  List<ScoredItem> others() {
    return Collections.unmodifiableList(others);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ScoredArea that
        && possible == that.possible
        && low == that.low
        && likely == that.likely
        && high == that.high
        && others.equals(that.others);
  }

  @Override
  public int hashCode() {
    return Long.hashCode(low * 31 + likely) + others.hashCode();
  }
}
