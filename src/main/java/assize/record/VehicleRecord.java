package assize.record;

import static assize.schema.ValueSchema.list;
import static assize.schema.ValueSchema.oneOrMore;

import assize.diagnostic.AcceptedWarning;
import assize.diagnostic.DiagnosticCode;
import assize.ruleset.AcceptedReader;
import assize.ruleset.AcceptedWarningsSchema;
import assize.ruleset.AspectSchemas;
import assize.ruleset.Item;
import assize.schema.Facts;
import assize.schema.Field;
import assize.schema.FileSchema;
import assize.schema.MappingReader;
import assize.schema.Reading;
import assize.schema.Rewording;
import assize.schema.ScalarFormat;
import assize.schema.ScalarReader;
import assize.schema.Table;
import assize.schema.Type;
import assize.schema.ValueSchema;
import assize.text.FileChecksum;
import assize.yaml.MessageParts;
import assize.yaml.Node;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** One vehicle, and what was found on it. */
public final class VehicleRecord extends Facts {
  private static final int LEAST_LETTERS = 3;

  public static final Field<Reading, String> ID =
      Field.need(
          "record",
          "",
          Type.<Reading, String>of(ScalarFormat.name(), (entry, in) -> in.values().id(entry))
              .reworded((id, rewording) -> rewording.text(id)),
          "The vehicle's short name: letters, digits and dashes.");
  public static final Field<Reading, String> RULES =
      Field.need(
          "rules",
          "",
          Type.visible("example-type-x", "type-x.yaml"),
          "The folder or file of the rule set, beside this file or below.");
  public static final Field<RecordReading, Optional<String>> EDITION =
      Field.may(
          "edition",
          Type.<RecordReading, String>of(ScalarFormat.visible(), VehicleRecord::edition)
              .reworded((edition, rewording) -> rewording.word(edition)),
          "The edition of the rule set that it was filled in for.");
  public static final Field<RecordReading, Named> VEHICLE =
      Field.need("vehicle", Named.TABLE.blank(), Type.group(Named.TABLE), "Which vehicle it is.");
  public static final Field<RecordReading, Map<String, String>> NUMBERS =
      Field.orNone(
          "numbers",
          Map.of(),
          Type.of(
              new ValueSchema.Named(ScalarFormat.name(), ScalarFormat.visible("X-4388")),
              VehicleRecord::numbers),
          "Chassis and engine numbers, by the rule set's number tables.");

  /**
   * Where a number is masked: numbers that it can't be told from, by number table; what they differ
   * in is not known of this vehicle.
   */
  public static final Field<Reading, Map<String, List<String>>> ONE_OF =
      Field.given("one of", Map.of(), in -> Map.of());

