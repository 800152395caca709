package assize.judge;

import assize.date.DateRangeSet;
import assize.evidence.Scope;
import assize.evidence.Ternary;
import java.util.Optional;
import java.util.Set;

/** What is known of a vehicle, with one value supposed for each fact that can have only one. */
record AssumedFacts(
    Scope.Facts known, Optional<String> model, Optional<String> market, Optional<String> plant)
    implements Scope.Facts {

  @Override
  public Ternary isModel(Set<String> models) {
    return model.map(it -> Ternary.of(models.contains(it))).orElseGet(() -> known.isModel(models));
  }

  @Override
  public Ternary isBuilt(DateRangeSet days) {
    return known.isBuilt(days);
  }

  @Override
  public Ternary hasNumber(String table, String from, String to) {
    return known.hasNumber(table, from, to);
  }

  @Override
  public Ternary hasEquipment(String equipment) {
    return known.hasEquipment(equipment);
  }

  @Override
  public Ternary isForMarket(Set<String> markets) {
    return market
        .map(it -> Ternary.of(markets.contains(it)))
        .orElseGet(() -> known.isForMarket(markets));
  }

  @Override
  public Ternary isFromPlant(Set<String> plants) {
    return plant
        .map(it -> Ternary.of(plants.contains(it)))
        .orElseGet(() -> known.isFromPlant(plants));
  }
}
