package assize.judgment;

/**
 * Points as a range, in thousandths of a point.
 *
 * @param low the least, if everything open turns out badly
 * @param likely what is to be expected
 * @param high the greatest, if everything open turns out well
 */
public record ScoreRange(long low, long likely, long high) {
  public static final ScoreRange ZERO = new ScoreRange(0, 0, 0);

  public ScoreRange {
    if (low > likely || likely > high) {
      throw new IllegalArgumentException(low + " " + likely + " " + high + " is no range");
    }
  }

  /** Returns the sum of two ranges. */
  public ScoreRange plus(ScoreRange other) {
    return new ScoreRange(low + other.low, likely + other.likely, high + other.high);
  }

  /** Says whether nothing is open. */
  public boolean isPoint() {
    return low == high;
  }
}
