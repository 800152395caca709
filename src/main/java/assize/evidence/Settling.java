package assize.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * What would settle a dispute for one position.
 *
 * @param gradeWeightThousandths the weight of the further sources
 * @param further the least number of further independent sources of that weight, each saying just
 *     that position, that bring its belief to the threshold; empty beyond {@link #MOST}
 */
public record Settling(int position, int gradeWeightThousandths, OptionalInt further) {
  /** The most further sources that are looked at. */
  public static final int MOST = 99;

  /** Finds it for each position and each weight. */
  public static List<Settling> of(
      int positions, List<Testimony> testimonies, List<Integer> gradeWeights, int settledAt) {
    List<Settling> found = new ArrayList<>();
    for (int position = 0; position < positions; position++) {
      for (int weight : gradeWeights) {
        found.add(
            new Settling(
                position, weight, further(positions, testimonies, position, weight, settledAt)));
      }
    }
    return found;
  }

  private static OptionalInt further(
      int positions, List<Testimony> testimonies, int position, int weight, int settledAt) {
    List<Testimony> more = new ArrayList<>(testimonies);
    for (int count = 0; count <= MOST; count++) {
      if (Weighing.of(positions, more).beliefAtLeast(position, settledAt)) {
        return OptionalInt.of(count);
      }
      more.add(new Testimony(weight, 1L << position));
    }
    return OptionalInt.empty();
  }
}
