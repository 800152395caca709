package assize.ruleset;

import assize.aspect.Vocabulary;
import assize.date.Edtf;
import assize.diagnostic.Code;
import assize.evidence.Grade;
import assize.evidence.Source;
import assize.evidence.SourceKind;
import assize.schema.Fields;
import assize.schema.FixedWords;
import assize.schema.Values;
import assize.yaml.Node;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads who says so. */
final class SourceReader {
  private static final FixedWords<SourceKind> KINDS =
      FixedWords.of("a kind of source", Code.UNKNOWN_WORD, SourceKind.values(), SourceKind::word);

  private final Vocabulary names;
  private final Values values;

  SourceReader(Vocabulary names, Values values) {
    this.names = names;
    this.values = values;
  }

  Map<String, Source> sources(List<Node.Entry> entries) {
    Map<String, Source> sources = new LinkedHashMap<>();
    for (Node.Entry entry : entries) {
      values
          .fields(entry, RuleSetShapes.SOURCE)
          .flatMap(it -> source(entry, it))
          .ifPresent(it -> sources.put(it.id(), it));
    }
    return sources;
  }

  private Optional<Source> source(Node.Entry entry, Fields fields) {
    Optional<SourceKind> kind = KINDS.read(fields.get("kind"), values);
    Optional<Grade> grade = ScaleReader.GRADES.read(fields.get("grade"), values);
    Optional<String> title = values.name(fields.get("title"));
    Optional<Edtf> date = values.parsed(fields.get("date"), Code.BAD_DATE, "a date", Edtf::parse);
    Optional<String> heldBy = values.text(fields.get("held_by"));
    Set<String> copies = new LinkedHashSet<>();
    for (Node.Entry one : values.oneOrMore(fields.get("copies"))) {
      names.sources.find(one, values).ifPresent(copies::add);
    }
    Optional<String> notes = values.text(fields.get("notes"));
    fields.done();
    if (kind.isEmpty() || grade.isEmpty() || title.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Source(
            entry.name(),
            kind.get(),
            grade.get(),
            title.get(),
            date,
            heldBy,
            copies,
            notes,
            entry.key().at()));
  }
}
