package assize.judgment;

import assize.ruleset.Area;
import java.util.List;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One area over all build days.
 *
 * @param earned the least and the greatest share over the stretches, times {@code possible}; likely
 *     the mean over their days; an item that may apply counts half
 * @param possible the mean over the days, in thousandths of a point
 * @param stretches one for each stretch of the judgment
 */
public record AreaJudgment(
    Area area, ScoreRange earned, long possible, List<AreaInPeriod> stretches) {
  public AreaJudgment {
    stretches = List.copyOf(stretches);
  }

  /**
   * One area within one stretch: what counts in the low, the likely and the high score.
   *
   * @param outOfLow items that may apply and are left out of the low score
   * @param outOfHigh items that may apply and are left out of the high score
   * @param creditedBack points that are not lost twice
   */
  public record AreaInPeriod(
      Tally low,
      Tally likely,
      Tally high,
      Set<String> outOfLow,
      Set<String> outOfHigh,
      List<CreditedBack> creditedBack) {
    public AreaInPeriod {
      outOfLow = Set.copyOf(outOfLow);
      outOfHigh = Set.copyOf(outOfHigh);
      creditedBack = List.copyOf(creditedBack);
    }
  }

  /**
   * Points given back, in thousandths, because another item of the same cause already lost them or
   * because the area had lost all that it may lose.
   *
   * @param reason the cause, or empty for the area's limit
   */
  public record CreditedBack(
      String reason, BigFraction low, BigFraction likely, BigFraction high) {}
}
