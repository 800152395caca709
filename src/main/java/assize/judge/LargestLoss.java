package assize.judge;

import assize.aspect.Verdict;
import assize.judgment.AspectJudgment;
import assize.judgment.ItemInPeriod;
import assize.judgment.ItemJudgment;
import java.util.List;

/**
 * The most that one item loses, in thousandths of a point; zero where none loses anything.
 *
 * @param low in each stretch, in the low case
 * @param high in each stretch, in the high case, of items that certainly apply
 * @param likely over all stretches, of items that were found not to meet
 */
record LargestLoss(List<Long> low, List<Long> high, long likely) {
  LargestLoss {
    low = List.copyOf(low);
    high = List.copyOf(high);
  }

  static LargestLoss of(List<ItemJudgment> items, int stretches) {
    Long[] low = new Long[stretches];
    Long[] high = new Long[stretches];
    for (int i = 0; i < stretches; i++) {
      int at = i;
      low[i] =
          items.stream()
              .map(item -> item.stretches().get(at))
              .mapToLong(item -> item.possible() - item.earned().low())
              .reduce(0, Math::max);
      high[i] =
          items.stream()
              .map(item -> item.stretches().get(at))
              .filter(item -> item.verdict() != Verdict.MAY_APPLY)
              .mapToLong(item -> item.possible() - item.earned().high())
              .reduce(0, Math::max);
    }
    long likely =
        items.stream()
            .filter(item -> item.stretches().stream().anyMatch(LargestLoss::departing))
            .mapToLong(ItemJudgment::lost)
            .reduce(0, Math::max);
    return new LargestLoss(List.of(low), List.of(high), likely);
  }

  static boolean departing(ItemInPeriod item) {
    return item.aspects().stream().map(AspectJudgment::verdict).anyMatch(LargestLoss::departing);
  }

  /** Says whether something was found that does not meet. */
  static boolean departing(Verdict verdict) {
    return verdict == Verdict.INCORRECT
        || verdict == Verdict.PARTLY_CORRECT
        || verdict == Verdict.UNDECIDED;
  }
}
