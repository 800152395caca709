package assize.judgment;

import assize.ruleset.Area;
import java.util.List;

/**
 * One area over all build days.
 *
 * @param earned low and high over the stretches, likely the mean over their days; rounded
 * @param possible likely points possible, in thousandths
 * @param stretches one for each stretch of the judgment
 */
public record AreaJudgment(Area area, ScoreRange earned, long possible, List<InStretch> stretches) {
  public AreaJudgment {
    stretches = List.copyOf(stretches);
  }

  /**
   * One area within one stretch: what counts in the low, the likely and the high score.
   *
   * @param givenBack points given back because the area had lost all that it may lose
   */
  public record InStretch(Tally low, Tally likely, Tally high, ScoreRange givenBack) {}
}
