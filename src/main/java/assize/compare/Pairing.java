package assize.compare;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.function.BiConsumer;
import java.util.function.Function;

/**
 * Things of the newer edition, each of which is paired with at most one of the older. Things are
 * found by what is equal for both, so that each is looked at once.
 */
final class Pairing<T> {
  private final Map<Integer, T> left = new LinkedHashMap<>();

  Pairing(List<T> newer) {
    for (int i = 0; i < newer.size(); i++) {
      left.put(i, newer.get(i));
    }
  }

  /**
   * Pairs each of the older things, in their order, with the first newer one that is left and has
   * an equal key.
   *
   * @return the older things that are left
   */
  List<T> pair(List<T> older, Function<? super T, Object> key, BiConsumer<T, T> each) {
    if (older.isEmpty() || left.isEmpty()) {
      return older;
    }
    Map<Object, Queue<Integer>> places = new HashMap<>();
    left.forEach(
        (place, one) ->
            places.computeIfAbsent(key.apply(one), it -> new ArrayDeque<>(2)).add(place));
    List<T> alone = new ArrayList<>();
    for (T one : older) {
      Queue<Integer> found = places.getOrDefault(key.apply(one), new ArrayDeque<>(1));
      Integer place = found.poll();
      if (place == null) {
        alone.add(one);
      } else {
        T other = left.get(place);
        left.remove(place);
        each.accept(one, other);
      }
    }
    return alone;
  }

  /** Returns the newer things that are left, in their order. */
  List<T> left() {
    return List.copyOf(left.values());
  }
}
