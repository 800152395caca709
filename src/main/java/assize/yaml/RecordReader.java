package assize.yaml;

import assize.date.Edtf;
import assize.diagnostic.Accepted;
import assize.diagnostic.Code;
import assize.diagnostic.Result;
import assize.record.Evidence;
import assize.record.Observation;
import assize.record.Trace;
import assize.record.Unshared;
import assize.record.VehicleRecord;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import assize.shape.RecordShapes;
import assize.text.Fingerprint;
import assize.text.SourceFile;
import assize.text.Span;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Reads the record of one vehicle, by the words of the rule set that it is judged by. */
public final class RecordReader {
  private static final Pattern RECORD_LINE = Pattern.compile("(?m)^record[ \\t]*:");

  private final RuleSet rules;
  private final Vocabulary names;
  private final Values values;

  private RecordReader(RuleSet rules, Values values) {
    this.rules = rules;
    this.names = Vocabulary.of(rules);
    this.values = values;
  }

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
        root(loaded.file(), values)
            .flatMap(it -> new RecordReader(rules, values).record(it, loaded, folder));
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
                    mapping -> Optional.of(values.fields(mapping, RecordShapes.FILE, start)),
                    list -> noRecord(root, start, values),
                    text -> noRecord(root, start, values)));
  }

  private static Optional<Fields> noRecord(Node root, Span start, Values values) {
    values
        .problems()
        .add(
            Code.WRONG_SHAPE,
            start,
            root.kind() + " is all that this file holds; a record begins with `record:`");
    return Optional.empty();
  }

  private Optional<VehicleRecord> record(
      Fields fields, InputFiles.Loaded loaded, Optional<InsideFolder> folder) {
    Optional<String> id = values.id(fields.get("record"));
    Optional<String> ruleSet = values.name(fields.get("rules"));
    Optional<String> edition = edition(fields.get("edition"));
    Vehicle vehicle = vehicle(fields.get("vehicle"));
    Map<String, String> numbers = new LinkedHashMap<>();
    for (Node.Entry one : values.entries(fields.get("numbers"), "number tables with numbers")) {
      Optional<String> table = names.numbers.find(one.key(), values.problems());
      Optional<String> number = values.stamp(Optional.of(one));
      table.ifPresent(it -> number.ifPresent(text -> numbers.put(it, text)));
    }
    Optional<VehicleRecord.Built> built = fields.get("built").flatMap(this::built);
    Optional<String> plant = fields.get("plant").flatMap(it -> names.plants.find(it, values));
    Optional<String> market = fields.get("market").flatMap(it -> names.markets.find(it, values));
    Map<String, Boolean> equipment = new LinkedHashMap<>();
    for (Node.Entry one : values.entries(fields.get("equipment"), "equipment, each yes or no,")) {
      Optional<String> known = names.equipment.find(one.key(), values.problems());
      Optional<Boolean> yes = values.yesNo(Optional.of(one));
      known.ifPresent(it -> yes.ifPresent(has -> equipment.put(it, has)));
    }
    Optional<VehicleRecord.Judged> judged = fields.get("judged").flatMap(this::judged);
    NamedFiles named = new NamedFiles(folder, values.problems());
    Optional<Node.Entry> evidenceSection = fields.get("evidence");
    Map<String, Evidence> evidence = new EvidenceReader(named, values).read(evidenceSection);
    Names shown = evidenceNames(evidenceSection);
    Map<String, Item> items = new LinkedHashMap<>();
    rules.items().forEach(it -> items.put(it.id(), it));
    List<Trace> traces = new TraceReader(items, names, shown, values).read(fields.get("traces"));
    Map<String, Observation> observations =
        new ObservationReader(items, names, shown, values).read(fields.get("observations"));
    PrivateReader hidden = new PrivateReader(values);
    Set<Unshared> unshared = hidden.unshared(fields.get("private"), RecordShapes.UNSHARED);
    List<String> unsharedWords = hidden.words(fields.get("private_words"));
    Set<String> known = AcceptedReader.names(names);
    known.addAll(shown.all());
    List<Accepted> accepted = new AcceptedReader(known, true, values).read(fields.get("accepted"));
    fields.done();
    List<Fingerprint> files = new ArrayList<>(List.of(loaded.fingerprint()));
    files.addAll(named.fingerprints());
    if (id.isEmpty() || ruleSet.isEmpty() || vehicle.name().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new VehicleRecord(
            id.get(),
            ruleSet.get(),
            edition,
            vehicle.name().get(),
            vehicle.model(),
            vehicle.notes(),
            numbers,
            Map.of(),
            built,
            plant,
            market,
            equipment,
            judged,
            observations,
            evidence,
            traces,
            unshared,
            unsharedWords,
            accepted,
            files,
            fields.at()));
  }

  private Names evidenceNames(Optional<Node.Entry> section) {
    Names shown = new Names("evidence", "this record", Code.UNKNOWN_EVIDENCE, true);
    section
        .flatMap(it -> it.value().match(Optional::of, s -> Optional.empty(), s -> Optional.empty()))
        .map(Node.Mapping.class::cast)
        .ifPresent(
            it ->
                it.entries().forEach(one -> shown.define(one.name(), Optional.of(one.key().at()))));
    return shown;
  }

  private Optional<String> edition(Optional<Node.Entry> entry) {
    Optional<String> edition = values.name(entry);
    if (edition.isPresent() && !edition.get().equals(rules.edition())) {
      values
          .problems()
          .add(
              Code.OTHER_EDITION,
              entry.orElseThrow().at(),
              "this record was made for edition "
                  + Words.quoted(edition.get())
                  + "; the rule set is edition "
                  + Words.quoted(rules.edition()),
              "look the record through again and change its edition");
    }
    return edition;
  }

  private record Vehicle(Optional<String> name, Optional<String> model, Optional<String> notes) {}

  private Vehicle vehicle(Optional<Node.Entry> entry) {
    Optional<Fields> fields = entry.flatMap(it -> values.fields(it, RecordShapes.VEHICLE));
    if (fields.isEmpty()) {
      return new Vehicle(Optional.empty(), Optional.empty(), Optional.empty());
    }
    Vehicle vehicle =
        new Vehicle(
            values.name(fields.get().get("name")),
            fields.get().get("model").flatMap(it -> names.models.find(it, values)),
            values.text(fields.get().get("notes")));
    fields.get().done();
    return vehicle;
  }

  private Optional<VehicleRecord.Built> built(Node.Entry entry) {
    if (!(entry.value() instanceof Node.Mapping mapping)) {
      return date(Optional.of(entry)).map(it -> new VehicleRecord.Built(it, Optional.empty()));
    }
    Fields fields = values.fields(mapping, RecordShapes.BUILT, entry.key().at());
    Optional<Edtf> date = date(fields.get("date"));
    Optional<String> basis = values.text(fields.get("basis"));
    fields.done();
    return date.map(it -> new VehicleRecord.Built(it, basis));
  }

  private Optional<VehicleRecord.Judged> judged(Node.Entry entry) {
    Optional<Fields> fields = values.fields(entry, RecordShapes.JUDGED);
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    VehicleRecord.Judged judged =
        new VehicleRecord.Judged(values.text(fields.get().get("by")), date(fields.get().get("on")));
    fields.get().done();
    return Optional.of(judged);
  }

  private Optional<Edtf> date(Optional<Node.Entry> entry) {
    return values.parsed(entry, Code.BAD_DATE, "a date", Edtf::parse);
  }
}
