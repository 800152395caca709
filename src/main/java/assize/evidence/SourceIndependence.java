package assize.evidence;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Which of the sources that speak are witnesses of their own, and which only repeat another. What a
 * source copies is followed once, however often it is asked for; any thread may ask.
 */
public final class SourceIndependence<S extends Comparable<? super S>> {
  private final Map<S, Set<S>> copies;
  private final Map<S, Map<S, S>> followed = new ConcurrentHashMap<>();

  private SourceIndependence(Map<S, Set<S>> copies) {
    this.copies = copies;
  }

  /**
   * Prepares to tell.
   *
   * @param copies the sources that each source copies, directly; copying carries over, and must not
   *     go round in a circle
   */
  public static <S extends Comparable<? super S>> SourceIndependence<S> of(Map<S, Set<S>> copies) {
    return new SourceIndependence<>(copies);
  }

  /**
   * Returns the sources that count: all but those that repeat what a copied source says.
   *
   * @param stands what each source that speaks leaves standing
   * @return a part of those that speak, in their order
   */
  public Set<S> witnesses(Map<S, Long> stands) {
    Set<S> witnesses = new LinkedHashSet<>();
    stands.forEach(
        (source, standing) -> {
          if (copied(source).stream()
              .noneMatch(original -> standing.equals(stands.get(original)))) {
            witnesses.add(source);
          }
        });
    return Collections.unmodifiableSet(witnesses);
  }

  /** Returns every other source that one copies, directly or through others, nearest first. */
  public Set<S> copied(S source) {
    return Collections.unmodifiableSet(followed(source).keySet());
  }

  /** Returns every source that one copies, nearest first, and by which other it comes to it. */
  private Map<S, S> followed(S source) {
    Map<S, S> known = followed.get(source);
    if (known != null) {
      return known;
    }
    Map<S, S> cameFrom = new LinkedHashMap<>();
    Deque<S> next = new ArrayDeque<>(List.of(source));
    while (!next.isEmpty()) {
      S at = next.remove();
      for (S original : new TreeSet<>(copies.getOrDefault(at, Set.of()))) {
        if (!original.equals(source) && cameFrom.putIfAbsent(original, at) == null) {
          next.add(original);
        }
      }
    }
    followed.put(source, cameFrom);
    return cameFrom;
  }

  /**
   * Returns the shortest way from a source to a witness that it repeats, both included.
   *
   * @param source a source that speaks; if it is a witness itself the way is that source alone
   * @param stands as for {@link #witnesses}
   * @param witnesses what that gave
   * @return each source copies the next; those between may say something else or nothing
   */
  public List<S> trace(S source, Map<S, Long> stands, Set<S> witnesses) {
    Long standing = stands.get(source);
    if (standing == null) {
      throw new IllegalArgumentException("does not speak: " + source);
    }
    if (witnesses.contains(source)) {
      return List.of(source);
    }
    Map<S, S> cameFrom = followed(source);
    for (S at : cameFrom.keySet()) {
      if (witnesses.contains(at) && standing.equals(stands.get(at))) {
        Deque<S> way = new ArrayDeque<>(List.of(at));
        while (!way.element().equals(source)) {
          way.push(cameFrom.getOrDefault(way.element(), source));
        }
        return List.copyOf(way);
      }
    }
    throw new IllegalArgumentException("sources copy each other in a circle: " + source);
  }

  /**
   * Returns sources that copy each other in a circle, if there are any: each copies the next, the
   * last copies the first.
   */
  public static <S extends Comparable<? super S>> Optional<List<S>> circle(Map<S, Set<S>> copies) {
    Set<S> cleared = new HashSet<>();
    for (S start : new TreeSet<>(copies.keySet())) {
      List<S> way = new ArrayList<>();
      Map<S, Integer> places = new HashMap<>();
      Deque<Iterator<S>> open = new ArrayDeque<>();
      S entering = start;
      while (true) {
        if (!cleared.contains(entering)) {
          Integer place = places.get(entering);
          if (place != null) {
            return Optional.of(List.copyOf(way.subList(place, way.size())));
          }
          places.put(entering, way.size());
          way.add(entering);
          open.push(new TreeSet<>(copies.getOrDefault(entering, Set.of())).iterator());
        }
        while (!open.isEmpty() && !open.element().hasNext()) {
          open.pop();
          S left = way.remove(way.size() - 1);
          places.remove(left);
          cleared.add(left);
        }
        if (open.isEmpty()) {
          break;
        }
        entering = open.element().next();
      }
    }
    return Optional.empty();
  }
}
