package assize.ruleset;

import assize.aspect.ColorChip;
import assize.aspect.Definition;
import assize.aspect.Finish;
import assize.aspect.Graded;
import assize.aspect.Lexicon;
import assize.aspect.Origin;
import assize.date.Edtf;
import assize.diagnostic.AcceptedWarning;
import assize.diagnostic.DiagnosticCode;
import assize.evidence.Source;
import assize.schema.Facts;
import assize.schema.Field;
import assize.schema.MappingReader;
import assize.schema.PropertySchema;
import assize.schema.Reading;
import assize.schema.ScalarFormat;
import assize.schema.Table;
import assize.schema.Type;
import assize.schema.ValueSchema;
import assize.text.FileChecksum;
import assize.yaml.Node;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** One edition of one standard. Maps keep the order in which the person wrote them. */
public final class RuleSet extends Facts implements Lexicon {
  public static final Field<RuleSetReading, String> ID =
      head(
          "rule_set",
          Type.of(ScalarFormat.name(), (entry, in) -> in.values().id(entry)),
          "The rule set's short name: letters, digits and dashes.");
  public static final Field<RuleSetReading, String> NAME =
      head("name", Type.visible(), "What it is called.");
  public static final Field<RuleSetReading, String> EDITION =
      head("edition", Type.visible("\"3\""), "Which edition this is.");
  public static final Field<Reading, Optional<Edtf>> ISSUED =
      Field.may("issued", Type.date("2026-03"), "When this edition was issued.");
  public static final Field<Reading, Optional<String>> MAKER =
      Field.may("maker", Type.text(), "Who made the vehicles.");
  public static final Field<Reading, Optional<String>> PURPOSE =
      Field.may("purpose", Type.text(), "What this standard is for, in a sentence or two.");
  public static final Field<Reading, Optional<String>> NOTES =
      Field.may("notes", Type.text(), "Longer remarks.");

  private static final PropertySchema SCALED =
      PropertySchema.may(
          "scale", new ValueSchema.Group(Scale.TABLE.block()), "How points become a score.");

  public static final Field<RuleSetReading, Scale> SCALE =
      Field.of(Scale.usual(), RuleSet::scale, SCALED);
  public static final Field<RuleSetReading, List<Award>> AWARDS =
      Field.orNone(
          "awards",
          List.of(),
          Type.of(each(Award.TABLE), RuleSet::awards),
          "Short names of awards, the highest first.");
  public static final Field<RuleSetReading, Map<String, Model>> MODELS =
      defined("models", Model.TABLE, "Short names of models, each with when it was made.");
  public static final Field<RuleSetReading, Map<String, String>> PLANTS =
      meanings("plants", "Short names of plants, each with its full name.");
  public static final Field<RuleSetReading, Map<String, String>> MARKETS =
      meanings("markets", "Short names of markets, each with its full name.");
  public static final Field<RuleSetReading, Map<String, String>> EQUIPMENT =
      meanings("equipment", "Short names of equipment, each with what it is.");
  public static final Field<RuleSetReading, Map<String, NumberTable>> NUMBER_TABLES =
      defined("number_tables", NumberTable.TABLE, "What chassis and engine numbers date to.");
  public static final Field<RuleSetReading, Map<String, Source>> SOURCES =
      defined("sources", Source.TABLE, "Short names of sources, each with what it is.");
  public static final Field<RuleSetReading, Map<String, ColorChip>> COLORS =
      defined("colors", ColorChip.TABLE, "Short names of colors, each with its name and reading.");
  public static final Field<RuleSetReading, Map<String, Finish>> FINISHES =
      defined("finishes", Finish.TABLE, "Short names of finishes, each with its name.");
  public static final Field<RuleSetReading, Map<String, String>> MATERIALS =
      meanings("materials", "Short names of materials, each with its full name.");
  public static final Field<RuleSetReading, Map<Origin, BigFraction>> ORIGINS =
      section(
          "origins",
          new ValueSchema.Named(Graded.ORIGIN_WORDS, ScalarFormat.credit()),
          (entry, in) -> Graded.ORIGINS.find(entry.key(), in.values().problems()),
          RuleSet::credit,
          "What each origin is worth; one that is left out is worth 0.");
  public static final Field<RuleSetReading, Map<String, BigFraction>> CONDITIONS =
      section(
          "conditions",
          new ValueSchema.Named(ScalarFormat.visible(), ScalarFormat.credit()),
          RuleSet::name,
          RuleSet::credit,
          "What each condition is worth, the best first; the words are yours.");
  public static final Field<RuleSetReading, List<Area>> AREAS =
      Field.of(
          List.of(),
          (fields, in) -> in.areas(fields),
          PropertySchema.may(
              "areas", each(Area.TABLE), "Short names of areas, each with its items."));

