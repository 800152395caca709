package assize.ruleset;

import assize.text.Span;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Where the values of a rule set were written, for those that do not know it themselves. */
final class Places {
  private final Map<List<String>, Span> places = new HashMap<>();
  private final Span start;

  /**
   * Begins with no place.
   *
   * @param start what is said of values that no place is known for
   */
  Places(Span start) {
    this.start = start;
  }

  void put(Span at, String... path) {
    places.putIfAbsent(List.of(path), at);
  }

  /** Returns where a value is written, or what it belongs to. */
  Span of(String... path) {
    List<String> left = List.of(path);
    while (!left.isEmpty()) {
      Span at = places.get(left);
      if (at != null) {
        return at;
      }
      left = left.subList(0, left.size() - 1);
    }
    return start;
  }
}
