package assize.merge;

import assize.record.Observation;
import assize.schema.Field;
import assize.schema.Field.Merging;
import assize.yaml.YamlValue;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
    List<Field<?, ?>> together = together();
    return together.isEmpty()
        ? value.equals(other.value)
        : together.get(0).isSaid(observation)
            && together.get(0).isSaid(other.observation)
            && together.stream().allMatch(it -> it.isAlike(observation, other.observation));
  }

  /** Returns the fact that is said, and those that go with it. */
  private List<Field<?, ?>> together() {
    List<Field<?, ?>> together = new ArrayList<>();
    for (Field<?, ?> one : Observation.TABLE.fields()) {
      boolean here = !one.keys().isEmpty() && one.name().equals(part.key());
      if (here || !together.isEmpty() && one.merging() == Merging.ALONG) {
        together.add(one);
      } else if (!together.isEmpty()) {
        break;
      }
    }
    return together;
  }

  /** Returns what goes with it, as the reason with what is held to be right. */
  Map<String, YamlValue> fields() {
    Map<String, YamlValue> fields = new LinkedHashMap<>();
    fields.put(part.key(), value);
    for (Field<?, ?> one : together()) {
      from.observation(part.item())
          .get(one.name())
          .ifPresent(it -> fields.putIfAbsent(one.name(), it));
    }
    return fields;
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
