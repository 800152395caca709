package assize.judge;

import assize.date.DateRange;
import assize.evidence.Claim;
import assize.judgment.AspectJudgment;
import assize.record.VehicleRecord;
import assize.ruleset.AspectRule;
import assize.ruleset.RuleSet;
import java.util.List;
import java.util.Optional;

/**
 * What sources come to before any vehicle is looked at: weighed just as they are when one is
 * judged.
 */
public final class RuleSetWeigher {
  private static final VehicleRecord NONE = VehicleRecord.TABLE.blank();

  private final AspectJudge judge;

  private RuleSetWeigher(RuleSet rules) {
    this.judge =
        new AspectJudge(ClaimWeigher.of(rules), NONE, List.of(), DateRange.ALL, DateRange.ALL);
  }

  /** Makes a rule set ready, so that many of its aspects can be weighed. */
  public static RuleSetWeigher by(RuleSet rules) {
    return new RuleSetWeigher(rules);
  }

  /**
   * Weighs what some claims say.
   *
   * @param claims of the rule, those that speak
   * @return nothing where no position is named
   */
  public Optional<AspectJudgment> weigh(String item, AspectRule rule, List<Claim> claims) {
    return judge.judge(item, rule, claims);
  }
}
