package assize.ruleset;

import assize.aspect.Vocabulary;
import assize.diagnostic.Code;
import assize.schema.Fields;
import assize.schema.Values;
import assize.text.Span;
import assize.yaml.Node;
import assize.yaml.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/** Reads the areas, and puts each item into its own. */
final class AreaReader {
  private final Sections sections;
  private final Vocabulary names;
  private final Values values;
  private final ClaimPhotos photos;
  private final Map<String, List<Node.Entry>> itemsByArea = new LinkedHashMap<>();

  AreaReader(Sections sections, Vocabulary names, Values values, ClaimPhotos photos) {
    this.sections = sections;
    this.names = names;
    this.values = values;
    this.photos = photos;
  }

  /** Collects the names of all items first, since one may refer to another. */
  void nameItems() {
    Map<String, Span> seen = new HashMap<>();
    for (Node.Entry area : sections.all("areas")) {
      Optional<Node.Entry> items =
          area.value() instanceof Node.Mapping mapping
              ? mapping.entries().stream().filter(it -> it.name().equals("items")).findFirst()
              : Optional.empty();
      take(area.name(), items, seen);
    }
    for (Sections.ItemsOfArea file : sections.items()) {
      names
          .areas
          .find(file.area(), values)
          .ifPresent(it -> take(it, Optional.of(file.items()), seen));
    }
  }

  private void take(String area, Optional<Node.Entry> items, Map<String, Span> seen) {
    List<Node.Entry> sofar = itemsByArea.computeIfAbsent(area, it -> new ArrayList<>());
    for (Node.Entry item : values.entries(items, "items")) {
      values.checkId(item.key());
      Span first = seen.putIfAbsent(item.name(), item.key().at());
      if (first == null) {
        sofar.add(item);
        names.items.define(item.name(), Optional.of(item.key().at()));
      } else {
        values
            .problems()
            .add(
                Sections.repeated(
                    "two items are named " + Words.quoted(item.name()), item.key().at(), first));
      }
    }
  }

  List<Area> areas() {
    List<Area> areas = new ArrayList<>();
    for (Node.Entry entry : sections.all("areas")) {
      values.fields(entry, RuleSetShapes.AREA).flatMap(it -> area(entry, it)).ifPresent(areas::add);
    }
    return areas;
  }

  private Optional<Area> area(Node.Entry entry, Fields fields) {
    Optional<String> name = values.name(fields.get("name")).or(() -> Optional.of(entry.name()));
    Optional<Long> points = values.points(fields.get("points"));
    Optional<Long> most = values.points(fields.get("most"));
    Optional<Node.Entry> inPlace = fields.get("items");
    fields.done();
    List<Node.Entry> entries = itemsByArea.getOrDefault(entry.name(), List.of());
    if (entries.isEmpty() && inPlace.isEmpty()) {
      values
          .problems()
          .add(
              Code.NO_ITEMS,
              entry.key().at(),
              "area " + Words.quoted(entry.name()) + " has no items",
              "add `items:`, here or in a file that begins with `area: " + entry.name() + "`");
    }
    ItemReader reader = new ItemReader(names, values, photos);
    List<Item> items = new ArrayList<>();
    for (Node.Entry item : entries) {
      reader.read(item, entry.name()).ifPresent(items::add);
    }
    long sum = items.stream().mapToLong(Item::points).sum();
    return name.map(
        it ->
            new Area(
                entry.name(),
                it,
                points.orElse(sum),
                most.map(OptionalLong::of).orElseGet(OptionalLong::empty),
                items,
                entry.key().at()));
  }
}
