package assize.judge;

import assize.evidence.Kleene;
import assize.judge.Stretches.Cut;
import assize.judgment.ItemInStretch;
import assize.judgment.ScoreRange;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Points over all stretches: possible and likely points are means over the days, low and high the
 * least and the greatest share times the possible points.
 */
record Mean(ScoreRange earned, long possible) {

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
  static Mean of(List<Cut> cuts, List<ItemInStretch> stretches) {
    List<Figures> figures = new ArrayList<>();
    for (int i = 0; i < cuts.size(); i++) {
      ItemInStretch one = stretches.get(i);
      if (one.applies() != Kleene.NO) {
        figures.add(Figures.of(cuts.get(i), one.earned(), one.possible()));
      }
    }
    return of(figures);
  }

  static Mean of(List<Figures> figures) {
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
      return new Mean(ScoreRange.ZERO, 0);
    }
    BigFraction least = BigFraction.ONE;
    BigFraction greatest = BigFraction.ZERO;
    for (Figures one : figures) {
      if (one.possible().signum() > 0) {
        least = Exact.min(least, one.low().divide(one.possible()));
        greatest = Exact.max(greatest, one.high().divide(one.possible()));
      }
    }
    BigFraction meanPossible = possible.divide(days);
    return new Mean(
        new ScoreRange(
            Exact.round(least.multiply(meanPossible)),
            Exact.round(likely.divide(days)),
            Exact.round(greatest.multiply(meanPossible))),
        Exact.round(meanPossible));
  }

  private static BigFraction whole(long value) {
    return BigFraction.of(BigInteger.valueOf(value));
  }
}
