package assize.record;

import assize.diagnostic.DiagnosticCode;
import assize.diagnostic.Result;
import assize.ruleset.RuleSet;
import assize.ruleset.Vocabularies;
import assize.schema.DefinedNames;
import assize.schema.MappingReader;
import assize.schema.ScalarReader;
import assize.text.FileChecksum;
import assize.text.SourceFile;
import assize.text.Span;
import assize.yaml.BoundedFileReader;
import assize.yaml.ContainedFileResolver;
import assize.yaml.DiagnosticCollector;
import assize.yaml.Node;
import assize.yaml.ReferencedFiles;
import assize.yaml.YamlTreeBuilder;
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
    return BoundedFileReader.load(file, file.toString(), "", new DiagnosticCollector())
        .filter(it -> RECORD_LINE.matcher(it.file().text()).find())
        .isPresent();
  }

  /**
   * Finds the rule set that a record names: a file or folder beside the record or below.
   *
   * @return its path; other faults of the record are left for {@link #read}, unless it is no YAML
   */
  public static Result<Path> rulesOf(Path file) {
    return rulesOf(file, BoundedFileReader.shown(file));
  }

  /** Finds the rule set that a record names; {@code shown} is how messages name the record. */
  public static Result<Path> rulesOf(Path file, String shown) {
    DiagnosticCollector problems = new DiagnosticCollector();
    ScalarReader values = new ScalarReader(problems);
    Optional<Path> rules =
        BoundedFileReader.load(file, shown, shown, problems)
            .flatMap(it -> root(it.file(), values))
            .flatMap(it -> it.get("rules"))
            .flatMap(it -> values.scalar(it, "the rule set's file or folder"))
            .flatMap(it -> folderOf(file).find(it, problems));
    return new Result<>(rules, problems.all());
  }

  /** Reads a record by its rule set. */
  public static Result<VehicleRecord> read(Path file, RuleSet rules) {
    return read(file, BoundedFileReader.shown(file), rules);
  }

  /** Reads a record by its rule set; {@code shown} is how messages name the record. */
  public static Result<VehicleRecord> read(Path file, String shown, RuleSet rules) {
    DiagnosticCollector problems = new DiagnosticCollector();
    String name = Optional.ofNullable(file.getFileName()).map(Path::toString).orElse(shown);
    return BoundedFileReader.load(file, shown, name, problems)
        .map(it -> read(it, rules, Optional.of(folderOf(file)), problems))
        .orElseGet(() -> Result.failed(problems.all()));
  }

  /** Reads a record from a text by its rule set; files that it names are not looked for. */
  public static Result<VehicleRecord> parse(SourceFile text, RuleSet rules) {
    return read(
        BoundedFileReader.Loaded.of(text), rules, Optional.empty(), new DiagnosticCollector());
  }

  /** Reads a record from a text as if it stood in {@code folder}: files it names are looked for. */
  public static Result<VehicleRecord> parse(SourceFile text, RuleSet rules, Path folder) {
    ContainedFileResolver inside =
        new ContainedFileResolver(folder, ContainedFileResolver.OF_RECORD);
    return read(
        BoundedFileReader.Loaded.of(text), rules, Optional.of(inside), new DiagnosticCollector());
  }

  /** Reads a record by its rule set; files that it names are not looked for. */
  public static Result<VehicleRecord> readAlone(Path file, RuleSet rules) {
    DiagnosticCollector problems = new DiagnosticCollector();
    String shown = BoundedFileReader.shown(file);
    return BoundedFileReader.load(file, shown, shown, problems)
        .map(it -> read(it, rules, Optional.empty(), problems))
        .orElseGet(() -> Result.failed(problems.all()));
  }

  private static Result<VehicleRecord> read(
      BoundedFileReader.Loaded loaded,
      RuleSet rules,
      Optional<ContainedFileResolver> folder,
      DiagnosticCollector problems) {
    ScalarReader values = new ScalarReader(problems);
    Optional<VehicleRecord> record =
        root(loaded.file(), values).flatMap(it -> record(it, loaded, rules, folder, values));
    return new Result<>(record.filter(it -> !problems.hasErrors()), problems.all());
  }

  private static ContainedFileResolver folderOf(Path file) {
    Path parent = file.toAbsolutePath().getParent();
    return new ContainedFileResolver(
        parent == null ? file.toAbsolutePath() : parent, ContainedFileResolver.OF_RECORD);
  }

  private static Optional<MappingReader> root(SourceFile file, ScalarReader values) {
    Span start = file.span(0, 0);
    return YamlTreeBuilder.parse(file, values.problems())
        .flatMap(
            root ->
                root.match(
                    mapping ->
                        Optional.of(values.fields(mapping, VehicleRecord.TABLE.block(), start)),
                    list -> noRecord(root, start, values),
                    text -> noRecord(root, start, values)));
  }

  private static Optional<MappingReader> noRecord(Node root, Span start, ScalarReader values) {
    values
        .problems()
        .add(
            DiagnosticCode.WRONG_STRUCTURE,
            start,
            root.kind() + " is all that this file holds; a record begins with `record:`");
    return Optional.empty();
  }

  private static Optional<VehicleRecord> record(
      MappingReader fields,
      BoundedFileReader.Loaded loaded,
      RuleSet rules,
      Optional<ContainedFileResolver> folder,
      ScalarReader values) {
    ReferencedFiles named = new ReferencedFiles(folder, values.problems());
    RecordReading in =
        new RecordReading(
            rules,
            Vocabularies.of(rules),
            evidenceNames(fields.peek("evidence")),
            named,
            RecordReading.items(rules),
            values);
    Optional<VehicleRecord> record = VehicleRecord.TABLE.read(fields, in, fields.at());
    List<FileChecksum> files = new ArrayList<>(List.of(loaded.checksum()));
    files.addAll(named.checksums());
    return record.map(it -> it.with(VehicleRecord.FILES, List.copyOf(files)));
  }

  private static DefinedNames evidenceNames(Optional<Node.Entry> section) {
    DefinedNames shown =
        new DefinedNames("evidence", "this record", DiagnosticCode.UNKNOWN_EVIDENCE, true);
    section
        .flatMap(it -> it.value().match(Optional::of, s -> Optional.empty(), s -> Optional.empty()))
        .map(Node.Mapping.class::cast)
        .ifPresent(
            it ->
                it.entries().forEach(one -> shown.define(one.name(), Optional.of(one.key().at()))));
    return shown;
  }
}
