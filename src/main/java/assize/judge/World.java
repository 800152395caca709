package assize.judge;

import assize.date.DateRange;
import assize.date.DateRangeSet;
import assize.evidence.Scope;
import assize.evidence.Ternary;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One way in which a vehicle can be on its build day: a value for each fact that conditions ask
 * for, all of which can come together. Equipment that the record does not state stays unknown.
 *
 * @param days build days within which no condition, no production and no dating changes
 * @param supposed its other facts
 * @param weight its share of the ways on one of these days; they add up to 1
 */
record World(DateRange days, Supposed supposed, BigFraction weight) implements Scope.Facts {

  /**
   * What is supposed of a vehicle, but for its build day.
   *
   * @param model empty only where the rule set names none
   * @param market empty where no condition asks for it; so is the plant
   * @param numbers by table, the ranges asked for that its number lies in
   * @param equipment what is fitted and what is not; the rest is unknown
   */
  record Supposed(
      Optional<String> model,
      Optional<String> market,
      Optional<String> plant,
      Map<String, Set<Scope.Numbers>> numbers,
      Map<String, Boolean> equipment) {
    Supposed {
      numbers = Map.copyOf(numbers);
      equipment = Map.copyOf(equipment);
    }
  }

  /** Returns the same vehicle with one more piece of equipment, or surely without it. */
  World with(String piece, boolean fitted) {
    Map<String, Boolean> more = new LinkedHashMap<>(supposed.equipment());
    more.put(piece, fitted);
    return new World(
        days,
        new Supposed(
            supposed.model(), supposed.market(), supposed.plant(), supposed.numbers(), more),
        weight.divide(2));
  }

  /** Returns the same way on another stretch of days. */
  World on(DateRange other) {
    return new World(other, supposed, weight);
  }

  private static Ternary among(Optional<String> value, Set<String> asked) {
    return value.map(it -> Ternary.of(asked.contains(it))).orElse(Ternary.UNKNOWN);
  }

  @Override
  public Ternary isModel(Set<String> models) {
    return among(supposed.model(), models);
  }

  @Override
  public Ternary isBuilt(DateRangeSet asked) {
    return Ternary.of(asked.contains(days.first()));
  }

  @Override
  public Ternary hasNumber(String table, String from, String to) {
    return Optional.ofNullable(supposed.numbers().get(table))
        .map(it -> Ternary.of(it.contains(new Scope.Numbers(table, from, to))))
        .orElse(Ternary.UNKNOWN);
  }

  @Override
  public Ternary hasEquipment(String equipment) {
    return Optional.ofNullable(supposed.equipment().get(equipment))
        .map(Ternary::of)
        .orElse(Ternary.UNKNOWN);
  }

  @Override
  public Ternary isForMarket(Set<String> markets) {
    return among(supposed.market(), markets);
  }

  @Override
  public Ternary isFromPlant(Set<String> plants) {
    return among(supposed.plant(), plants);
  }
}
