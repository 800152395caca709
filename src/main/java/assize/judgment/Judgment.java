package assize.judgment;

import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import java.util.List;

/**
 * What judging a vehicle gave.
 *
 * @param stretches in the order of days, at least one
 * @param areas in the rule set's order
 * @param items in the rule set's order
 * @param score out of the scale's full score, allowances included, in thousandths of a point
 * @param withoutAllowances the same without allowances
 */
public record Judgment(
    RuleSet rules,
    VehicleRecord vehicle,
    BuildDate build,
    List<BuildPeriod> stretches,
    List<AreaJudgment> areas,
    List<ItemJudgment> items,
    ScoreRange score,
    ScoreRange withoutAllowances,
    AwardResult award,
    List<Notice> notices) {
  public Judgment {
    stretches = List.copyOf(stretches);
    areas = List.copyOf(areas);
    items = List.copyOf(items);
    notices = List.copyOf(notices);
  }
}
