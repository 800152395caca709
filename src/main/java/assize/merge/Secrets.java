package assize.merge;

import assize.edit.Content;
import assize.record.Observation;
import assize.record.Unshared;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What of a friend's words on one item is not for others, and has to stay so in the record. */
final class Secrets {
  private final WrittenRecord mine;
  private final String item;
  private final Set<Unshared> needed = EnumSet.noneOf(Unshared.class);
  private final List<Side> from = new ArrayList<>();

  Secrets(WrittenRecord mine, String item) {
    this.mine = mine;
    this.item = item;
  }

  /** Keeps what a friend keeps from others of what is taken under a key. */
  void keep(WrittenRecord theirs, String key) {
    Set<Unshared> unshared =
        Offer.observation(theirs, item).map(Observation::unshared).orElse(Set.of());
    Unshared word =
        switch (key) {
          case Offer.BY -> Unshared.BY;
          case Offer.ON -> Unshared.ON;
          case WrittenRecord.EVIDENCE -> Unshared.EVIDENCE;
          case Offer.DEPARTURE -> Unshared.WHY;
          case Offer.HOLDS -> Unshared.BECAUSE;
          default -> Unshared.NOTE;
        };
    boolean isWord = key.equals(Offer.NOTE) || word != Unshared.NOTE;
    boolean witness = word == Unshared.BY || word == Unshared.ON;
    boolean hidden =
        unshared.contains(word) || witness && theirs.record().unshared().contains(Unshared.JUDGED);
    if (isWord && hidden && needed.add(word)) {
      List<String> path = new Part(item, WrittenRecord.PRIVATE).path();
      from.add(new Side(theirs.name(), theirs.at(path), Content.text(word.word())));
    }
  }

  List<Side> from() {
    return from;
  }

  /** Returns what `private` has to say in the record, if it does not say it yet. */
  Optional<Content> missing() {
    Set<Unshared> own = Offer.observation(mine, item).map(Observation::unshared).orElse(Set.of());
    List<Content> words = new ArrayList<>();
    Optional<Content> written =
        own.isEmpty() ? Optional.empty() : mine.observation(item).get(WrittenRecord.PRIVATE);
    written.ifPresent(it -> words.addAll(it.asItems().map(Content.Items::all).orElse(List.of(it))));
    int before = words.size();
    needed.stream()
        .filter(it -> !own.contains(it))
        .forEach(it -> words.add(Content.text(it.word())));
    return words.size() > before ? Optional.of(new Content.Items(words)) : Optional.empty();
  }
}
