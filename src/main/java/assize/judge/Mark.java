package assize.judge;

import assize.evidence.Kleene;
import assize.judgment.ScoreRange;
import assize.judgment.Verdict;

/**
 * What one aspect comes to where nothing is allowed for.
 *
 * @param possible in thousandths of a point
 * @param alone an item that certainly applies and has no other aspect
 */
record Mark(Verdict verdict, long possible, ScoreRange earned, Slip alone) {
  static Mark of(Verdict verdict, long possible, ScoreRange earned) {
    boolean departing = Worst.departing(verdict);
    return new Mark(
        verdict,
        possible,
        earned,
        new Slip(Kleene.YES, verdict, departing, possible, earned, earned));
  }
}