  public static final Field<Reading, Optional<Built>> BUILT =
      Field.may(
          "built",
          Built.TYPE,
          "When it was built, if something says so; with its basis: {date: 1934-05, basis:"
              + " build plate}.");
  public static final Field<RecordReading, Optional<String>> PLANT =
      Field.may(
          "plant",
          RecordReading.word(in -> in.names().plants),
          "Where it was made, by its short name.");
  public static final Field<RecordReading, Optional<String>> MARKET =
      Field.may(
          "market",
          RecordReading.word(in -> in.names().markets),
          "For which market, by its short name.");
  public static final Field<RecordReading, Map<String, Boolean>> EQUIPMENT =
      Field.orNone(
          "equipment",
          Map.of(),
          Type.of(
              new ValueSchema.Named(ScalarFormat.name(), ScalarFormat.yesNo()),
              VehicleRecord::equipment),
          "Equipment by its short name, each yes or no; leave out what is not known.");
  public static final Field<Reading, Optional<Inspected>> INSPECTED =
      Field.may("inspected", Type.group(Inspected.TABLE), "Who looked at the vehicle, and when.");
  public static final Field<RecordReading, Map<String, EvidenceItem>> EVIDENCE =
      Field.orNone(
          "evidence",
          Map.of(),
          Type.<RecordReading, Map<String, EvidenceItem>>of(
                  new ValueSchema.Named(
                      ScalarFormat.name(), new ValueSchema.Group(EvidenceItem.TABLE.block())),
                  VehicleRecord::evidence)
              .reworded(VehicleRecord::reworded),
          "Photos, documents and measurements, by short names of your own.");
  public static final Field<RecordReading, List<PhysicalTrace>> TRACES =
      Field.orNone(
          "traces",
          List.of(),
          Type.<RecordReading, List<PhysicalTrace>>of(
                  list(new ValueSchema.Group(PhysicalTrace.TABLE.block())),
                  (entry, in) -> Optional.of(List.copyOf(new TraceReader(in).read(entry))))
              .reworded(
                  (traces, rewording) ->
                      traces.stream()
                          .map(it -> PhysicalTrace.TABLE.reworded(it, rewording.at(it.item())))
                          .toList()),
          "What the vehicle itself shows of what is right.");
  public static final Field<RecordReading, Map<String, Observation>> OBSERVATIONS =
      Field.orNone(
          "observations",
          Map.of(),
          Type.<RecordReading, Map<String, Observation>>of(
                  new ValueSchema.Named(
                      ScalarFormat.name(), new ValueSchema.Group(Observation.TABLE.block())),
                  VehicleRecord::observations)
              .reworded(
                  (observations, rewording) -> {
                    Map<String, Observation> changed = new LinkedHashMap<>(observations);
                    changed.replaceAll(
                        (item, it) -> Observation.TABLE.reworded(it, rewording.at(item)));
                    return ImmutableOrderedMap.copyOf(changed);
                  }),
          "What was found, item by item; an aspect that is left out is not assessed.");

  /** What can stay out of the copy for others. */
  public static final List<Secret<VehicleRecord>> SECRETS =
      List.of(
          new Secret<>(
              "notes",
              "vehicle",
              "the notes on the vehicle",
              it -> it.notes().isPresent(),
              it -> it.with(Named.NOTES, Optional.empty())),
          Secret.of("who judged, and when", INSPECTED, it -> it.with(INSPECTED, INSPECTED.none())),
          Secret.of("the plant", PLANT, it -> it.with(PLANT, PLANT.none())),
          Secret.of("the market", MARKET, it -> it.with(MARKET, MARKET.none())));

  public static final Field<Reading, Set<String>> PRIVATE =
      Field.orNone(
          "private",
          Set.of(),
          Secret.some(SECRETS),
          "What stays out of the copy for others; yes for all of it.");

  /** Texts that are masked in the copy for others wherever they stand, as its numbers are. */
  public static final Field<Reading, List<String>> PRIVATE_WORDS =
      Field.orNone(
          "private_words",
          List.of(),
          Type.of(
              oneOrMore(ScalarFormat.text()),
              (entry, in) -> Optional.of(privateWords(entry, in.values()))),
          "Words that become xxx in the copy for others, wherever they stand.");

  public static final Field<RecordReading, List<AcceptedWarning>> ACCEPTED =
      Field.of(List.of(), VehicleRecord::accepted, AcceptedWarningsSchema.KEY);

  /** The record's file, and each file of evidence that could be read. */
  public static final Field<Reading, List<FileChecksum>> FILES =
      Field.<Reading, List<FileChecksum>>given("files", List.of(), in -> List.of())
          .reworded(
              (files, rewording) ->
                  files.stream()
                      .map(
                          it ->
                              new FileChecksum(rewording.text(it.path()), it.sha256(), it.bytes()))
                      .toList())
          .apart();

  public static final Table<RecordReading, VehicleRecord> TABLE =
      Table.of(
          "this record",
          VehicleRecord::new,
          List.of(
              ID,
              RULES,
              EDITION,
              VEHICLE,
              NUMBERS,
              ONE_OF,
              BUILT,
              PLANT,
              MARKET,
              EQUIPMENT,
              INSPECTED,
              EVIDENCE,
              TRACES,
              OBSERVATIONS,
              PRIVATE,
              PRIVATE_WORDS,
              ACCEPTED,
              FILES));

