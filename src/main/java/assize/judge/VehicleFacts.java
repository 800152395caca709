package assize.judge;

import assize.date.DateRange;
import assize.date.DateRangeSet;
import assize.evidence.Scope;
import assize.evidence.Ternary;
import assize.production.NumberPart;
import assize.record.VehicleRecord;
import assize.ruleset.Model;
import assize.ruleset.NumberTable;
import assize.ruleset.NumberTable.Series;
import assize.ruleset.RuleSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;

/** What a record says of its vehicle, for build days within which no date condition changes. */
public final class VehicleFacts implements Scope.Facts {
  private final RuleSet rules;
  private final VehicleRecord vehicle;
  private final DateRange days;
  private final List<String> possibleModels;
  private final List<String> possiblePlants;

  /**
   * Keeps what is known.
   *
   * @param days build days within which no date condition changes
   */
  public VehicleFacts(RuleSet rules, VehicleRecord vehicle, DateRange days) {
    this.rules = rules;
    this.vehicle = vehicle;
    this.days = days;
    this.possibleModels =
        vehicle
            .model()
            .map(List::of)
            .orElseGet(
                () ->
                    rules.models().values().stream()
                        .filter(model -> model.production().overlaps(days))
                        .map(Model::id)
                        .toList());
    this.possiblePlants = vehicle.plant().isPresent() ? List.of() : plantsByNumber();
  }

  @Override
  public Ternary isModel(Set<String> models) {
    return among(possibleModels(), models);
  }

  /** Returns the model that the record states, else those that were made on the days. */
  List<String> possibleModels() {
    return possibleModels;
  }

  @Override
  public Ternary isBuilt(DateRangeSet asked) {
    if (!asked.overlaps(days)) {
      return Ternary.NO;
    }
    return asked.contains(days.first()) && asked.contains(days.last())
        ? Ternary.YES
        : Ternary.UNKNOWN;
  }

  @Override
  public Ternary hasNumber(String table, String from, String to) {
    Scope.Numbers range = new Scope.Numbers(table, from, to);
    Optional<NumberTable> known = Optional.ofNullable(rules.numberTables().get(table));
    List<Ternary> answers =
        known.stream()
            .flatMap(
                it ->
                    vehicle.possibleNumbers(table).stream()
                        .map(number -> Ternary.of(isWithin(it, number, range))))
            .distinct()
            .toList();
    return answers.size() == 1 ? answers.get(0) : Ternary.UNKNOWN;
  }

  private static boolean isWithin(NumberTable table, String number, Scope.Numbers range) {
    for (Series series : table.series()) {
      OptionalLong own = series.numberOf(number);
      if (own.isPresent() && NumberPart.holds(series, range, own.getAsLong())) {
        return true;
      }
    }
    return false;
  }

  @Override
  public Ternary hasEquipment(String equipment) {
    return Optional.ofNullable(vehicle.equipment().get(equipment))
        .map(Ternary::of)
        .orElse(Ternary.UNKNOWN);
  }

  @Override
  public Ternary isForMarket(Set<String> markets) {
    return vehicle
        .market()
        .map(market -> Ternary.of(markets.contains(market)))
        .orElseGet(() -> among(List.copyOf(rules.markets().keySet()), markets));
  }

  @Override
  public Ternary isFromPlant(Set<String> plants) {
    return vehicle
        .plant()
        .map(plant -> Ternary.of(plants.contains(plant)))
        .orElseGet(() -> among(possiblePlants, plants));
  }

  /** Where the record does not say, the series that its numbers stand in may. */
  private List<String> plantsByNumber() {
    List<String> named =
        rules.numberTables().values().stream()
            .flatMap(
                table ->
                    vehicle.possibleNumbers(table.id()).stream()
                        .flatMap(number -> NumberDating.of(table, number).stream()))
            .flatMap(dated -> dated.series().plant().stream())
            .distinct()
            .toList();
    return named.isEmpty() ? List.copyOf(rules.plants().keySet()) : named;
  }

  private static Ternary among(List<String> possible, Set<String> asked) {
    if (possible.isEmpty()) {
      return Ternary.UNKNOWN;
    }
    if (asked.containsAll(possible)) {
      return Ternary.YES;
    }
    return possible.stream().noneMatch(asked::contains) ? Ternary.NO : Ternary.UNKNOWN;
  }
}
