package assize.standing;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Vehicles that give one of these answers to each of these questions; without any question, all
 * vehicles.
 */
public record Vehicles(Map<Question, Set<String>> answers) {
  public Vehicles {
    Map<Question, Set<String>> copy = new LinkedHashMap<>();
    answers.forEach(
        (question, some) ->
            copy.put(question, Collections.unmodifiableSet(new LinkedHashSet<>(some))));
    answers = Collections.unmodifiableMap(copy);
  }

  /** Returns both together where they differ in the answers to one question alone. */
  Optional<Vehicles> joined(Vehicles other) {
    Question differing = null;
    for (Map.Entry<Question, Set<String>> one : answers.entrySet()) {
      if (!one.getValue().equals(other.answers.get(one.getKey()))) {
        if (differing != null) {
          return Optional.empty();
        }
        differing = one.getKey();
      }
    }
    if (differing == null) {
      return Optional.of(this);
    }
    Map<Question, Set<String>> both = new LinkedHashMap<>(answers);
    Set<String> all = new LinkedHashSet<>(answers.getOrDefault(differing, Set.of()));
    all.addAll(other.answers.getOrDefault(differing, Set.of()));
    both.put(differing, all);
    return Optional.of(new Vehicles(both));
  }

  /** Leaves out each question whose every possible answer is among those given. */
  Vehicles without(Map<Question, Set<String>> possible) {
    Map<Question, Set<String>> kept = new LinkedHashMap<>(answers);
    kept.entrySet()
        .removeIf(one -> one.getValue().containsAll(possible.getOrDefault(one.getKey(), Set.of())));
    return new Vehicles(kept);
  }
}
