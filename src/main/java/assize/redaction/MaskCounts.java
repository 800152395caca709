package assize.redaction;

import java.util.HashMap;
import java.util.Map;

/** How often each number and each private word was masked, by its place in the mask. */
public final class MaskCounts {
  private final Map<Integer, Integer> times = new HashMap<>();

  void add(int owner, int count) {
    times.merge(owner, count, Integer::sum);
  }

  /** Returns how often; {@code owner} counts the numbers, then the words, from 0. */
  public int of(int owner) {
    return times.getOrDefault(owner, 0);
  }
}