  /** What a record holds, with all that stands below it. */
  public static final FileSchema SCHEMA =
      new FileSchema(
          "Record",
          "One vehicle: what it is, and what was found at each item of a rule set.",
          TABLE.block(),
          Map.of("aspects", AspectSchemas.EXPECTED));

  private VehicleRecord(Drawn drawn) {
    super(drawn);
  }

  /**
   * Returns the numbers of a table one of which it bears: its own, unless that is masked. None
   * where nothing is known.
   */
  public List<String> possibleNumbers(String table) {
    return Optional.ofNullable(oneOf().get(table))
        .or(() -> Optional.ofNullable(numbers().get(table)).map(List::of))
        .orElse(List.of());
  }

  private static Map<String, EvidenceItem> reworded(
      Map<String, EvidenceItem> evidence, Rewording rewording) {
    Map<String, EvidenceItem> changed = new LinkedHashMap<>();
    for (EvidenceItem one : evidence.values()) {
      EvidenceItem other = EvidenceItem.TABLE.reworded(one, rewording);
      changed.put(other.id(), other);
    }
    return ImmutableOrderedMap.copyOf(changed);
  }

  private static Optional<String> edition(Optional<Node.Entry> entry, RecordReading in) {
    Optional<String> edition = in.values().name(entry);
    if (edition.isPresent() && !edition.get().equals(in.rules().edition())) {
      in.values()
          .problems()
          .add(
              DiagnosticCode.RECORD_FOR_OTHER_EDITION,
              entry.orElseThrow().at(),
              "this record was made for edition "
                  + MessageParts.quoted(edition.get())
                  + "; the rule set is edition "
                  + MessageParts.quoted(in.rules().edition()),
              "look the record through again and change its edition");
    }
    return edition;
  }

  private static Optional<Map<String, String>> numbers(
      Optional<Node.Entry> entry, RecordReading in) {
    Map<String, String> numbers = new LinkedHashMap<>();
    for (Node.Entry one : in.values().entries(entry, "number tables with numbers")) {
      Optional<String> table = in.names().numbers.find(one.key(), in.values().problems());
      Optional<String> number = in.values().stamp(Optional.of(one));
      table.ifPresent(it -> number.ifPresent(text -> numbers.put(it, text)));
    }
    return Optional.of(ImmutableOrderedMap.copyOf(numbers));
  }

  private static Optional<Map<String, Boolean>> equipment(
      Optional<Node.Entry> entry, RecordReading in) {
    Map<String, Boolean> equipment = new LinkedHashMap<>();
    for (Node.Entry one : in.values().entries(entry, "equipment, each yes or no,")) {
      Optional<String> known = in.names().equipment.find(one.key(), in.values().problems());
      Optional<Boolean> yes = in.values().yesNo(Optional.of(one));
      known.ifPresent(it -> yes.ifPresent(has -> equipment.put(it, has)));
    }
    return Optional.of(ImmutableOrderedMap.copyOf(equipment));
  }

  private static Optional<Map<String, EvidenceItem>> evidence(
      Optional<Node.Entry> section, RecordReading in) {
    Map<String, EvidenceItem> evidence = new LinkedHashMap<>();
    for (Node.Entry entry : in.values().entries(section, "names with what each shows")) {
      in.values().checkId(entry.key());
      EvidenceItem.read(entry, in).ifPresent(it -> evidence.put(it.id(), it));
    }
    return Optional.of(ImmutableOrderedMap.copyOf(evidence));
  }

  private static Optional<Map<String, Observation>> observations(
      Optional<Node.Entry> section, RecordReading in) {
    Map<String, Observation> observations = new LinkedHashMap<>();
    for (Node.Entry entry : in.values().entries(section, "items with what was found")) {
      Optional<Item> item = in.item(entry.key());
      if (item.isPresent()) {
        in.values()
            .fields(entry, "item " + MessageParts.quoted(entry.name()), Observation.TABLE.block())
            .flatMap(it -> Observation.TABLE.read(it, new AtItem(in, item.get()), entry.key().at()))
            .ifPresent(it -> observations.put(it.item(), it));
      }
    }
    return Optional.of(ImmutableOrderedMap.copyOf(observations));
  }

