package assize.merge;

import assize.record.Observation;
import assize.schema.Field;
import assize.schema.Field.Merging;
import assize.yaml.YamlValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What one record says under one key of an item.
 *
 * @param observation all that it says of the item
 * @param value what is written under the key
 */
record IncomingValue(
    LocatedRecord from, RecordField part, Observation observation, YamlValue value) {
  /** What is said once: the aspects, and what else has one value that can be another's. */
  static final List<String> KEYS = Observation.TABLE.keys(Merging.SAID).toList();

  /** Who looked, and when. */
  static final List<String> WITNESSED = Observation.TABLE.keys(Merging.WITNESS).toList();

  /** Returns what a record says under a key, if it says something. */
  static Optional<IncomingValue> of(LocatedRecord record, RecordField part) {
    return observation(record, part.item())
        .flatMap(
            it ->
                record
                    .observation(part.item())
                    .get(part.key())
                    .filter(value -> !LocatedRecord.isBlank(part.key(), value))
                    .map(value -> new IncomingValue(record, part, it, value)));
  }

  static Optional<Observation> observation(LocatedRecord record, String item) {
    return Optional.ofNullable(record.record().observations().get(item));
  }

  /** Says whether another record says the same, however it is written. */
  boolean saysWhat(IncomingValue other) {
    return field()
        .map(
            it ->
                it.isSaid(observation)
                    && it.isSaid(other.observation)
                    && it.isAlike(observation, other.observation))
        .orElseGet(() -> value.equals(other.value));
  }

  private Optional<Field<?, ?>> field() {
    for (Field<?, ?> one : Observation.TABLE.fields()) {
      if (!one.keys().isEmpty() && one.name().equals(part.key())) {
        return Optional.of(one);
      }
    }
    return Optional.empty();
  }

  Side side() {
    return new Side(from.name(), from.at(part.path()), value);
  }

  /** Returns one of each that say the same, in the order given. */
  static List<IncomingValue> different(List<IncomingValue> offers) {
    List<IncomingValue> different = new ArrayList<>();
    for (IncomingValue offer : offers) {
      if (different.stream().noneMatch(offer::saysWhat)) {
        different.add(offer);
      }
    }
    return different;
  }
}