  /** Warnings that its keepers let stand. */
  public static final Field<RuleSetReading, List<AcceptedWarning>> ACCEPTED_WARNINGS =
      Field.given(AcceptedWarningsSchema.KEY.name(), List.of(), RuleSetReading::accepted);

  /** Every file it was read from, and each that its claims show. */
  public static final Field<RuleSetReading, List<FileChecksum>> FILES =
      Field.given("files", List.of(), RuleSetReading::allFiles);

  /** Where its words are defined. */
  public static final Field<RuleSetReading, DefinitionLocations> DEFINED =
      Field.given("defined", DefinitionLocations.NOWHERE, RuleSetReading::defined);

  static final Table<RuleSetReading, RuleSet> TABLE =
      Table.of(
          "a rule set",
          RuleSet::new,
          List.of(
              ID,
              NAME,
              EDITION,
              ISSUED,
              MAKER,
              PURPOSE,
              NOTES,
              SCALE,
              AWARDS,
              MODELS,
              PLANTS,
              MARKETS,
              EQUIPMENT,
              NUMBER_TABLES,
              SOURCES,
              COLORS,
              FINISHES,
              MATERIALS,
              ORIGINS,
              CONDITIONS,
              AREAS,
              ACCEPTED_WARNINGS,
              FILES,
              DEFINED));

  private RuleSet(Drawn drawn) {
    super(drawn);
  }

  /** Returns an edition that says nothing yet. */
  public static RuleSet of(String id, String name, String edition) {
    return TABLE.blank().with(ID, id).with(NAME, name).with(EDITION, edition);
  }

  /** What one of a rule set's files has to have. */
  private static Field<RuleSetReading, String> head(
      String name, Type<RuleSetReading, String> type, String about) {
    PropertySchema key = PropertySchema.may(name, type.value(), about);
    return Field.of(
        "",
        (fields, in) -> {
          Optional<Node.Entry> entry = fields.get(key);
          if (entry.isEmpty() && in.complete()) {
            in.values()
                .problems()
                .add(
                    DiagnosticCode.MISSING_KEY,
                    fields.at(),
                    "this rule set has no `" + name + "`",
                    "add `" + name + ":` at the top");
          }
          return type.reader().apply(entry, in).orElse("");
        },
        key);
  }

  private static ValueSchema each(Table<?, ?> table) {
    return new ValueSchema.Named(ScalarFormat.ownName(), new ValueSchema.Group(table.block()));
  }

  /** Things that the rule set defines, each from its own group of names. */
  private static <S extends Facts> Field<RuleSetReading, Map<String, S>> defined(
      String name, Table<Definition, S> table, String about) {
    Type<Definition, S> type = Type.group(table);
    return section(
        name,
        each(table),
        RuleSet::name,
        (entry, in) -> type.reader().apply(Optional.of(entry), in.definition(entry)),
        about);
  }

  /** Names with what they mean. */
  private static Field<RuleSetReading, Map<String, String>> meanings(String name, String about) {
    return section(
        name,
        new ValueSchema.Named(ScalarFormat.ownName(), ScalarFormat.visible()),
        RuleSet::name,
        (entry, in) -> in.values().name(Optional.of(entry)),
        about);
  }

  private static <K, V> Field<RuleSetReading, Map<K, V>> section(
      String name,
      ValueSchema value,
      BiFunction<Node.Entry, RuleSetReading, Optional<K>> key,
      BiFunction<Node.Entry, RuleSetReading, Optional<V>> each,
      String about) {
    return Field.orNone(
        name,
        Map.of(),
        Type.of(
            value,
            (section, in) -> {
              Map<K, V> all = new LinkedHashMap<>();
              for (Node.Entry entry : in.values().entries(section, "a group of names")) {
                Optional<K> named = key.apply(entry, in);
                Optional<V> read = each.apply(entry, in);
                named.ifPresent(it -> read.ifPresent(one -> all.put(it, one)));
              }
              return Optional.of(Collections.unmodifiableMap(all));
            }),
        about);
  }

  private static Optional<String> name(Node.Entry entry, RuleSetReading in) {
    return Optional.of(entry.name());
  }