  private static List<String> privateWords(Optional<Node.Entry> entry, ScalarReader values) {
    List<String> words = new ArrayList<>();
    for (Node.Entry one : values.oneOrMore(entry)) {
      Optional<Node.Scalar> text = values.scalar(one, "a single text");
      if (text.isPresent() && isLongEnough(text.get().text())) {
        words.add(text.get().text().strip());
      } else if (text.isPresent()) {
        values
            .problems()
            .add(
                DiagnosticCode.PRIVATE_WORD_TOO_SHORT,
                text.get().at(),
                "a private word has at least "
                    + LEAST_LETTERS
                    + " letters or digits; this is "
                    + MessageParts.quoted(text.get().text()),
                "write more of it, or mark the text that it stands in `private`");
      }
    }
    return words;
  }

  private static boolean isLongEnough(String word) {
    return word.codePoints().filter(Character::isLetterOrDigit).count() >= LEAST_LETTERS;
  }

  private static List<AcceptedWarning> accepted(MappingReader fields, RecordReading in) {
    Set<String> known = AcceptedReader.names(in.names());
    known.addAll(in.evidence().all());
    return new AcceptedReader(known, true, in.values())
        .read(fields.get(AcceptedWarningsSchema.KEY));
  }

  /** Returns a vehicle of which only its names are known. */
  public static VehicleRecord of(String id, String rules, String name) {
    return TABLE.blank().with(ID, id).with(RULES, rules).with(Named.NAME, name);
  }

  public String id() {
    return get(ID);
  }

  /** Returns the rule set it names, as written. */
  public String rules() {
    return get(RULES);
  }

  public Optional<String> edition() {
    return get(EDITION);
  }

  public String name() {
    return get(VEHICLE).get(Named.NAME);
  }

  public Optional<String> model() {
    return get(VEHICLE).get(Named.MODEL);
  }

  public Optional<String> notes() {
    return get(VEHICLE).get(Named.NOTES);
  }

  /** Returns its numbers, by the rule set's number table. */
  public Map<String, String> numbers() {
    return get(NUMBERS);
  }

  /** Returns numbers that a masked one can't be told from, by number table. */
  public Map<String, List<String>> oneOf() {
    return get(ONE_OF);
  }

  public Optional<Built> built() {
    return get(BUILT);
  }

  public Optional<String> plant() {
    return get(PLANT);
  }

  public Optional<String> market() {
    return get(MARKET);
  }

  /** Returns whether it has it; what is not stated is not known. */
  public Map<String, Boolean> equipment() {
    return get(EQUIPMENT);
  }

  public Optional<Inspected> inspected() {
    return get(INSPECTED);
  }

  /** Returns observations by item. */
  public Map<String, Observation> observations() {
    return get(OBSERVATIONS);
  }

  /** Returns evidence by its name in the record. */
  public Map<String, EvidenceItem> evidence() {
    return get(EVIDENCE);
  }

  public List<PhysicalTrace> traces() {
    return get(TRACES);
  }

  /** Returns what of it stays out of the copy for others. */
  public Set<String> unshared() {
    return get(PRIVATE);
  }

  public List<String> unsharedWords() {
    return get(PRIVATE_WORDS);
  }

  /** Returns warnings that its owner lets stand. */
  public List<AcceptedWarning> accepted() {
    return get(ACCEPTED);
  }

  public List<FileChecksum> files() {
    return get(FILES);
  }

  /** Returns the same, one of its facts changed. */
  public <T> VehicleRecord with(Field<?, T> field, T value) {
    return Named.TABLE.fields().contains(field)
        ? TABLE.with(this, VEHICLE, get(VEHICLE).with(field, value))
        : TABLE.with(this, field, value);
  }
}
