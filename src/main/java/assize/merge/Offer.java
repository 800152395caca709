package assize.merge;

import assize.aspect.Aspect;
import assize.edit.Content;
import assize.record.Observation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.Stream;

/**
 * What one record says under one key of an item.
 *
 * @param observation all that it says of the item
 * @param value what is written under the key
 */
record Offer(WrittenRecord from, Part part, Observation observation, Content value) {
  static final String NOTE = "note";
  static final String BY = "by";
  static final String ON = "on";
  static final String DEPARTURE = "departure";
  static final String HOLDS = "holds";
  static final String BECAUSE = "because";

  /** What is said once: the aspects, and what else has one value that can be another's. */
  static final List<String> KEYS =
      Stream.concat(
              Arrays.stream(Aspect.values()).map(Aspect::word), Stream.of(NOTE, DEPARTURE, HOLDS))
          .toList();

  /** Returns what a record says under a key, if it says something. */
  static Optional<Offer> of(WrittenRecord record, Part part) {
    return observation(record, part.item())
        .flatMap(
            it ->
                record
                    .observation(part.item())
                    .get(part.key())
                    .filter(value -> !WrittenRecord.isBlank(part.key(), value))
                    .map(value -> new Offer(record, part, it, value)));
  }

  static Optional<Observation> observation(WrittenRecord record, String item) {
    return Optional.ofNullable(record.record().observations().get(item));
  }

  /** Says whether another record says the same, however it is written. */
  boolean saysWhat(Offer other) {
    Optional<Aspect> aspect = Aspect.of(part.key());
    if (aspect.isPresent()) {
      return both(
          Optional.ofNullable(observation.findings().get(aspect.get())),
          Optional.ofNullable(other.observation.findings().get(aspect.get())),
          Sameness::ofFindings);
    }
    return switch (part.key()) {
      case NOTE -> Sameness.ofTexts(observation.note(), other.observation.note());
      case DEPARTURE ->
          both(observation.departure(), other.observation.departure(), Sameness::ofDepartures);
      case HOLDS -> both(observation.opinion(), other.observation.opinion(), Sameness::ofOpinions);
      default -> value.equals(other.value);
    };
  }

  private static <T> boolean both(Optional<T> one, Optional<T> other, BiPredicate<T, T> same) {
    return one.isPresent() && other.isPresent() && same.test(one.get(), other.get());
  }

  /** Returns what goes with it, as the reason with what is held to be right. */
  Map<String, Content> fields() {
    Map<String, Content> fields = new LinkedHashMap<>();
    fields.put(part.key(), value);
    if (part.key().equals(HOLDS)) {
      from.observation(part.item()).get(BECAUSE).ifPresent(it -> fields.put(BECAUSE, it));
    }
    return fields;
  }

  Side side() {
    return new Side(from.name(), from.at(part.path()), value);
  }

  /** Returns one of each that say the same, in the order given. */
  static List<Offer> different(List<Offer> offers) {
    List<Offer> different = new ArrayList<>();
    for (Offer offer : offers) {
      if (different.stream().noneMatch(offer::saysWhat)) {
        different.add(offer);
      }
    }
    return different;
  }
}
