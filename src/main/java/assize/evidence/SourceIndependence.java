package assize.evidence;

import java.math.BigInteger;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
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
  /** The most relatives of which every choice is tried. */
  private static final int MOST_TRIED = 12;

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
   * Returns the sources that count. Sources are related if one goes back to the other, or both to a
   * third, which need not speak. Of those that leave the same standing no two related ones count:
   * the choice is made that leaves the least doubt, so that relatives count as their weightiest.
   *
   * @param stands what each source that speaks leaves standing
   * @param weights in thousandths; a source that is left out weighs 1
   * @return a part of those that speak, in their order
   */
  public Set<S> witnesses(Map<S, Long> stands, Map<S, Integer> weights) {
    Map<Long, List<S>> alike = new LinkedHashMap<>();
    stands.forEach(
        (source, standing) -> alike.computeIfAbsent(standing, it -> new ArrayList<>()).add(source));
    Set<S> chosen = new HashSet<>();
    for (List<S> group : alike.values()) {
      for (List<S> relatives : families(group)) {
        chosen.addAll(unrelated(relatives, weights));
      }
    }
    Set<S> witnesses = new LinkedHashSet<>(stands.keySet());
    witnesses.retainAll(chosen);
    return Collections.unmodifiableSet(witnesses);
  }

  /** Parts sources so that no two of different parts are related. */
  private List<List<S>> families(List<S> group) {
    Map<S, Integer> firstBy = new HashMap<>();
    int[] family = new int[group.size()];
    for (int i = 0; i < family.length; i++) {
      family[i] = i;
      for (S ancestor : ancestors(group.get(i))) {
        Integer other = firstBy.putIfAbsent(ancestor, i);
        if (other != null) {
          family[head(family, i)] = head(family, other);
        }
      }
    }
    Map<Integer, List<S>> families = new LinkedHashMap<>();
    for (int i = 0; i < family.length; i++) {
      families.computeIfAbsent(head(family, i), it -> new ArrayList<>()).add(group.get(i));
    }
    return List.copyOf(families.values());
  }

  private static int head(int[] family, int of) {
    int at = of;
    while (family[at] != at) {
      family[at] = family[family[at]];
      at = family[at];
    }
    return at;
  }

  /** Returns a source and all that it copies. */
  private Set<S> ancestors(S source) {
    Set<S> all = new LinkedHashSet<>(Set.of(source));
    all.addAll(followed(source).keySet());
    return all;
  }

  /**
   * Chooses, no two of them related, those that leave the least doubt; of choices that leave the
   * same the one with sources that copy less. Of a family of more than {@link #MOST_TRIED} the
   * weightiest that is not related to one before it is taken, again and again.
   */
  private List<S> unrelated(List<S> relatives, Map<S, Integer> weights) {
    List<S> order =
        relatives.stream()
            .sorted(
                Comparator.comparing((S it) -> -weights.getOrDefault(it, 1))
                    .thenComparing(it -> followed(it).size()))
            .toList();
    List<Set<S>> lines = order.stream().map(this::ancestors).toList();
    boolean all =
        lines.get(0).stream().anyMatch(it -> lines.stream().allMatch(line -> line.contains(it)));
    if (all) {
      return List.of(order.get(0));
    }
    if (order.size() > MOST_TRIED) {
      List<Integer> taken = new ArrayList<>();
      for (int i = 0; i < order.size(); i++) {
        int at = i;
        if (taken.stream().allMatch(it -> Collections.disjoint(lines.get(it), lines.get(at)))) {
          taken.add(i);
        }
      }
      return taken.stream().<S>map(order::get).toList();
    }
    return chosen(order, lines, weights);
  }

  private List<S> chosen(List<S> order, List<Set<S>> lines, Map<S, Integer> weights) {
    int best = 0;
    BigInteger least = BigInteger.valueOf(1000).pow(order.size());
    for (int choice = 1; choice < 1 << order.size(); choice++) {
      BigInteger doubt = BigInteger.ONE;
      boolean related = false;
      for (int i = 0; i < order.size(); i++) {
        boolean in = (choice >> i & 1) == 1;
        doubt =
            doubt.multiply(
                BigInteger.valueOf(in ? 1000 - weights.getOrDefault(order.get(i), 1) : 1000));
        for (int j = 0; in && j < i; j++) {
          related |= (choice >> j & 1) == 1 && !Collections.disjoint(lines.get(i), lines.get(j));
        }
      }
      if (!related && doubt.compareTo(least) < 0) {
        least = doubt;
        best = choice;
      }
    }
    List<S> chosen = new ArrayList<>();
    for (int i = 0; i < order.size(); i++) {
      if ((best >> i & 1) == 1) {
        chosen.add(order.get(i));
      }
    }
    return chosen;
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
   * Returns a way from a source to a witness that it repeats, both included.
   *
   * @param source a source that speaks; if it is a witness itself the way is that source alone
   * @param stands as for {@link #witnesses}
   * @param witnesses what that gave
   * @return first each source copies the next, then each is copied by the next; those between may
   *     say something else or nothing
   */
  public List<S> trace(S source, Map<S, Long> stands, Set<S> witnesses) {
    Long standing = stands.get(source);
    if (standing == null) {
      throw new IllegalArgumentException("does not speak: " + source);
    }
    if (witnesses.contains(source)) {
      return List.of(source);
    }
    Set<S> lines = ancestors(source);
    for (S ancestor : lines) {
      if (witnesses.contains(ancestor) && standing.equals(stands.get(ancestor))) {
        return way(source, ancestor);
      }
    }
    for (S ancestor : lines) {
      for (S witness : witnesses) {
        if (standing.equals(stands.get(witness)) && ancestors(witness).contains(ancestor)) {
          List<S> way = new ArrayList<>(way(source, ancestor));
          List<S> down = new ArrayList<>(way(witness, ancestor));
          Collections.reverse(down);
          way.addAll(down.subList(1, down.size()));
          return List.copyOf(way);
        }
      }
    }
    throw new IllegalArgumentException("sources copy each other in a circle: " + source);
  }

  /** Returns the shortest way from a source to one that it copies; each copies the next. */
  private List<S> way(S source, S original) {
    Map<S, S> cameFrom = followed(source);
    Deque<S> way = new ArrayDeque<>(List.of(original));
    while (!way.element().equals(source)) {
      way.push(cameFrom.getOrDefault(way.element(), source));
    }
    return List.copyOf(way);
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
