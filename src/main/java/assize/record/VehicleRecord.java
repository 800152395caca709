package assize.record;

import static assize.schema.Value.list;
import static assize.schema.Value.oneOrMore;

import assize.diagnostic.Accepted;
import assize.diagnostic.Code;
import assize.ruleset.AcceptedReader;
import assize.ruleset.AcceptedShape;
import assize.ruleset.AspectShapes;
import assize.ruleset.Item;
import assize.schema.Facts;
import assize.schema.Field;
import assize.schema.Fields;
import assize.schema.Form;
import assize.schema.Reading;
import assize.schema.Rewording;
import assize.schema.Shape;
import assize.schema.Table;
import assize.schema.Type;
import assize.schema.Value;
import assize.schema.Values;
import assize.text.Fingerprint;
import assize.yaml.Node;
import assize.yaml.Words;
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
          Type.<Reading, String>of(Form.name(), (entry, in) -> in.values().id(entry))
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
          Type.<RecordReading, String>of(Form.visible(), VehicleRecord::edition)
              .reworded((edition, rewording) -> rewording.word(edition)),
          "The edition of the rule set that it was filled in for.");
  public static final Field<RecordReading, Named> VEHICLE =
      Field.need("vehicle", Named.TABLE.blank(), Type.group(Named.TABLE), "Which vehicle it is.");
  public static final Field<RecordReading, Map<String, String>> NUMBERS =
      Field.orNone(
          "numbers",
          Map.of(),
          Type.of(new Value.Named(Form.name(), Form.visible("X-4388")), VehicleRecord::numbers),
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
          Type.of(new Value.Named(Form.name(), Form.yesNo()), VehicleRecord::equipment),
          "Equipment by its short name, each yes or no; leave out what is not known.");
  public static final Field<Reading, Optional<Judged>> JUDGED =
      Field.may("judged", Type.group(Judged.TABLE), "Who looked at the vehicle, and when.");
  public static final Field<RecordReading, Map<String, Evidence>> EVIDENCE =
      Field.orNone(
          "evidence",
          Map.of(),
          Type.<RecordReading, Map<String, Evidence>>of(
                  new Value.Named(Form.name(), new Value.Group(Evidence.TABLE.block())),
                  VehicleRecord::evidence)
              .reworded(VehicleRecord::reworded),
          "Photos, documents and measurements, by short names of your own.");
  public static final Field<RecordReading, List<Trace>> TRACES =
      Field.orNone(
          "traces",
          List.of(),
          Type.<RecordReading, List<Trace>>of(
                  list(new Value.Group(Trace.TABLE.block())),
                  (entry, in) -> Optional.of(List.copyOf(new TraceReader(in).read(entry))))
              .reworded(
                  (traces, rewording) ->
                      traces.stream()
                          .map(it -> Trace.TABLE.reworded(it, rewording.at(it.item())))
                          .toList()),
          "What the vehicle itself shows of what is right.");
  public static final Field<RecordReading, Map<String, Observation>> OBSERVATIONS =
      Field.orNone(
          "observations",
          Map.of(),
          Type.<RecordReading, Map<String, Observation>>of(
                  new Value.Named(Form.name(), new Value.Group(Observation.TABLE.block())),
                  VehicleRecord::observations)
              .reworded(
                  (observations, rewording) -> {
                    Map<String, Observation> changed = new LinkedHashMap<>(observations);
                    changed.replaceAll(
                        (item, it) -> Observation.TABLE.reworded(it, rewording.at(item)));
                    return InOrder.copyOf(changed);
                  }),
          "What was found, item by item; an aspect that is left out is not shown.");

  /** What can stay out of the copy for others. */
  public static final List<Secret<VehicleRecord>> SECRETS =
      List.of(
          new Secret<>(
              "notes",
              "vehicle",
              "the notes on the vehicle",
              it -> it.notes().isPresent(),
              it -> it.with(Named.NOTES, Optional.empty())),
          Secret.of("who judged, and when", JUDGED, it -> it.with(JUDGED, JUDGED.none())),
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
              oneOrMore(Form.text()), (entry, in) -> Optional.of(privateWords(entry, in.values()))),
          "Words that become xxx in the copy for others, wherever they stand.");

  public static final Field<RecordReading, List<Accepted>> ACCEPTED =
      Field.of(List.of(), VehicleRecord::accepted, AcceptedShape.KEY);

  /** The record's file, and each file of evidence that could be read. */
  public static final Field<Reading, List<Fingerprint>> FILES =
      Field.<Reading, List<Fingerprint>>given("files", List.of(), in -> List.of())
          .reworded(
              (files, rewording) ->
                  files.stream()
                      .map(
                          it -> new Fingerprint(rewording.text(it.path()), it.sha256(), it.bytes()))
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
              JUDGED,
              EVIDENCE,
              TRACES,
              OBSERVATIONS,
              PRIVATE,
              PRIVATE_WORDS,
              ACCEPTED,
              FILES));

  /** What a record holds, with all that stands below it. */
  public static final Shape SHAPE =
      new Shape(
          "Record",
          "One vehicle: what it is, and what was found at each item of a rule set.",
          TABLE.block(),
          Map.of("aspects", AspectShapes.EXPECTED));

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

  private static Map<String, Evidence> reworded(
      Map<String, Evidence> evidence, Rewording rewording) {
    Map<String, Evidence> changed = new LinkedHashMap<>();
    for (Evidence one : evidence.values()) {
      Evidence other = Evidence.TABLE.reworded(one, rewording);
      changed.put(other.id(), other);
    }
    return InOrder.copyOf(changed);
  }

  private static Optional<String> edition(Optional<Node.Entry> entry, RecordReading in) {
    Optional<String> edition = in.values().name(entry);
    if (edition.isPresent() && !edition.get().equals(in.rules().edition())) {
      in.values()
          .problems()
          .add(
              Code.RECORD_FOR_OTHER_EDITION,
              entry.orElseThrow().at(),
              "this record was made for edition "
                  + Words.quoted(edition.get())
                  + "; the rule set is edition "
                  + Words.quoted(in.rules().edition()),
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
    return Optional.of(InOrder.copyOf(numbers));
  }

  private static Optional<Map<String, Boolean>> equipment(
      Optional<Node.Entry> entry, RecordReading in) {
    Map<String, Boolean> equipment = new LinkedHashMap<>();
    for (Node.Entry one : in.values().entries(entry, "equipment, each yes or no,")) {
      Optional<String> known = in.names().equipment.find(one.key(), in.values().problems());
      Optional<Boolean> yes = in.values().yesNo(Optional.of(one));
      known.ifPresent(it -> yes.ifPresent(has -> equipment.put(it, has)));
    }
    return Optional.of(InOrder.copyOf(equipment));
  }

  private static Optional<Map<String, Evidence>> evidence(
      Optional<Node.Entry> section, RecordReading in) {
    Map<String, Evidence> evidence = new LinkedHashMap<>();
    for (Node.Entry entry : in.values().entries(section, "names with what each shows")) {
      in.values().checkId(entry.key());
      Evidence.read(entry, in).ifPresent(it -> evidence.put(it.id(), it));
    }
    return Optional.of(InOrder.copyOf(evidence));
  }

  private static Optional<Map<String, Observation>> observations(
      Optional<Node.Entry> section, RecordReading in) {
    Map<String, Observation> observations = new LinkedHashMap<>();
    for (Node.Entry entry : in.values().entries(section, "items with what was found")) {
      Optional<Item> item = in.item(entry.key());
      if (item.isPresent()) {
        in.values()
            .fields(entry, "item " + Words.quoted(entry.name()), Observation.TABLE.block())
            .flatMap(it -> Observation.TABLE.read(it, new AtItem(in, item.get()), entry.key().at()))
            .ifPresent(it -> observations.put(it.item(), it));
      }
    }
    return Optional.of(InOrder.copyOf(observations));
  }

  private static List<String> privateWords(Optional<Node.Entry> entry, Values values) {
    List<String> words = new ArrayList<>();
    for (Node.Entry one : values.oneOrMore(entry)) {
      Optional<Node.Scalar> text = values.scalar(one, "a single text");
      if (text.isPresent() && isLongEnough(text.get().text())) {
        words.add(text.get().text().strip());
      } else if (text.isPresent()) {
        values
            .problems()
            .add(
                Code.PRIVATE_WORD_TOO_SHORT,
                text.get().at(),
                "a private word has at least "
                    + LEAST_LETTERS
                    + " letters or digits; this is "
                    + Words.quoted(text.get().text()),
                "write more of it, or mark the text that it stands in `private`");
      }
    }
    return words;
  }

  private static boolean isLongEnough(String word) {
    return word.codePoints().filter(Character::isLetterOrDigit).count() >= LEAST_LETTERS;
  }

  private static List<Accepted> accepted(Fields fields, RecordReading in) {
    Set<String> known = AcceptedReader.names(in.names());
    known.addAll(in.evidence().all());
    return new AcceptedReader(known, true, in.values()).read(fields.get("accepted"));
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

  public Optional<Judged> judged() {
    return get(JUDGED);
  }

  /** Returns observations by item. */
  public Map<String, Observation> observations() {
    return get(OBSERVATIONS);
  }

  /** Returns evidence by its name in the record. */
  public Map<String, Evidence> evidence() {
    return get(EVIDENCE);
  }

  public List<Trace> traces() {
    return get(TRACES);
  }

  /** Returns what of it stays out of the copy for others. */
  public Set<String> unshared() {
    return get(PRIVATE);
  }

  public List<String> unsharedWords() {
    return get(PRIVATE_WORDS);
  }

  /** Returns doubts that its owner lets stand. */
  public List<Accepted> accepted() {
    return get(ACCEPTED);
  }

  public List<Fingerprint> files() {
    return get(FILES);
  }

  /** Returns the same, one of its facts changed. */
  public <T> VehicleRecord with(Field<?, T> field, T value) {
    return Named.TABLE.fields().contains(field)
        ? TABLE.with(this, VEHICLE, get(VEHICLE).with(field, value))
        : TABLE.with(this, field, value);
  }
}
