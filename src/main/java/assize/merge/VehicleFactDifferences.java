package assize.merge;

import assize.pattern.NumberPattern;
import assize.record.Named;
import assize.record.VehicleRecord;
import assize.schema.Field;
import assize.yaml.YamlValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** Finds what a friend's record says of the vehicle itself that the record does not say. */
final class VehicleFactDifferences {
  private final LocatedRecord mine;
  private final LocatedRecord theirs;
  private final List<MergeResult.Aside> found = new ArrayList<>();

  private VehicleFactDifferences(LocatedRecord mine, LocatedRecord theirs) {
    this.mine = mine;
    this.theirs = theirs;
  }

  static List<MergeResult.Aside> of(LocatedRecord mine, LocatedRecord theirs) {
    VehicleFactDifferences asides = new VehicleFactDifferences(mine, theirs);
    asides.find();
    return asides.found;
  }

  private void find() {
    VehicleRecord own = mine.record();
    VehicleRecord other = theirs.record();
    unless(
        it -> own.model().equals(other.model()), VehicleRecord.VEHICLE.name(), Named.MODEL.name());
    unless(
        it -> ValueEquality.ofTexts(own.notes(), other.notes()),
        VehicleRecord.VEHICLE.name(),
        Named.NOTES.name());
    for (String table : other.numbers().keySet()) {
      Optional<String> number = Optional.ofNullable(own.numbers().get(table));
      String told = NumberPattern.fold(other.numbers().getOrDefault(table, ""));
      unless(
          it -> number.map(NumberPattern::fold).filter(told::equals).isPresent(),
          VehicleRecord.NUMBERS.name(),
          table);
    }
    unlessAlike(VehicleRecord.BUILT);
    unlessAlike(VehicleRecord.PLANT);
    unlessAlike(VehicleRecord.MARKET);
    for (String one : other.equipment().keySet()) {
      Optional<Boolean> has = Optional.ofNullable(own.equipment().get(one));
      Optional<Boolean> told = Optional.ofNullable(other.equipment().get(one));
      unless(it -> has.equals(told), VehicleRecord.EQUIPMENT.name(), one);
    }
    unless(it -> own.unshared().containsAll(other.unshared()), LocatedRecord.PRIVATE);
  }

  private void unlessAlike(Field<?, ?> fact) {
    unless(it -> fact.isAlike(mine.record(), theirs.record()), fact.name());
  }

  private void unless(Predicate<YamlValue> same, String... names) {
    List<String> path = List.of(names);
    Optional<YamlValue> told = theirs.content().at(path);
    if (told.isEmpty() || same.test(told.get())) {
      return;
    }
    Side side = new Side(theirs.name(), theirs.at(path), told.get());
    Optional<Side> own =
        mine.content().at(path).map(it -> new Side(mine.name(), mine.at(path), it));
    found.add(new MergeResult.Aside(path, side, own));
  }
}
