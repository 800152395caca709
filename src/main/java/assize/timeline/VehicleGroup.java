package assize.timeline;

import assize.production.AttributeValue;
import assize.production.VehicleAttribute;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Vehicles that have one of these values for each of these attributes; without any attribute, all
 * vehicles.
 */
public record VehicleGroup(Map<VehicleAttribute, Set<AttributeValue>> values) {
  private static final VehicleAttribute MODEL = new VehicleAttribute.OfModel();

  public VehicleGroup {
    Map<VehicleAttribute, Set<AttributeValue>> copy = new LinkedHashMap<>();
    values.forEach(
        (attribute, some) ->
            copy.put(attribute, Collections.unmodifiableSet(new LinkedHashSet<>(some))));
    values = Collections.unmodifiableMap(copy);
  }

  /** Returns both together where they differ in the values of one attribute alone. */
  Optional<VehicleGroup> joined(VehicleGroup other) {
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
    return Optional.of(new VehicleGroup(both));
  }

  /**
   * Leaves out each attribute that the others make plain: without it, the description is still of
   * the same kinds. The model is left out only where any will do.
   *
   * @param all every kind that there can be, with its value for each attribute
   */
  VehicleGroup shortened(List<Map<VehicleAttribute, AttributeValue>> all) {
    Map<VehicleAttribute, Set<AttributeValue>> kept = new LinkedHashMap<>(values);
    Set<VehicleAttribute> needed = needed(kept, all);
    while (needed.size() < kept.size()) {
      Set<VehicleAttribute> telling = needed;
      kept.keySet().stream()
          .filter(one -> !telling.contains(one))
          .findFirst()
          .ifPresent(kept::remove);
      needed = needed(kept, all);
    }
    return new VehicleGroup(kept);
  }

  /**
   * Returns the attributes that alone keep some kind out, and the model where not any will do; it
   * is the first of them.
   */
  private static Set<VehicleAttribute> needed(
      Map<VehicleAttribute, Set<AttributeValue>> kept,
      List<Map<VehicleAttribute, AttributeValue>> all) {
    Set<VehicleAttribute> needed = new LinkedHashSet<>();
    for (Map<VehicleAttribute, AttributeValue> kind : all) {
      List<VehicleAttribute> differing =
          kept.entrySet().stream()
              .filter(one -> differs(one.getValue(), kind.get(one.getKey())))
              .map(Map.Entry::getKey)
              .limit(2)
              .toList();
      if (differing.size() == 1 || differing.contains(MODEL)) {
        needed.add(differing.get(0));
      }
      if (needed.size() == kept.size()) {
        break;
      }
    }
    return needed;
  }

  private static boolean differs(Set<AttributeValue> some, @Nullable AttributeValue value) {
    return value != null && !some.contains(value);
  }
}
