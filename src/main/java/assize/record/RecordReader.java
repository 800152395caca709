package assize.record;

import assize.diagnostic.Code;
import assize.diagnostic.Result;
import assize.ruleset.RuleSet;
import assize.ruleset.Vocabularies;
import assize.schema.Fields;
import assize.schema.Names;
import assize.schema.Values;
import assize.text.Fingerprint;
import assize.text.SourceFile;
import assize.text.Span;
import assize.yaml.InputFiles;
import assize.yaml.InsideFolder;
import assize.yaml.NamedFiles;
import assize.yaml.Node;
import assize.yaml.Problems;
import assize.yaml.YamlTree;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads the record of one vehicle, by the words of the rule set that it is judged by. */
public final class RecordReader {
  private static final Pattern RECORD_LINE = Pattern.compile("(?m)^record[ \\t]*:");

  private RecordReader() {}

  /** Says whether a file looks like a record: it has a line that begins with {@code record:}. */
  public static boolean isRecord(Path file) {
    return InputFiles.load(file, file.toString(), "", new Problems())
        .filter(it -> RECORD_LINE.matcher(it.file().text()).find())
        .isPresent();
  }

  /**
   * Finds the rule set that a record names: a file or folder beside the record or below.
   *
   * @return its path; other faults of the record are left for {@link #read}, unless it is no YAML
   */
  public static Result<Path> rulesOf(Path file) {
    return rulesOf(file, InputFiles.shown(file));
  }

  /** Finds the rule set that a record names; {@code shown} is how messages name the record. */
  public static Result<Path> rulesOf(Path file, String shown) {
    Problems problems = new Problems();
    Values values = new Values(problems);
    Optional<Path> rules =
        InputFiles.load(file, shown, shown, problems)
            .flatMap(it -> root(it.file(), values))
            .flatMap(it -> it.get("rules"))
            .flatMap(it -> values.scalar(it, "the rule set's file or folder"))
            .flatMap(it -> folderOf(file).find(it, problems));
    return new Result<>(rules, problems.all());
  }

  /** Reads a record by its rule set. */
  public static Result<VehicleRecord> read(Path file, RuleSet rules) {
    return read(file, InputFiles.shown(file), rules);
  }

  /** Reads a record by its rule set; {@code shown} is how messages name the record. */
  public static Result<VehicleRecord> read(Path file, String shown, RuleSet rules) {
    Problems problems = new Problems();
    String name = Optional.ofNullable(file.getFileName()).map(Path::toString).orElse(shown);
    return InputFiles.load(file, shown, name, problems)
        .map(it -> read(it, rules, Optional.of(folderOf(file)), problems))
        .orElseGet(() -> Result.failed(problems.all()));
  }

  /** Reads a record from a text by its rule set; files that it names are not looked for. */
  public static Result<VehicleRecord> parse(SourceFile text, RuleSet rules) {
    return read(InputFiles.Loaded.of(text), rules, Optional.empty(), new Problems());
  }

  /** Reads a record from a text as if it stood in {@code folder}: files it names are looked for. */
  public static Result<VehicleRecord> parse(SourceFile text, RuleSet rules, Path folder) {
    InsideFolder inside = new InsideFolder(folder, InsideFolder.OF_RECORD);
    return read(InputFiles.Loaded.of(text), rules, Optional.of(inside), new Problems());
  }

  /** Reads a record by its rule set; files that it names are not looked for. */
  public static Result<VehicleRecord> readAlone(Path file, RuleSet rules) {
    Problems problems = new Problems();
    String shown = InputFiles.shown(file);
    return InputFiles.load(file, shown, shown, problems)
        .map(it -> read(it, rules, Optional.empty(), problems))
        .orElseGet(() -> Result.failed(problems.all()));
  }

  private static Result<VehicleRecord> read(
      InputFiles.Loaded loaded, RuleSet rules, Optional<InsideFolder> folder, Problems problems) {
    Values values = new Values(problems);
    Optional<VehicleRecord> record =
        root(loaded.file(), values).flatMap(it -> record(it, loaded, rules, folder, values));
    return new Result<>(record.filter(it -> !problems.hasErrors()), problems.all());
  }

  private static InsideFolder folderOf(Path file) {
    Path parent = file.toAbsolutePath().getParent();
    return new InsideFolder(
        parent == null ? file.toAbsolutePath() : parent, InsideFolder.OF_RECORD);
  }

  private static Optional<Fields> root(SourceFile file, Values values) {
    Span start = file.span(0, 0);
    return YamlTree.parse(file, values.problems())
        .flatMap(
            root ->
                root.match(
                    mapping ->
                        Optional.of(values.fields(mapping, VehicleRecord.TABLE.block(), start)),
                    list -> noRecord(root, start, values),
                    text -> noRecord(root, start, values)));
  }

  private static Optional<Fields> noRecord(Node root, Span start, Values values) {
    values
        .problems()
        .add(
            Code.WRONG_STRUCTURE,
            start,
            root.kind() + " is all that this file holds; a record begins with `record:`");
    return Optional.empty();
  }

  private static Optional<VehicleRecord> record(
      Fields fields,
      InputFiles.Loaded loaded,
      RuleSet rules,
      Optional<InsideFolder> folder,
      Values values) {
    NamedFiles named = new NamedFiles(folder, values.problems());
    RecordReading in =
        new RecordReading(
            rules,
            Vocabularies.of(rules),
            evidenceNames(fields.peek("evidence")),
            named,
            RecordReading.items(rules),
            values);
    Optional<VehicleRecord> record = VehicleRecord.TABLE.read(fields, in, fields.at());
    List<Fingerprint> files = new ArrayList<>(List.of(loaded.fingerprint()));
    files.addAll(named.fingerprints());
    return record.map(it -> it.with(VehicleRecord.FILES, List.copyOf(files)));
  }

  private static Names evidenceNames(Optional<Node.Entry> section) {
    Names shown = new Names("evidence", "this record", Code.UNKNOWN_EVIDENCE, true);
    section
        .flatMap(it -> it.value().match(Optional::of, s -> Optional.empty(), s -> Optional.empty()))
        .map(Node.Mapping.class::cast)
        .ifPresent(
            it ->
                it.entries().forEach(one -> shown.define(one.name(), Optional.of(one.key().at()))));
    return shown;
  }
}
