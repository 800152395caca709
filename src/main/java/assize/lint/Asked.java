package assize.lint;

import assize.date.DaySet;
import assize.evidence.Kleene;
import assize.evidence.Scope;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What conditions ask for. */
final class Asked implements Scope.Facts {
  private final Set<String> markets = new LinkedHashSet<>();
  private final Set<String> plants = new LinkedHashSet<>();
  private final Set<String> equipment = new LinkedHashSet<>();
  private final Map<String, Set<Scope.Numbers>> numbers = new LinkedHashMap<>();

  private Asked() {}

  /** Returns what some conditions ask for; every part of each is asked. */
  static Asked by(List<Scope> scopes) {
    Asked asked = new Asked();
    scopes.forEach(scope -> scope.holds(asked));
    return asked;
  }

  Set<String> markets() {
    return markets;
  }

  Set<String> plants() {
    return plants;
  }

  Set<String> equipment() {
    return equipment;
  }

  /** Returns the numbers that are asked for, by table. */
  Map<String, Set<Scope.Numbers>> numbers() {
    return numbers;
  }

  @Override
  public Kleene isModel(Set<String> models) {
    return Kleene.UNKNOWN;
  }

  @Override
  public Kleene isBuilt(DaySet days) {
    return Kleene.UNKNOWN;
  }

  @Override
  public Kleene hasNumber(String table, String from, String to) {
    numbers
        .computeIfAbsent(table, it -> new LinkedHashSet<>())
        .add(new Scope.Numbers(table, from, to));
    return Kleene.UNKNOWN;
  }

  @Override
  public Kleene hasEquipment(String one) {
    equipment.add(one);
    return Kleene.UNKNOWN;
  }

  @Override
  public Kleene isForMarket(Set<String> some) {
    markets.addAll(some);
    return Kleene.UNKNOWN;
  }

  @Override
  public Kleene isFromPlant(Set<String> some) {
    plants.addAll(some);
    return Kleene.UNKNOWN;
  }
}
