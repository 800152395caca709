package assize.lint;

import assize.date.DaySet;
import assize.date.DaySpan;
import assize.evidence.Kleene;
import assize.evidence.Scope;
import java.util.Set;

/**
 * Any vehicle of one model built within some days; of its number, equipment, market and plant
 * nothing is known.
 *
 * @param days days that no condition on the build day parts
 */
record Stretch(String model, DaySpan days) implements Scope.Facts {
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
    return Kleene.UNKNOWN;
  }

  @Override
  public Kleene hasEquipment(String equipment) {
    return Kleene.UNKNOWN;
  }

  @Override
  public Kleene isForMarket(Set<String> markets) {
    return Kleene.UNKNOWN;
  }

  @Override
  public Kleene isFromPlant(Set<String> plants) {
    return Kleene.UNKNOWN;
  }
}
