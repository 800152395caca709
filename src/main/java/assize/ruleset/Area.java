package assize.ruleset;

import assize.aspect.Definition;
import assize.diagnostic.DiagnosticCode;
import assize.schema.Facts;
import assize.schema.Field;
import assize.schema.MappingReader;
import assize.schema.PropertySchema;
import assize.schema.Reading;
import assize.schema.ScalarFormat;
import assize.schema.ScalarReader;
import assize.schema.Table;
import assize.schema.Type;
import assize.schema.ValueSchema;
import assize.yaml.MessageParts;
import assize.yaml.Node;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/** A group of items. */
public final class Area extends Facts {
  /**
   * What reading an area needs.
   *
   * @param items its items, wherever they are written
   */
  record Group(Definition definition, List<Node.Entry> items, ClaimPhotos photos)
      implements Reading {
    @Override
    public ScalarReader values() {
      return definition.values();
    }
  }

  /** Items by their names, as they stand in an area or in a file of their own. */
  static final PropertySchema LISTED =
      PropertySchema.may(
          "items",
          new ValueSchema.Named(ScalarFormat.name(), new ValueSchema.Shared("item")),
          "Short names of items, each with what belongs to it.");

  public static final Field<Group, String> ID = Field.given("id", "", it -> it.definition().id());
  public static final Field<Reading, Optional<String>> NAME =
      Field.may("name", Type.visible(), "How reports say it.");
  public static final Field<Reading, Optional<Long>> POINTS =
      Field.may(
          "points",
          Type.points(),
          "What its items should add up to; its weight where the method is areas.");
  public static final Field<Reading, OptionalLong> MAX_LOSS =
      Field.orNone(
          "max_loss",
          OptionalLong.empty(),
          Type.points().as(OptionalLong::of),
          "The most points that the whole area can lose.");
  public static final Field<Group, List<Item>> ITEMS = Field.of(List.of(), Area::items, LISTED);

  static final Table<Group, Area> TABLE =
      Table.of("an area", Area::new, List.of(ID, NAME, POINTS, MAX_LOSS, ITEMS));

  private final long points;

  private Area(Drawn drawn) {
    super(drawn);
    this.points = get(POINTS).orElseGet(() -> get(ITEMS).stream().mapToLong(Item::points).sum());
  }

  private static List<Item> items(MappingReader fields, Group in) {
    String id = in.definition().id();
    if (fields.get(LISTED).isEmpty() && in.items().isEmpty()) {
      in.values()
          .problems()
          .add(
              DiagnosticCode.NO_ITEMS,
              fields.at(),
              "area " + MessageParts.quoted(id) + " has no items",
              "add `items:`, here or in a file that begins with `area: " + id + "`");
    }
    List<Item> items = new ArrayList<>();
    for (Node.Entry item : in.items()) {
      Definition definition = new Definition(item.name(), in.definition().names(), in.values());
      Type.group(Item.TABLE)
          .reader()
          .apply(Optional.of(item), new ItemReading(definition, id, in.photos()))
          .ifPresent(items::add);
    }
    return List.copyOf(items);
  }

  public static Area of(String id, String name, long points, OptionalLong most, List<Item> items) {
    return TABLE
        .blank()
        .with(ID, id)
        .with(NAME, Optional.of(name))
        .with(POINTS, Optional.of(points))
        .with(MAX_LOSS, most)
        .with(ITEMS, items);
  }

  public String id() {
    return get(ID);
  }

  public String name() {
    return get(NAME).orElse(id());
  }

  /** Returns what its items should add up to, in thousandths of a point; its weight. */
  public long points() {
    return points;
  }

  /** Returns the most points it loses, in thousandths. */
  public OptionalLong maxLoss() {
    return get(MAX_LOSS);
  }

  public List<Item> items() {
    return get(ITEMS);
  }

  /** Returns the same, one of its facts changed. */
  public <T> Area with(Field<?, T> field, T value) {
    return TABLE.with(this, field, value);
  }
}
