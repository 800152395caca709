package assize.timeline;

import assize.date.DateRange;
import assize.evidence.Claim;
import assize.judgment.AspectJudgment;
import java.util.List;
import java.util.Optional;

/**
 * What sources come to within one stretch of production.
 *
 * @param days build days; without a first or last one where no model's production bounds them
 * @param speaking the claims that speak, in the order written
 * @param outcome what they come to, weighed; empty where no position is named
 */
public record TimelineEntry(
    DateRange days, List<Claim> speaking, Optional<AspectJudgment> outcome) {
  public TimelineEntry {
    speaking = List.copyOf(speaking);
  }
}
