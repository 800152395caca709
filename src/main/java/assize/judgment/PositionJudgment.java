package assize.judgment;

import assize.aspect.Comparison;
import assize.aspect.Expectation;
import assize.evidence.Grade;
import java.util.List;

/**
 * One position on an aspect, and how the vehicle stands to it.
 *
 * @param accepts the values that it holds to be right
 * @param sources who holds it: the names of sources, or {@code trace 1} and so on for the record's
 * @param echoes sources that only repeat a source they copy, and so add nothing
 * @param belief 0 to 1
 * @param plausibility 0 to 1
 * @param share its part of the likely credit, 0 to 1; the shares of what is judged add up to 1
 * @param judged whether the vehicle is judged by it
 * @param comparison the vehicle against it
 * @param settling what would settle the matter for it; empty unless disputed
 */
public record PositionJudgment(
    List<Expectation> accepts,
    List<String> sources,
    List<String> echoes,
    double belief,
    double plausibility,
    double share,
    boolean judged,
    Comparison comparison,
    List<Further> settling) {
  public PositionJudgment {
    accepts = List.copyOf(accepts);
    sources = List.copyOf(sources);
    echoes = List.copyOf(echoes);
    settling = List.copyOf(settling);
  }

  /** The least number of further independent sources of one grade that would settle it. */
  public record Further(Grade grade, int sources) {}
}
