package assize.evidence;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Which sources are witnesses of their own, and which only repeat what they copy. */
public final class Independence {
  private Independence() {}

  /**
   * Returns the sources that count. One that leaves the same standing as a source that it copies,
   * directly or through others, adds nothing.
   *
   * @param copies for each source, those that it copies; no circle
   * @param stands for each source that speaks, what it leaves standing
   */
  public static Set<String> witnesses(Map<String, Set<String>> copies, Map<String, Long> stands) {
    Set<String> witnesses = new LinkedHashSet<>();
    stands.forEach(
        (source, standing) -> {
          boolean repeats =
              copied(source, copies).stream()
                  .anyMatch(original -> standing.equals(stands.get(original)));
          if (!repeats) {
            witnesses.add(source);
          }
        });
    return witnesses;
  }

  /** Returns every source that one copies, directly or through others. */
  public static Set<String> copied(String source, Map<String, Set<String>> copies) {
    Set<String> found = new LinkedHashSet<>();
    List<String> open = new ArrayList<>(new TreeSet<>(copies.getOrDefault(source, Set.of())));
    while (!open.isEmpty()) {
      String next = open.remove(0);
      if (!next.equals(source) && found.add(next)) {
        open.addAll(new TreeSet<>(copies.getOrDefault(next, Set.of())));
      }
    }
    return found;
  }

  /** Finds a circle of sources each of which copies the next, and the last the first. */
  public static Optional<List<String>> circle(Map<String, Set<String>> copies) {
    for (String start : new TreeSet<>(copies.keySet())) {
      List<String> path = new ArrayList<>();
      if (returns(start, start, copies, path, new LinkedHashSet<>())) {
        return Optional.of(List.copyOf(path));
      }
    }
    return Optional.empty();
  }

  private static boolean returns(
      String at,
      String start,
      Map<String, Set<String>> copies,
      List<String> path,
      Set<String> seen) {
    path.add(at);
    for (String next : new TreeSet<>(copies.getOrDefault(at, Set.of()))) {
      if (next.equals(start) || (seen.add(next) && returns(next, start, copies, path, seen))) {
        return true;
      }
    }
    path.remove(path.size() - 1);
    return false;
  }
}
