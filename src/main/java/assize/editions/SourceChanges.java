package assize.editions;

import assize.evidence.Source;
import assize.ruleset.RuleSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What changed of the sources. */
final class SourceChanges {
  private final RuleSet before;
  private final RuleSet after;
  private final Bearing bearing;

  SourceChanges(RuleSet before, RuleSet after, Bearing bearing) {
    this.before = before;
    this.after = after;
    this.bearing = bearing;
  }

  void into(List<Change> changes) {
    new Differences(changes, Part.SOURCE)
        .each(
            before.sources(),
            after.sources(),
            id -> id,
            Source::title,
            bearing::source,
            (of, both) -> source(of, both.before(), both.after()));
  }

  private static void source(Differences.Of of, Source before, Source after) {
    of.words("title", false, before.title(), after.title());
    of.words("kind", false, before.kind().word(), after.kind().word());
    of.words("grade", true, before.grade().name(), after.grade().name());
    of.words("date", false, before.date().map(it -> it.text()), after.date().map(it -> it.text()));
    of.words("held by", false, before.heldBy(), after.heldBy());
    of.words("copies", true, copies(before), copies(after));
    of.words("notes", false, before.notes(), after.notes());
  }

  private static Optional<String> copies(Source source) {
    return source.copies().isEmpty()
        ? Optional.empty()
        : Optional.of(source.copies().stream().sorted().collect(Collectors.joining(", ")));
  }
}
