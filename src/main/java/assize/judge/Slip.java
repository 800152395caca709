package assize.judge;

import assize.evidence.Kleene;
import assize.judgment.ItemInStretch;
import assize.judgment.ScoreRange;
import assize.judgment.Verdict;
import java.util.List;

/**
 * The figures of one item, or of one of its aspects, within one stretch.
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

  /** Returns what one aspect comes to, as if it were an item of its own. */
  static Slip of(Verdict verdict, long possible, ScoreRange earned) {
    return new Slip(Kleene.YES, verdict, Worst.departing(verdict), possible, earned, earned);
  }

  /** Returns the figures of an item that has one aspect. */
  static Slip of(Kleene applies, Slip aspect) {
    return applies == Kleene.YES
        ? aspect
        : new Slip(
            applies,
            Verdict.MAY_APPLY,
            aspect.departing(),
            aspect.possible(),
            aspect.earned(),
            aspect.strict());
  }

  /** Adds up the aspects of an item. */
  static Slip of(Kleene applies, List<Slip> aspects) {
    if (aspects.isEmpty()) {
      return OUT;
    }
    long possible = 0;
    ScoreRange earned = ScoreRange.ZERO;
    boolean departing = false;
    for (Slip aspect : aspects) {
      possible += aspect.possible();
      earned = earned.plus(aspect.earned());
      departing |= aspect.departing();
    }
    Verdict verdict =
        applies == Kleene.UNKNOWN
            ? Verdict.MAY_APPLY
            : ItemJudge.ofAspects(aspects.stream().map(Slip::verdict).toList());
    return new Slip(applies, verdict, departing, possible, earned, earned);
  }

  /** Says whether it counts. */
  boolean counts() {
    return applies != Kleene.NO;
  }
}
