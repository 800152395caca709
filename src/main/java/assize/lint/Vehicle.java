package assize.lint;

import assize.date.DaySet;
import assize.date.DaySpan;
import assize.evidence.Kleene;
import assize.evidence.Scope;
import assize.ruleset.NumberTable.Series;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;

/**
 * One kind of vehicle, as far as some conditions tell kinds apart.
 *
 * @param days build days that no condition parts
 * @param market empty where no condition asks for it; so is the plant
 * @param equipment for each piece that a condition asks for, whether it is fitted
 * @param numbers by table, for each that a condition asks for
 */
record Vehicle(
    String model,
    DaySpan days,
    Optional<String> market,
    Optional<String> plant,
    Map<String, Boolean> equipment,
    Map<String, Number> numbers)
    implements Scope.Facts {

  /** The first of numbers of one series that no condition parts. */
  record Number(Series series, long number) {}

  @Override
  public Kleene isModel(Set<String> models) {
    return Kleene.of(models.contains(model));
  }

  @Override
  public Kleene isBuilt(DaySet asked) {
    return Kleene.of(asked.overlaps(days));
  }

  @Override
  public Kleene hasNumber(String table, String from, String to) {
    Optional<Number> own = Optional.ofNullable(numbers.get(table));
    return own.map(it -> Kleene.of(isWithin(it, from, to))).orElse(Kleene.UNKNOWN);
  }

  private static boolean isWithin(Number own, String from, String to) {
    OptionalLong least = own.series.numberOf(from);
    OptionalLong most = own.series.numberOf(to);
    return least.isPresent()
        && most.isPresent()
        && least.getAsLong() <= own.number
        && own.number <= most.getAsLong();
  }

  @Override
  public Kleene hasEquipment(String asked) {
    return Optional.ofNullable(equipment.get(asked)).map(Kleene::of).orElse(Kleene.UNKNOWN);
  }

  @Override
  public Kleene isForMarket(Set<String> markets) {
    return market.map(it -> Kleene.of(markets.contains(it))).orElse(Kleene.UNKNOWN);
  }

  @Override
  public Kleene isFromPlant(Set<String> plants) {
    return plant.map(it -> Kleene.of(plants.contains(it))).orElse(Kleene.UNKNOWN);
  }
}
