package assize.ruleset;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.schema.Field;
import assize.schema.MappingReader;
import assize.schema.PropertySchema;
import assize.schema.ScalarReader;
import assize.schema.ValueSchema;
import assize.text.Span;
import assize.yaml.MessageParts;
import assize.yaml.Node;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The files of one rule set, joined: what is listed under one name in several of them is one. */
final class RuleSetFileMerger {
  private final Map<String, Node.Entry> single = new LinkedHashMap<>();
  private final Map<String, Node.Entry> firstOf = new LinkedHashMap<>();
  private final Map<String, Map<String, Node.Entry>> joined = new LinkedHashMap<>();
  private final List<ItemsOfArea> items = new ArrayList<>();
  private final List<Node.Entry> accepted = new ArrayList<>();
  private final ScalarReader values;

  RuleSetFileMerger(ScalarReader values) {
    this.values = values;
  }

  /** Takes in one more file. */
  void add(Node root, Span start) {
    Optional<Node.Mapping> mapping =
        root.match(Optional::of, it -> Optional.empty(), it -> Optional.empty());
    if (mapping.isEmpty()) {
      values
          .problems()
          .add(
              DiagnosticCode.WRONG_STRUCTURE,
              start,
              root.kind()
                  + " is all that this file holds; it begins with names, as in `rule_set:`");
      return;
    }
    MappingReader fields = values.fields(mapping.get(), RuleSetSchema.FILE, start);
    for (PropertySchema key : RuleSet.TABLE.block().keys()) {
      Optional<Node.Entry> entry = fields.get(key);
      if (key.value() instanceof ValueSchema.Scalar) {
        entry.ifPresent(it -> once(single, it, "\"" + key.name() + "\" is said twice"));
      } else {
        entry.ifPresent(it -> join(key.name(), it));
      }
    }
    Optional<Node.Entry> area = fields.get(RuleSetSchema.AREA);
    Optional<Node.Entry> itemsOfArea = fields.get(Area.LISTED);
    fields.get(AcceptedWarningsSchema.KEY).ifPresent(accepted::add);
    if (itemsOfArea.isPresent() && area.isEmpty()) {
      values
          .problems()
          .add(
              DiagnosticCode.MISSING_KEY,
              itemsOfArea.get().key().at(),
              "these items do not say in which area they are",
              "add `area:` above them");
    } else if (area.isPresent() && itemsOfArea.isEmpty()) {
      values
          .problems()
          .add(
              DiagnosticCode.MISSING_KEY,
              area.get().key().at(),
              "an area is named here, but no items follow",
              "add `items:`");
    } else if (area.isPresent()) {
      items.add(new ItemsOfArea(area.get(), itemsOfArea.get()));
    }
    fields.done();
  }

  private void join(String name, Node.Entry section) {
    firstOf.putIfAbsent(name, section);
    Map<String, Node.Entry> sofar = joined.computeIfAbsent(name, it -> new LinkedHashMap<>());
    for (Node.Entry one : values.entries(Optional.of(section), "a group of names")) {
      once(
          sofar,
          one,
          "\"" + MessageParts.brief(one.name()) + "\" stands twice under `" + name + "`");
    }
  }

  private void once(Map<String, Node.Entry> sofar, Node.Entry entry, String message) {
    Node.Entry first = sofar.putIfAbsent(entry.name(), entry);
    if (first != null) {
      values.problems().add(repeated(message, entry.key().at(), first.key().at()));
    }
  }

  static Diagnostic repeated(String message, Span second, Span first) {
    return Diagnostic.of(
            DiagnosticCode.DUPLICATE_NAME,
            second,
            message,
            "first at " + first.file().path() + ":" + first.line())
        .with(first, "first written here");
  }

  /** Returns everything that is listed in a section, in the order of the files. */
  List<Node.Entry> all(Field<?, ?> section) {
    return all(section.name());
  }

  private List<Node.Entry> all(String name) {
    return List.copyOf(joined.getOrDefault(name, Map.of()).values());
  }

  /** Returns what the head says and every section, as if it stood in one file. */
  Node.Mapping joined(Span start) {
    List<Node.Entry> all = new ArrayList<>(single.values());
    firstOf.keySet().forEach(name -> group(name).ifPresent(all::add));
    return new Node.Mapping(all, start);
  }

  /** Returns what stands under a name as one group, if it is there. */
  Optional<Node.Entry> group(String name) {
    return Optional.ofNullable(firstOf.get(name))
        .map(it -> it.with(new Node.Mapping(all(name), it.value().at())));
  }

  /** Returns the items that stand in files of their own. */
  List<ItemsOfArea> items() {
    return items;
  }

  /** Returns the lists of accepted warnings, one of each file that has one. */
  List<Node.Entry> accepted() {
    return accepted;
  }

  /** Items in a file of their own, and the area that it names. */
  record ItemsOfArea(Node.Entry area, Node.Entry items) {}
}
