package assize.ruleset;

import assize.aspect.Aspect;
import assize.diagnostic.DiagnosticCode;
import assize.evidence.Claim;
import assize.evidence.Scope;
import assize.schema.Facts;
import assize.schema.Field;
import assize.schema.FixedVocabulary;
import assize.schema.PropertySchema;
import assize.schema.Reading;
import assize.schema.ScalarFormat;
import assize.schema.Table;
import assize.schema.Type;
import assize.schema.ValueSchema;
import assize.yaml.Node;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** A detail to judge. */
public final class Item extends Facts {
  public static final Field<ItemReading, String> ID = Field.given("id", "", ItemReading::id);
  public static final Field<ItemReading, String> AREA = Field.given("area", "", ItemReading::area);
  public static final Field<Reading, String> TITLE =
      Field.need("title", "", Type.visible(), "What it is called.");
  public static final Field<Reading, Long> POINTS =
      Field.need("points", 0L, Type.points(), "What it is worth, to a thousandth of a point.");
  public static final Field<Reading, Optional<String>> LOOK =
      Field.may("look", Type.text(), "Where and how to look at it.");
  public static final Field<Reading, Optional<String>> NOTES =
      Field.may("notes", Type.text(), "Remarks.");
  public static final Field<Reading, Optional<String>> CAUSE =
      Field.may(
          "cause",
          Type.word(),
          "One cause of several items' loss: together they lose what the dearest does.");
  public static final Field<Reading, List<Hazard>> HAZARDS =
      Field.orNone(
          "hazards",
          List.of(),
          Type.oneOrMore(
              Type.oneOf(
                  FixedVocabulary.of(
                      "a hazard", DiagnosticCode.UNKNOWN_HAZARD, Hazard.values(), Hazard::word))),
          "What can hurt whoever looks at it.");
  public static final Field<Reading, Map<String, String>> CHOICES =
      Field.orNone(
          "choices",
          Map.of(),
          Type.of(
              new ValueSchema.Named(ScalarFormat.ownWord(), ScalarFormat.visible()), Item::choices),
          "Words to choose from, each with what it means.");
  public static final Field<ItemReading, Scope> SCOPE =
      Field.of(Scope.EVERY, (fields, in) -> Scopes.read(fields, in.definition()), Scopes.keys());
  public static final Field<ItemReading, Held> HELD =
      Field.need(Held.NOTHING, Held::read, Held.KEYS.toArray(PropertySchema[]::new));

  static final Table<ItemReading, Item> TABLE =
      Table.of(
          "this item",
          Item::new,
          List.of(ID, AREA, TITLE, POINTS, LOOK, NOTES, CAUSE, HAZARDS, CHOICES, SCOPE, HELD),
          Held.RULES,
          name -> Aspect.of(name).map(it -> "an aspect belongs under `expect:`"));

  private final List<AspectRule> aspects;

  private Item(Drawn drawn) {
    super(drawn);
    this.aspects = List.copyOf(get(HELD).rules(get(POINTS)));
  }

  /** Returns an item that applies to every vehicle. */
  public static Item of(
      String id, String area, String title, long points, Map<Aspect, List<Claim>> claims) {
    return TABLE
        .blank()
        .with(ID, id)
        .with(AREA, area)
        .with(TITLE, title)
        .with(POINTS, points)
        .with(HELD, new Held(claims, Map.of()));
  }

  /** Returns the words to choose from, without a look at what they mean. */
  static List<String> words(Optional<Node.Entry> choices) {
    return choices.stream()
        .flatMap(
            it ->
                it.value() instanceof Node.Mapping mapping
                    ? mapping.entries().stream().map(Node.Entry::name)
                    : Stream.empty())
        .toList();
  }

  private static Optional<Map<String, String>> choices(Optional<Node.Entry> entry, Reading in) {
    Map<String, String> choices = new LinkedHashMap<>();
    for (Node.Entry one : in.values().entries(entry, "words, each with its meaning,")) {
      ReservedWords.check(one.key(), in.values().problems());
      in.values().checkWord(one.key());
      choices.put(one.name(), in.values().name(Optional.of(one)).orElse(""));
    }
    return Optional.of(Collections.unmodifiableMap(choices));
  }

  public String id() {
    return get(ID);
  }

  /** Returns the area it stands in. */
  public String area() {
    return get(AREA);
  }

  public String title() {
    return get(TITLE);
  }

  /** Returns its points, in thousandths of a point. */
  public long points() {
    return get(POINTS);
  }

  /** Returns what to look at, and where. */
  public Optional<String> look() {
    return get(LOOK);
  }

  public Optional<String> notes() {
    return get(NOTES);
  }

  public List<Hazard> hazards() {
    return get(HAZARDS);
  }

  /** Returns what items of one area share that lose only what the dearest of them loses. */
  public Optional<String> cause() {
    return get(CAUSE);
  }

  /** Returns the vehicles it applies to. */
  public Scope scope() {
    return get(SCOPE);
  }

  /** Returns at least one, their possible points adding up to {@link #points}. */
  public List<AspectRule> aspects() {
    return aspects;
  }

  /** Returns the words of the aspect choice, with what they mean. */
  public Map<String, String> choices() {
    return get(CHOICES);
  }

  /** Returns the same, one of its facts changed. */
  public <T> Item with(Field<?, T> field, T value) {
    return TABLE.with(this, field, value);
  }
}
