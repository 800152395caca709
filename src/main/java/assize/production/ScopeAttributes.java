package assize.production;

import assize.date.DateRangeSet;
import assize.evidence.Scope;
import assize.evidence.Ternary;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What scopes ask of a vehicle, other than when it was built.
 *
 * @param attributes each once, in the order in which they are asked for
 * @param ranges the numbers asked for, by table
 */
public record ScopeAttributes(
    Set<VehicleAttribute> attributes, Map<String, Set<Scope.Numbers>> ranges) {
  public ScopeAttributes {
    attributes = Collections.unmodifiableSet(new LinkedHashSet<>(attributes));
    Map<String, Set<Scope.Numbers>> copy = new LinkedHashMap<>();
    ranges.forEach(
        (table, some) -> copy.put(table, Collections.unmodifiableSet(new LinkedHashSet<>(some))));
    ranges = Collections.unmodifiableMap(copy);
  }

  /** Returns what one scope asks for. */
  public static ScopeAttributes of(Scope scope) {
    return of(List.of(scope));
  }

  /** Returns what some scopes ask for; every part of each counts. */
  public static ScopeAttributes of(Collection<Scope> scopes) {
    Collector collector = new Collector();
    scopes.forEach(scope -> scope.holds(collector));
    return new ScopeAttributes(collector.attributes, collector.ranges);
  }

  /** Says whether they ask for this. */
  public boolean contains(VehicleAttribute attribute) {
    return attributes.contains(attribute);
  }

  /** Answers that nothing is known, so that every part of a scope is asked. */
  private static final class Collector implements Scope.Facts {
    private final Set<VehicleAttribute> attributes = new LinkedHashSet<>();
    private final Map<String, Set<Scope.Numbers>> ranges = new LinkedHashMap<>();

    private Ternary unknown(VehicleAttribute attribute) {
      attributes.add(attribute);
      return Ternary.UNKNOWN;
    }

    @Override
    public Ternary isModel(Set<String> models) {
      return unknown(new VehicleAttribute.OfModel());
    }

    @Override
    public Ternary isBuilt(DateRangeSet days) {
      return Ternary.UNKNOWN;
    }

    @Override
    public Ternary hasNumber(String table, String from, String to) {
      ranges
          .computeIfAbsent(table, it -> new LinkedHashSet<>())
          .add(new Scope.Numbers(table, from, to));
      return unknown(new VehicleAttribute.OfNumber(table));
    }

    @Override
    public Ternary hasEquipment(String equipment) {
      return unknown(new VehicleAttribute.OfEquipment(equipment));
    }

    @Override
    public Ternary isForMarket(Set<String> markets) {
      return unknown(new VehicleAttribute.OfMarket());
    }

    @Override
    public Ternary isFromPlant(Set<String> plants) {
      return unknown(new VehicleAttribute.OfPlant());
    }
  }
}
