package assize.judgment;

import assize.evidence.Kleene;
import java.util.List;

/**
 * One item within one stretch of build days.
 *
 * @param aspects empty where it does not apply
 * @param earned the sum of its aspects, before a shared cause or an area's limit gives points back
 * @param strict the same without allowances
 * @param givenBack points given back because a dearer item of the same cause already lost them
 */
public record ItemInStretch(
    Kleene applies,
    Verdict verdict,
    List<AspectJudgment> aspects,
    ScoreRange earned,
    ScoreRange strict,
    ScoreRange givenBack) {
  public ItemInStretch {
    aspects = List.copyOf(aspects);
  }
}
