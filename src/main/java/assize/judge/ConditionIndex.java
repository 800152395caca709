package assize.judge;

import assize.evidence.Scope;
import assize.evidence.Ternary;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The conditions of a rule set, each asked once however often it stands there, or within another.
 */
final class ConditionIndex {
  private final Map<Scope, Integer> places = new LinkedHashMap<>();
  private final List<Asking> all = new ArrayList<>();

  /** Answers one condition, by what is known of a vehicle and by the answers to those before it. */
  private interface Asking {
    Ternary ask(Scope.Facts facts, ConditionResults.ConditionRow before);
  }

  /** Returns where a condition stands; puts it at the end where it does not yet. */
  int place(Scope scope) {
    Integer known = places.get(scope);
    if (known != null) {
      return known;
    }
    Asking asking = asking(scope);
    places.put(scope, all.size());
    all.add(asking);
    return all.size() - 1;
  }

  private Asking asking(Scope scope) {
    if (scope instanceof Scope.All both) {
      int[] parts = both.parts().stream().mapToInt(this::place).toArray();
      return (facts, before) -> {
        Ternary answer = Ternary.YES;
        for (int part : parts) {
          answer = answer.and(before.at(part));
        }
        return answer;
      };
    }
    if (scope instanceof Scope.Any either) {
      int[] parts = either.parts().stream().mapToInt(this::place).toArray();
      return (facts, before) -> {
        Ternary answer = Ternary.NO;
        for (int part : parts) {
          answer = answer.or(before.at(part));
        }
        return answer;
      };
    }
    if (scope instanceof Scope.Not not) {
      int part = place(not.part());
      return (facts, before) -> before.at(part).not();
    }
    return (facts, before) -> scope.holds(facts);
  }

  List<Scope> scopes() {
    return List.copyOf(places.keySet());
  }

  /** Asks every condition. */
  ConditionResults of(Scope.Facts facts) {
    ConditionResults.ConditionRow row = new ConditionResults.ConditionRow(all.size());
    for (int i = 0; i < all.size(); i++) {
      row.add(all.get(i).ask(facts, row));
    }
    return row.done();
  }
}
