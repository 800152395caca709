package assize.judge;

import assize.evidence.SourceIndependence;
import assize.judge.WeighedAspect.WeighedPosition;
import assize.judgment.SourceJudgment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/** Every source that speaks of an aspect, and what it comes to. */
final class ApplicableSources {
  private ApplicableSources() {}

  /** Returns the positions that are judged by before the others, the most believed first. */
  static List<Integer> order(List<WeighedPosition> positions) {
    return IntStream.range(0, positions.size())
        .boxed()
        .sorted(
            Comparator.comparing((Integer i) -> !positions.get(i).scored())
                .thenComparing(i -> positions.get(i).belief(), Comparator.reverseOrder()))
        .toList();
  }

  /**
   * Returns the sources.
   *
   * @param witnesses those of the sources that count
   * @param order the positions of the frame in the order of the judgment
   */
  static List<SourceJudgment> of(
      FrameOfDiscernment frame,
      Map<String, Integer> weights,
      SourceIndependence<String> copies,
      Set<String> witnesses,
      List<Integer> order) {
    List<SourceJudgment> sources = new ArrayList<>();
    frame
        .compatiblePositions()
        .forEach(
            (source, stands) ->
                sources.add(
                    new SourceJudgment(
                        source,
                        weights.getOrDefault(source, 1),
                        reordered(stands, order),
                        copies.trace(source, frame.compatiblePositions(), witnesses))));
    return sources;
  }

  private static long reordered(long stands, List<Integer> order) {
    long reordered = stands & 1L << order.size();
    for (int i = 0; i < order.size(); i++) {
      reordered |= (stands >> order.get(i) & 1) << i;
    }
    return reordered;
  }
}
