package assize.merge;

import assize.record.Observation;
import assize.record.Secret;
import assize.record.VehicleRecord;
import assize.yaml.YamlValue;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What of a friend's words on one item is not for others, and has to stay so in the record. */
final class PrivacyMarks {
  private final LocatedRecord mine;
  private final String item;
  private final Set<String> needed = new HashSet<>();
  private final List<Side> from = new ArrayList<>();

  PrivacyMarks(LocatedRecord mine, String item) {
    this.mine = mine;
    this.item = item;
  }

  /** Keeps what a friend keeps from others of what is taken under a key. */
  void keep(LocatedRecord theirs, String key) {
    Set<String> unshared =
        IncomingValue.observation(theirs, item).map(Observation::unshared).orElse(Set.of());
    boolean witness = IncomingValue.WITNESSED.contains(key);
    boolean judged = theirs.record().unshared().contains(VehicleRecord.INSPECTED.name());
    for (Secret<?> one : Observation.SECRETS) {
      boolean hidden = unshared.contains(one.word()) || witness && judged;
      if (one.of().equals(key) && hidden && needed.add(one.word())) {
        List<String> path = new RecordField(item, LocatedRecord.PRIVATE).path();
        from.add(new Side(theirs.name(), theirs.at(path), YamlValue.text(one.word())));
      }
    }
  }

  List<Side> from() {
    return from;
  }

  /** Returns what `private` has to say in the record, if it does not say it yet. */
  Optional<YamlValue> missing() {
    Set<String> own =
        IncomingValue.observation(mine, item).map(Observation::unshared).orElse(Set.of());
    List<YamlValue> words = new ArrayList<>();
    Optional<YamlValue> written =
        own.isEmpty() ? Optional.empty() : mine.observation(item).get(LocatedRecord.PRIVATE);
    written.ifPresent(
        it -> words.addAll(it.asItems().map(YamlValue.Items::all).orElse(List.of(it))));
    int before = words.size();
    Observation.SECRETS.stream()
        .map(Secret::word)
        .filter(it -> needed.contains(it) && !own.contains(it))
        .forEach(it -> words.add(YamlValue.text(it)));
    return words.size() > before ? Optional.of(new YamlValue.Items(words)) : Optional.empty();
  }
}
