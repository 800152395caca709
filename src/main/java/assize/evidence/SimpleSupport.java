package assize.evidence;

/**
 * What one independent source gives: its weight to the positions that it leaves standing, the rest
 * to all of them.
 *
 * @param weightThousandths 1 to 990
 * @param compatiblePositions bit i for position i, the bit after the last for a value that nobody
 *     mentions; none where the source contradicts itself, which adds to the conflict and to nothing
 *     else
 */
public record SimpleSupport(int weightThousandths, long compatiblePositions) {
  public SimpleSupport {
    if (weightThousandths < 1 || weightThousandths > 990) {
      throw new IllegalArgumentException("no weight: " + weightThousandths);
    }
  }
}
