package assize.compare;

import assize.evidence.Source;
import assize.ruleset.RuleSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What changed of the sources. */
final class SourceChanges {
  private static final List<Property<Source>> PROPERTIES =
      List.of(
          Property.wording(Source.TITLE, "title"),
          Property.wording(
              Source.KIND, "kind", it -> Optional.of(new ChangedValue.Words(it.word()))),
          Property.altering(
              Source.GRADE, "grade", it -> Optional.of(new ChangedValue.Words(it.name()))),
          Property.wording(
              Source.DATE, "date", it -> it.map(date -> new ChangedValue.Words(date.text()))),
          Property.note(Source.HELD_BY, "held by"),
          Property.altering(Source.COPIES, "copies", SourceChanges::copies),
          Property.note(Source.NOTES, "notes"));

  private final RuleSet before;
  private final RuleSet after;
  private final AffectedItems bearing;

  SourceChanges(RuleSet before, RuleSet after, AffectedItems bearing) {
    this.before = before;
    this.after = after;
    this.bearing = bearing;
  }

  void into(List<Change> changes) {
    new ChangeCollector(changes, RuleSetPart.SOURCE)
        .each(
            before.sources(),
            after.sources(),
            id -> id,
            Source::title,
            bearing::source,
            (of, both) -> Property.compare(PROPERTIES, of, both.before(), both.after()));
  }

  private static Optional<ChangedValue> copies(Set<String> copies) {
    return copies.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new ChangedValue.Words(copies.stream().sorted().collect(Collectors.joining(", "))));
  }
}
