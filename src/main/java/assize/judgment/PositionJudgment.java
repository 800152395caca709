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
 * @param repeatingSources sources that only repeat a source they copy, and so add nothing
 * @param belief 0 to 1
 * @param plausibility 0 to 1
 * @param share its part of the likely credit, 0 to 1; the shares of what is judged add up to 1
 * @param scored whether the vehicle is judged by it
 * @param comparison the vehicle against it
 * @param settling what would settle the matter for it; empty unless disputed
 */
public record PositionJudgment(
    List<Expectation> accepts,
    List<String> sources,
    List<String> repeatingSources,
    double belief,
    double plausibility,
    double share,
    boolean scored,
    Comparison comparison,
    List<SourcesNeeded> settling) {
  public PositionJudgment {
    accepts = List.copyOf(accepts);
    sources = List.copyOf(sources);
    repeatingSources = List.copyOf(repeatingSources);
    settling = List.copyOf(settling);
  }

  /** The least number of further independent sources of one grade that would settle it. */
  public record SourcesNeeded(Grade grade, int sources) {}
}
