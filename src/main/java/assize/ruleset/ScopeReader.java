package assize.ruleset;

import assize.aspect.Vocabulary;
import assize.diagnostic.Code;
import assize.evidence.Scope;
import assize.schema.Fields;
import assize.schema.Names;
import assize.schema.Values;
import assize.text.Invisible;
import assize.yaml.Node;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads for which vehicles an item applies or a claim speaks. */
final class ScopeReader {
  private final Vocabulary names;
  private final Values values;

  ScopeReader(Vocabulary names, Values values) {
    this.names = names;
    this.values = values;
  }

  /** Reads the conditions among the names of an item, a claim or a group of conditions. */
  Scope read(Fields fields) {
    List<Scope> parts = new ArrayList<>();
    words(fields.get("models"), names.models).ifPresent(it -> parts.add(new Scope.Models(it)));
    values
        .parsed(fields.get("built"), Code.BAD_DATE, "a date or a span of dates", Dates::days)
        .ifPresent(it -> parts.add(new Scope.Built(it)));
    for (Node.Entry one : values.entries(fields.get("numbers"), "a number table and its numbers")) {
      numbers(one).ifPresent(parts::add);
    }
    words(fields.get("equipment"), names.equipment)
        .ifPresent(all -> all.forEach(it -> parts.add(new Scope.Equipment(it))));
    words(fields.get("market"), names.markets).ifPresent(it -> parts.add(new Scope.Markets(it)));
    words(fields.get("plant"), names.plants).ifPresent(it -> parts.add(new Scope.Plants(it)));
    Optional<Node.Entry> any = fields.get("any_of");
    if (any.isPresent()) {
      parts.add(new Scope.Any(groups(any)));
    }
    for (Scope one : groups(fields.get("none_of"))) {
      parts.add(new Scope.Not(one));
    }
    return parts.isEmpty() ? Scope.EVERY : parts.size() == 1 ? parts.get(0) : new Scope.All(parts);
  }

  private List<Scope> groups(Optional<Node.Entry> entry) {
    List<Scope> groups = new ArrayList<>();
    for (Node.Entry one : values.list(entry, "a list of conditions")) {
      Optional<Node.Mapping> mapping = values.mapping(one, "a group of conditions");
      if (mapping.isPresent()) {
        Fields fields = values.fields(mapping.get(), RuleSetShapes.CONDITION, mapping.get().at());
        groups.add(read(fields));
        fields.done();
      }
    }
    return groups;
  }

  private Optional<Set<String>> words(Optional<Node.Entry> entry, Names known) {
    if (entry.isEmpty()) {
      return Optional.empty();
    }
    Set<String> found = new LinkedHashSet<>();
    for (Node.Entry one : values.oneOrMore(entry)) {
      known.find(one, values).ifPresent(found::add);
    }
    return found.isEmpty() ? Optional.empty() : Optional.of(found);
  }

  private Optional<Scope> numbers(Node.Entry entry) {
    Optional<String> table = names.numbers.find(entry.key(), values.problems());
    Optional<Node.Scalar> text = values.scalar(entry, "two numbers, as X-4120..X-5000,");
    if (table.isEmpty() || text.isEmpty()) {
      return Optional.empty();
    }
    List<String> ends = List.of(text.get().text().split("\\.\\.", -1));
    if (ends.size() > 2 || ends.stream().anyMatch(Invisible::isAllOf)) {
      return values.refuse(
          Code.BAD_RANGE,
          text.get(),
          "numbers are given as the first and the last, as in X-4120..X-5000");
    }
    return Optional.of(
        new Scope.Numbers(table.get(), ends.get(0).strip(), ends.get(ends.size() - 1).strip()));
  }
}
