package assize.judge;

import assize.evidence.Kleene;
import assize.judgment.AspectJudgment;
import assize.judgment.ScoreRange;
import assize.judgment.Verdict;

/**
 * What one aspect comes to where nothing is allowed for.
 *
 * @param possible in thousandths of a point
 * @param alone an item that certainly applies and has no other aspect
 */
record Mark(Verdict verdict, long possible, ScoreRange earned, Slip alone) {
  static Mark of(AspectJudgment aspect) {
    Slip alone =
        new Slip(
            Kleene.YES,
            aspect.verdict(),
            Worst.departing(aspect.verdict()),
            aspect.possible(),
            aspect.earned(),
            aspect.earned());
    return new Mark(aspect.verdict(), aspect.possible(), aspect.earned(), alone);
  }
}
