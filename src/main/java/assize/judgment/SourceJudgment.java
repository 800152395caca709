package assize.judgment;

import java.util.List;

/**
 * What one source that speaks of an aspect comes to.
 *
 * @param source its name, or {@code trace 1} and so on for the record's
 * @param weightThousandths what its grade weighs, 1 to 990
 * @param compatiblePositions what it leaves standing: bit i for position i, in the order of the
 *     judgment; the bit after the last for a value that nobody mentions
 * @param copyPath from it to the witness that it only repeats: first each copies the next, then
 *     each is copied by the next; itself alone where it counts as a witness
 */
public record SourceJudgment(
    String source, int weightThousandths, long compatiblePositions, List<String> copyPath) {
  public SourceJudgment {
    copyPath = List.copyOf(copyPath);
  }

  /** Says whether it counts. */
  public boolean isWitness() {
    return copyPath.size() == 1;
  }
}
