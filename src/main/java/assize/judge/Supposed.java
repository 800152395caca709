package assize.judge;

import assize.date.DaySet;
import assize.evidence.Kleene;
import assize.evidence.Scope;
import java.util.Optional;
import java.util.Set;

/** What is known of a vehicle, with one value supposed for each fact that can have only one. */
record Supposed(
    Scope.Facts known, Optional<String> model, Optional<String> market, Optional<String> plant)
    implements Scope.Facts {

  @Override
  public Kleene isModel(Set<String> models) {
    return model.map(it -> Kleene.of(models.contains(it))).orElseGet(() -> known.isModel(models));
  }

  @Override
  public Kleene isBuilt(DaySet days) {
    return known.isBuilt(days);
  }

  @Override
  public Kleene hasNumber(String table, String from, String to) {
    return known.hasNumber(table, from, to);
  }

  @Override
  public Kleene hasEquipment(String equipment) {
    return known.hasEquipment(equipment);
  }

  @Override
  public Kleene isForMarket(Set<String> markets) {
    return market
        .map(it -> Kleene.of(markets.contains(it)))
        .orElseGet(() -> known.isForMarket(markets));
  }

  @Override
  public Kleene isFromPlant(Set<String> plants) {
    return plant
        .map(it -> Kleene.of(plants.contains(it)))
        .orElseGet(() -> known.isFromPlant(plants));
  }
}
