package assize.judge;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * Values that were worked out once and are asked for again, so many and no more: what comes after
 * is worked out each time. Any thread may ask.
 */
final class BoundedCache<K, V> {
  private final int most;
  private final Map<K, V> values = new ConcurrentHashMap<>();

  BoundedCache(int most) {
    this.most = most;
  }

  /** Returns what is kept for a key, else works it out; threads that ask at once get one value. */
  V get(K key, Function<K, V> work) {
    V kept = values.get(key);
    if (kept != null) {
      return kept;
    }
    V made = work.apply(key);
    if (values.size() >= most) {
      return made;
    }
    V other = values.putIfAbsent(key, made);
    return other == null ? made : other;
  }
}
