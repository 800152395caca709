package assize.record;

import assize.date.Edtf;
import assize.diagnostic.Code;
import assize.schema.Fields;
import assize.schema.Values;
import assize.yaml.NamedFiles;
import assize.yaml.Node;
import assize.yaml.Words;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads what a record has to show, and looks whether the files are there. */
public final class EvidenceReader {
  private final NamedFiles files;
  private final Values values;

  /**
   * Begins with no evidence.
   *
   * @param files gathers the files that are named
   */
  public EvidenceReader(NamedFiles files, Values values) {
    this.files = files;
    this.values = values;
  }

  public Map<String, Evidence> read(Optional<Node.Entry> section) {
    Map<String, Evidence> evidence = new LinkedHashMap<>();
    for (Node.Entry entry : values.entries(section, "names with what each shows")) {
      values.checkId(entry.key());
      values
          .fields(entry, "evidence " + Words.quoted(entry.name()), RecordShapes.EVIDENCE)
          .flatMap(it -> evidence(entry, it))
          .ifPresent(it -> evidence.put(it.id(), it));
    }
    return evidence;
  }

  private Optional<Evidence> evidence(Node.Entry entry, Fields fields) {
    Optional<Evidence.Kind> kind = Optional.empty();
    Optional<String> what = Optional.empty();
    for (Evidence.Kind one : Evidence.Kind.values()) {
      Optional<Node.Entry> written = fields.get(one.word());
      if (written.isPresent() && kind.isPresent()) {
        values
            .problems()
            .add(
                Code.WRONG_SHAPE,
                written.get().key().at(),
                "one piece of evidence is a photo, a document or a measurement, not two of them",
                "write two pieces of evidence");
      } else if (written.isPresent()) {
        kind = Optional.of(one);
        what = what(one, written.get());
      }
    }
    Optional<String> caption = values.name(fields.get("caption"));
    Optional<Edtf> taken = values.parsed(fields.get("taken"), Code.BAD_DATE, "a date", Edtf::parse);
    Optional<String> by = values.text(fields.get("by"));
    PrivateReader hidden = new PrivateReader(values);
    List<Cover> covers = hidden.covers(fields.get("cover"), kind);
    boolean isUnshared = values.yesNo(fields.get("private")).orElse(false);
    fields.done();
    if (kind.isEmpty()) {
      values
          .problems()
          .add(
              Code.MISSING_KEY,
              entry.key().at(),
              "evidence " + Words.quoted(entry.name()) + " does not say what it is",
              "add `photo:`, `document:` or `measurement:`");
      return Optional.empty();
    }
    Evidence.Kind known = kind.get();
    return what.map(
        it ->
            new Evidence(
                entry.name(), known, it, caption, taken, by, covers, isUnshared, entry.key().at()));
  }

  private Optional<String> what(Evidence.Kind kind, Node.Entry entry) {
    if (kind == Evidence.Kind.MEASUREMENT) {
      return values.name(Optional.of(entry));
    }
    Optional<Node.Scalar> file = values.visible(Optional.of(entry), "a single text");
    file.ifPresent(files::look);
    return file.map(Node.Scalar::text);
  }
}
