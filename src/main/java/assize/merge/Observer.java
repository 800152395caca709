package assize.merge;

import assize.yaml.YamlValue;
import java.util.List;
import java.util.Optional;

/**
 * Who looked at an item, and when, as friends' records say: at the item itself, or for all of them.
 *
 * @param judgedIsTaken whether the record takes over what they say for all of them
 */
record Observer(LocatedRecord mine, boolean judgedIsTaken) {

  /** Returns what a friend's record says, if the record's own word for all would not say it. */
  Optional<Side> told(LocatedRecord theirs, RecordField part) {
    Optional<YamlValue> own = theirs.observation(part.item()).get(part.key());
    if (own.isPresent()) {
      return own.map(it -> new Side(theirs.name(), theirs.at(part.path()), it));
    }
    List<String> path = List.of(LocatedRecord.JUDGED, part.key());
    return theirs
        .content()
        .at(path)
        .filter(it -> !judgedIsTaken && !Optional.of(it).equals(mine.content().at(path)))
        .map(it -> new Side(theirs.name(), theirs.at(path), it));
  }
}
