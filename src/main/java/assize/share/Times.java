package assize.share;

/** How often each number and each private word was masked, by its place in the mask. */
public final class Times {
  private final int[] times;

  /** Begins with none of anything that a mask looks for. */
  public Times(Mask mask) {
    this.times = new int[mask.size()];
  }

  void add(int owner, int count) {
    times[owner] += count;
  }

  /** Returns how often; {@code owner} counts the numbers, then the words, from 0. */
  public int of(int owner) {
    return times[owner];
  }
}
