package assize.judge;

import assize.evidence.Ternary;
import assize.judge.PeriodSplitter.Cut;
import assize.judgment.ItemInPeriod;
import assize.judgment.ScoreRange;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Points over all stretches: possible and likely points are means over the days, low and high the
 * least and the greatest share times the possible points.
 */
record PeriodMean(ScoreRange earned, long possible) {

  /** The figures of one stretch; exact. */
  record Figures(
      long days, BigFraction low, BigFraction likely, BigFraction high, BigFraction possible) {

    static Figures of(Cut cut, ScoreRange earned, long possible) {
      return new Figures(
          cut.days().days(),
          whole(earned.low()),
          whole(earned.likely()),
          whole(earned.high()),
          whole(possible));
    }
  }

  /** Returns the mean of an item over the stretches in which it may apply. */
  static PeriodMean of(List<Cut> cuts, List<ItemInPeriod> stretches) {
    List<Figures> figures = new ArrayList<>();
    for (int i = 0; i < cuts.size(); i++) {
      ItemInPeriod one = stretches.get(i);
      if (one.applies() != Ternary.NO) {
        figures.add(Figures.of(cuts.get(i), one.earned(), one.possible()));
      }
    }
    return of(figures);
  }

  static PeriodMean of(List<Figures> figures) {
    BigFraction days = BigFraction.ZERO;
    BigFraction possible = BigFraction.ZERO;
    BigFraction likely = BigFraction.ZERO;
    for (Figures one : figures) {
      BigFraction weight = whole(one.days());
      days = days.add(weight);
      possible = possible.add(one.possible().multiply(weight));
      likely = likely.add(one.likely().multiply(weight));
    }
    if (possible.signum() == 0) {
      return new PeriodMean(ScoreRange.ZERO, 0);
    }
    BigFraction least = BigFraction.ONE;
    BigFraction greatest = BigFraction.ZERO;
    for (Figures one : figures) {
      if (one.possible().signum() > 0) {
        least = ExactMath.min(least, one.low().divide(one.possible()));
        greatest = ExactMath.max(greatest, one.high().divide(one.possible()));
      }
    }
    BigFraction meanPossible = possible.divide(days);
    return new PeriodMean(
        new ScoreRange(
            ExactMath.round(least.multiply(meanPossible)),
            ExactMath.round(likely.divide(days)),
            ExactMath.round(greatest.multiply(meanPossible))),
        ExactMath.round(meanPossible));
  }

  private static BigFraction whole(long value) {
    return BigFraction.of(BigInteger.valueOf(value));
  }
}
