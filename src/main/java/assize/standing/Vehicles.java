package assize.standing;

import assize.production.AttributeValue;
import assize.production.VehicleAttribute;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Vehicles that have one of these values for each of these attributes; without any attribute, all
 * vehicles.
 */
public record Vehicles(Map<VehicleAttribute, Set<AttributeValue>> values) {
  public Vehicles {
    Map<VehicleAttribute, Set<AttributeValue>> copy = new LinkedHashMap<>();
    values.forEach(
        (attribute, some) ->
            copy.put(attribute, Collections.unmodifiableSet(new LinkedHashSet<>(some))));
    values = Collections.unmodifiableMap(copy);
  }

  /** Returns both together where they differ in the values of one attribute alone. */
  Optional<Vehicles> joined(Vehicles other) {
    VehicleAttribute differing = null;
    for (Map.Entry<VehicleAttribute, Set<AttributeValue>> one : values.entrySet()) {
      if (!one.getValue().equals(other.values.get(one.getKey()))) {
        if (differing != null) {
          return Optional.empty();
        }
        differing = one.getKey();
      }
    }
    if (differing == null) {
      return Optional.of(this);
    }
    Map<VehicleAttribute, Set<AttributeValue>> both = new LinkedHashMap<>(values);
    Set<AttributeValue> all = new LinkedHashSet<>(values.getOrDefault(differing, Set.of()));
    all.addAll(other.values.getOrDefault(differing, Set.of()));
    both.put(differing, all);
    return Optional.of(new Vehicles(both));
  }

  /** Leaves out each attribute whose every possible value is among those given. */
  Vehicles without(Map<VehicleAttribute, Set<AttributeValue>> possible) {
    Map<VehicleAttribute, Set<AttributeValue>> kept = new LinkedHashMap<>(values);
    kept.entrySet()
        .removeIf(one -> one.getValue().containsAll(possible.getOrDefault(one.getKey(), Set.of())));
    return new Vehicles(kept);
  }
}
