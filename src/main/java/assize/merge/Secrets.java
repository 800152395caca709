package assize.merge;

import assize.record.Observation;
import assize.record.Secret;
import assize.record.VehicleRecord;
import assize.yaml.Content;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What of a friend's words on one item is not for others, and has to stay so in the record. */
final class Secrets {
  private final WrittenRecord mine;
  private final String item;
  private final Set<String> needed = new HashSet<>();
  private final List<Side> from = new ArrayList<>();

  Secrets(WrittenRecord mine, String item) {
    this.mine = mine;
    this.item = item;
  }

  /** Keeps what a friend keeps from others of what is taken under a key. */
  void keep(WrittenRecord theirs, String key) {
    Set<String> unshared =
        Offer.observation(theirs, item).map(Observation::unshared).orElse(Set.of());
    boolean witness = Offer.WITNESSED.contains(key);
    boolean judged = theirs.record().unshared().contains(VehicleRecord.JUDGED.name());
    for (Secret<?> one : Observation.SECRETS) {
      boolean hidden = unshared.contains(one.word()) || witness && judged;
      if (one.of().equals(key) && hidden && needed.add(one.word())) {
        List<String> path = new Part(item, WrittenRecord.PRIVATE).path();
        from.add(new Side(theirs.name(), theirs.at(path), Content.text(one.word())));
      }
    }
  }

  List<Side> from() {
    return from;
  }

  /** Returns what `private` has to say in the record, if it does not say it yet. */
  Optional<Content> missing() {
    Set<String> own = Offer.observation(mine, item).map(Observation::unshared).orElse(Set.of());
    List<Content> words = new ArrayList<>();
    Optional<Content> written =
        own.isEmpty() ? Optional.empty() : mine.observation(item).get(WrittenRecord.PRIVATE);
    written.ifPresent(it -> words.addAll(it.asItems().map(Content.Items::all).orElse(List.of(it))));
    int before = words.size();
    Observation.SECRETS.stream()
        .map(Secret::word)
        .filter(it -> needed.contains(it) && !own.contains(it))
        .forEach(it -> words.add(Content.text(it)));
    return words.size() > before ? Optional.of(new Content.Items(words)) : Optional.empty();
  }
}
