package assize.judgment;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The figures of a judgment without its reasons.
 *
 * @param stretches neighbors may be alike
 * @param score out of the scale's full score, allowances included, in thousandths of a point
 * @param strict the same without allowances
 * @param verdicts how many items have each verdict
 */
public record Totals(
    Build build,
    List<Stretch> stretches,
    ScoreRange score,
    ScoreRange strict,
    AwardResult award,
    Map<Verdict, Integer> verdicts) {
  public Totals {
    stretches = List.copyOf(stretches);
    verdicts = Collections.unmodifiableMap(new EnumMap<>(verdicts));
  }
}
