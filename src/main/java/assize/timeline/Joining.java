package assize.timeline;

import assize.production.AttributeValue;
import assize.production.VehicleAttribute;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Descriptions of vehicles, joined until no two of them differ in one attribute alone: always the
 * first that can be with the first after it that it can be joined with.
 *
 * <p>Two can be joined where all their values but those of one attribute are the same. Each is
 * found by what is left of it without one of its values, so that finding the next takes about as
 * long however many there are.
 */
final class Joining {
  private static final int LEFT_OUT = -1;

  private final TreeMap<Integer, Coded> left = new TreeMap<>();
  private final Map<List<Integer>, NavigableSet<Integer>> byRest = new HashMap<>();
  private final Map<Map.Entry<VehicleAttribute, Set<AttributeValue>>, Integer> numbers =
      new HashMap<>();

  /**
   * A description.
   *
   * @param rests for each attribute the numbers of all other values, its own left out
   */
  private record Coded(VehicleGroup vehicles, List<List<Integer>> rests) {}

  private Joining() {}

  /**
   * Joins them; the order is that of the first in each.
   *
   * @param some all of which have values for the same attributes in the same order
   */
  static List<VehicleGroup> of(List<VehicleGroup> some) {
    Joining joining = new Joining();
    for (int i = 0; i < some.size(); i++) {
      joining.put(i, some.get(i));
    }
    joining.join();
    return joining.left.values().stream().map(Coded::vehicles).toList();
  }

  private void put(int place, VehicleGroup one) {
    Coded coded = new Coded(one, rests(one));
    left.put(place, coded);
    coded.rests().forEach(it -> byRest.computeIfAbsent(it, rest -> new TreeSet<>()).add(place));
  }

  private VehicleGroup take(int place) {
    Coded one = at(place);
    left.remove(place);
    one.rests().forEach(rest -> byRest.getOrDefault(rest, new TreeSet<>()).remove(place));
    return one.vehicles();
  }

  private Coded at(int place) {
    Coded one = left.get(place);
    if (one == null) {
      throw new IllegalStateException("nothing at " + place);
    }
    return one;
  }

  private List<List<Integer>> rests(VehicleGroup one) {
    List<Integer> values = new ArrayList<>();
    for (Map.Entry<VehicleAttribute, Set<AttributeValue>> value : one.values().entrySet()) {
      Map.Entry<VehicleAttribute, Set<AttributeValue>> key =
          Map.entry(value.getKey(), value.getValue());
      values.add(numbers.computeIfAbsent(key, it -> numbers.size()));
    }
    List<List<Integer>> rests = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      List<Integer> rest = new ArrayList<>(values);
      rest.set(i, LEFT_OUT);
      rests.add(rest);
    }
    return rests;
  }

  private void join() {
    Integer at = left.isEmpty() ? null : left.firstKey();
    while (at != null) {
      NavigableSet<Integer> others = alike(at);
      // Those before were looked at, and can be joined only with what has changed since.
      Integer before = others.lower(at) == null ? null : others.first();
      Integer after = others.higher(at);
      if (before != null) {
        join(before, at);
        at = before;
      } else if (after != null) {
        join(at, after);
      } else {
        at = left.higherKey(at);
      }
    }
  }

  private void join(int first, int second) {
    VehicleGroup other = take(second);
    VehicleGroup one = take(first);
    put(first, one.joined(other).orElseThrow());
  }

  /** Returns the places of all that one can be joined with, and its own. */
  private NavigableSet<Integer> alike(int place) {
    NavigableSet<Integer> alike = new TreeSet<>(Set.of(place));
    at(place).rests().forEach(rest -> alike.addAll(byRest.getOrDefault(rest, new TreeSet<>())));
    return alike;
  }
}
