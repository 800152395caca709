package assize.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * What the sources on one aspect come to.
 *
 * @param settledOn the position that alone counts, where one does
 * @param live the positions that are plausible enough to be judged by; none where many sources
 *     contradict each other
 */
public record WeighingResult(
    DisputeState state, OptionalInt settledOn, List<Integer> live, DempsterCombination weighing) {
  public WeighingResult {
    live = List.copyOf(live);
  }

  /**
   * Weighs the testimonies.
   *
   * @param positions how many positions are named
   * @param settledAt the belief that settles the matter, in thousandths
   * @param liveAt the plausibility below which a position is no longer judged by, in thousandths
   */
  public static WeighingResult of(
      int positions, List<SimpleSupport> testimonies, int settledAt, int liveAt) {
    DempsterCombination weighing = DempsterCombination.of(positions, testimonies);
    List<Integer> live = new ArrayList<>();
    List<Integer> believed = new ArrayList<>();
    for (int i = 0; i < positions; i++) {
      if (weighing.plausibilityAtLeast(i, liveAt)) {
        live.add(i);
      }
      if (weighing.beliefAtLeast(i, settledAt)) {
        believed.add(i);
      }
    }
    if (testimonies.isEmpty()) {
      OptionalInt only = positions == 1 ? OptionalInt.of(0) : OptionalInt.empty();
      return new WeighingResult(DisputeState.UNSOURCED, only, live, weighing);
    }
    long common =
        testimonies.stream()
            .mapToLong(SimpleSupport::compatiblePositions)
            .reduce(-1L, (a, b) -> a & b);
    boolean one = Long.bitCount(common) == 1;
    if (one && Long.numberOfTrailingZeros(common) < positions) {
      OptionalInt agreed = OptionalInt.of(Long.numberOfTrailingZeros(common));
      return new WeighingResult(DisputeState.AGREED, agreed, live, weighing);
    }
    if (believed.size() == 1) {
      OptionalInt settled = OptionalInt.of(believed.get(0));
      return new WeighingResult(DisputeState.SETTLED, settled, live, weighing);
    }
    return new WeighingResult(DisputeState.DISPUTED, OptionalInt.empty(), live, weighing);
  }
}
