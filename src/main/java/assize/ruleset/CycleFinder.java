package assize.ruleset;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Finds names that lead back to themselves; without recursion, since a file may hold long chains.
 */
final class CycleFinder {
  private final Map<String, ? extends Collection<String>> next;
  private final Set<String> done = new HashSet<>();
  private final Map<String, Integer> path = new HashMap<>();
  private final List<String> names = new ArrayList<>();
  private final List<List<String>> circles = new ArrayList<>();

  private CycleFinder(Map<String, ? extends Collection<String>> next) {
    this.next = next;
  }

  /**
   * Returns each circle that a walk comes upon, beginning with the name that is reached first.
   *
   * @param next where each name leads
   */
  static List<List<String>> in(Map<String, ? extends Collection<String>> next) {
    CycleFinder search = new CycleFinder(next);
    next.keySet().forEach(search::walk);
    return search.circles;
  }

  private void walk(String start) {
    Deque<Iterator<String>> left = new ArrayDeque<>();
    enter(start, left);
    while (!left.isEmpty()) {
      if (left.peek().hasNext()) {
        enter(left.peek().next(), left);
      } else {
        left.pop();
        String last = names.remove(names.size() - 1);
        path.remove(last);
        done.add(last);
      }
    }
  }

  private void enter(String name, Deque<Iterator<String>> left) {
    Integer at = path.get(name);
    if (at != null) {
      circles.add(List.copyOf(names.subList(at, names.size())));
    } else if (!done.contains(name)) {
      path.put(name, names.size());
      names.add(name);
      Collection<String> onward = next.get(name);
      left.push((onward == null ? List.<String>of() : onward).iterator());
    }
  }
}
