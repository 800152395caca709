package assize.judge;

import assize.evidence.Kleene;
import assize.judgment.ItemInStretch;
import assize.judgment.ScoreRange;
import assize.judgment.Verdict;
import java.util.List;

/**
 * The figures of one item within one stretch.
 *
 * @param departing whether something was found that does not meet
 * @param possible in thousandths of a point; 0 where it does not apply
 * @param earned allowances included
 * @param strict without allowances
 */
record Slip(
    Kleene applies,
    Verdict verdict,
    boolean departing,
    long possible,
    ScoreRange earned,
    ScoreRange strict) {
  static final Slip OUT =
      new Slip(Kleene.NO, Verdict.DOES_NOT_APPLY, false, 0, ScoreRange.ZERO, ScoreRange.ZERO);

  static Slip of(ItemInStretch item) {
    return item.aspects().isEmpty()
        ? OUT
        : new Slip(
            item.applies(),
            item.verdict(),
            Worst.departing(item),
            item.possible(),
            item.earned(),
            item.strict());
  }

  /** Returns the figures of an item that has one aspect. */
  static Slip of(Kleene applies, Mark mark) {
    return applies == Kleene.YES
        ? mark.alone()
        : new Slip(
            applies,
            Verdict.MAY_APPLY,
            mark.alone().departing(),
            mark.possible(),
            mark.earned(),
            mark.earned());
  }

  /** Adds up the aspects of an item. */
  static Slip of(Kleene applies, List<Mark> marks) {
    if (marks.isEmpty()) {
      return OUT;
    }
    long possible = 0;
    ScoreRange earned = ScoreRange.ZERO;
    boolean departing = false;
    for (Mark mark : marks) {
      possible += mark.possible();
      earned = earned.plus(mark.earned());
      departing |= Worst.departing(mark.verdict());
    }
    Verdict verdict =
        applies == Kleene.UNKNOWN
            ? Verdict.MAY_APPLY
            : ItemJudge.ofAspects(marks.stream().map(Mark::verdict).toList());
    return new Slip(applies, verdict, departing, possible, earned, earned);
  }

  /** Says whether it counts. */
  boolean counts() {
    return applies != Kleene.NO;
  }
}
