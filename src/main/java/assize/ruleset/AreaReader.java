package assize.ruleset;

import assize.aspect.Definition;
import assize.aspect.Vocabulary;
import assize.schema.ScalarReader;
import assize.schema.Type;
import assize.text.Span;
import assize.yaml.MessageParts;
import assize.yaml.Node;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the areas, and puts each item into its own. */
final class AreaReader {
  private final RuleSetFileMerger sections;
  private final Vocabulary names;
  private final ScalarReader values;
  private final ClaimPhotos photos;
  private final Map<String, List<Node.Entry>> itemsByArea = new LinkedHashMap<>();

  AreaReader(
      RuleSetFileMerger sections, Vocabulary names, ScalarReader values, ClaimPhotos photos) {
    this.sections = sections;
    this.names = names;
    this.values = values;
    this.photos = photos;
  }

  /** Collects the names of all items first, since one may refer to another. */
  void nameItems() {
    Map<String, Span> seen = new HashMap<>();
    for (Node.Entry area : sections.all(RuleSet.AREAS)) {
      Optional<Node.Entry> items =
          area.value() instanceof Node.Mapping mapping
              ? mapping.entries().stream()
                  .filter(it -> it.name().equals(Area.LISTED.name()))
                  .findFirst()
              : Optional.empty();
      take(area.name(), items, seen);
    }
    for (RuleSetFileMerger.ItemsOfArea file : sections.items()) {
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
                RuleSetFileMerger.repeated(
                    "two items are named " + MessageParts.quoted(item.name()),
                    item.key().at(),
                    first));
      }
    }
  }

  List<Area> areas() {
    List<Area> areas = new ArrayList<>();
    for (Node.Entry entry : sections.all(RuleSet.AREAS)) {
      Definition definition = new Definition(entry.name(), names, values);
      List<Node.Entry> items = itemsByArea.getOrDefault(entry.name(), List.of());
      Type.group(Area.TABLE)
          .reader()
          .apply(Optional.of(entry), new Area.Group(definition, items, photos))
          .ifPresent(areas::add);
    }
    return areas;
  }
}
