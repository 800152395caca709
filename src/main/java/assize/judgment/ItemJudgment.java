package assize.judgment;

import assize.aspect.Verdict;
import assize.evidence.DisputeState;
import assize.ruleset.Item;
import java.util.List;

/**
 * One item over all build days.
 *
 * @param dispute the state of its most disputed aspect
 * @param earned low and high over the stretches in which it may apply, likely the mean over their
 *     days; before its area gives back what a shared cause or the area's limit spares
 * @param possible in thousandths of a point; 0 where it applies in no stretch
 * @param stretches one for each stretch of the judgment
 */
public record ItemJudgment(
    Item item,
    Verdict verdict,
    DisputeState dispute,
    ScoreRange earned,
    long possible,
    List<ItemInPeriod> stretches) {
  public ItemJudgment {
    stretches = List.copyOf(stretches);
  }

  /** Returns the points lost in the likely case, in thousandths. */
  public long lost() {
    return possible - earned.likely();
  }
}