  private static Optional<BigFraction> credit(Node.Entry entry, RuleSetReading in) {
    return in.values().credit(Optional.of(entry));
  }

  /** Takes the scale, which is read first, since awards ask for a share of the full score. */
  private static Scale scale(MappingReader fields, RuleSetReading in) {
    return fields.get(SCALED).isPresent() ? in.scale() : Scale.usual();
  }

  private static Optional<List<Award>> awards(Optional<Node.Entry> section, RuleSetReading in) {
    List<Award> awards = new ArrayList<>();
    for (Node.Entry entry : in.values().entries(section, "a group of names")) {
      in.values().checkId(entry.key());
      Type.group(Award.TABLE)
          .reader()
          .apply(
              Optional.of(entry), new Award.Scored(entry.name(), in.scale().outOf(), in.values()))
          .ifPresent(awards::add);
    }
    return Optional.of(List.copyOf(awards));
  }

  /** Reads the scale by itself. */
  static Scale scale(Optional<Node.Entry> section, Reading in) {
    return Type.group(Scale.TABLE).reader().apply(section, in).orElse(Scale.usual());
  }

  public String id() {
    return get(ID);
  }

  public String name() {
    return get(NAME);
  }

  public String edition() {
    return get(EDITION);
  }

  public Optional<Edtf> issued() {
    return get(ISSUED);
  }

  public Optional<String> maker() {
    return get(MAKER);
  }

  public Optional<String> purpose() {
    return get(PURPOSE);
  }

  public Optional<String> notes() {
    return get(NOTES);
  }

  public Scale scale() {
    return get(SCALE);
  }

  public List<Award> awards() {
    return get(AWARDS);
  }

  public Map<String, Model> models() {
    return get(MODELS);
  }

  /** Returns names of plants by their short names. */
  public Map<String, String> plants() {
    return get(PLANTS);
  }

  /** Returns names of markets by their short names. */
  public Map<String, String> markets() {
    return get(MARKETS);
  }

  /** Returns names of equipment by their short names. */
  public Map<String, String> equipment() {
    return get(EQUIPMENT);
  }

  public Map<String, NumberTable> numberTables() {
    return get(NUMBER_TABLES);
  }

  public Map<String, Source> sources() {
    return get(SOURCES);
  }

  @Override
  public Map<String, ColorChip> colors() {
    return get(COLORS);
  }

  @Override
  public Map<String, Finish> finishes() {
    return get(FINISHES);
  }

  /** Returns names of materials by their short names. */
  @Override
  public Map<String, String> materials() {
    return get(MATERIALS);
  }

  /** Returns the credit of each origin, 0 to 1; one that is missing is worth 0. */
  @Override
  public Map<Origin, BigFraction> origins() {
    return get(ORIGINS);
  }

  /** Returns the ladder of conditions with their credits, the best first. */
  @Override
  public Map<String, BigFraction> conditions() {
    return get(CONDITIONS);
  }

  public List<Area> areas() {
    return get(AREAS);
  }

  /** Returns every file it was read from. */
  public List<FileChecksum> files() {
    return get(FILES);
  }

  /** Returns warnings that its keepers let stand. */
  public List<AcceptedWarning> accepted() {
    return get(ACCEPTED_WARNINGS);
  }

  /** Returns where it is written. */
  public DefinitionLocations defined() {
    return get(DEFINED);
  }

  /** Returns every item, in the order of the areas. */
  public Stream<Item> items() {
    return areas().stream().flatMap(area -> area.items().stream());
  }

  @Override
  public String title(String item) {
    return item(item).map(Item::title).orElse(item);
  }

  @Override
  public Map<String, String> choices(String item) {
    return item(item).map(Item::choices).orElse(Map.of());
  }

  private Optional<Item> item(String id) {
    return items().filter(it -> it.id().equals(id)).findFirst();
  }

  @Override
  public boolean isKindOf(String finish, String expected) {
    Optional<String> at = Optional.of(finish);
    for (int steps = 0; at.isPresent() && steps <= finishes().size(); steps++) {
      if (at.get().equals(expected)) {
        return true;
      }
      at = Optional.ofNullable(finishes().get(at.get())).flatMap(Finish::kindOf);
    }
    return false;
  }

  /** Returns the same, one of its facts changed. */
  public <T> RuleSet with(Field<?, T> field, T value) {
    return TABLE.with(this, field, value);
  }
}
