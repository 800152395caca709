package assize.ruleset;

import assize.aspect.Definition;
import assize.diagnostic.DiagnosticCode;
import assize.evidence.Scope;
import assize.schema.MappingReader;
import assize.schema.ObjectSchema;
import assize.schema.PropertySchema;
import assize.schema.ScalarFormat;
import assize.schema.Type;
import assize.schema.ValueSchema;
import assize.text.Invisible;
import assize.yaml.Node;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** For which vehicles an item applies or a claim speaks: all the conditions given must hold. */
final class Scopes {
  private static final Type<Definition, List<Scope>> GROUPS =
      Type.of(ValueSchema.list(new ValueSchema.Shared("condition")), Scopes::groups);

  private static final List<Condition> CONDITIONS =
      List.of(
          new Condition(
              "models",
              Type.oneOrMore(Definition.word(it -> it.models)).as(any(Scope.Models::new)),
              "Only these models."),
          new Condition(
              "built",
              Type.<Definition, assize.date.DateRangeSet>parsed(
                      ScalarFormat.date("1934-06/1935", "../1933"),
                      DiagnosticCode.BAD_DATE,
                      "a date or a span of dates",
                      DateReader::days)
                  .as(days -> List.of(new Scope.Built(days))),
              "Only vehicles built in these days: 1934-06/1935, or ../1933."),
          new Condition(
              "numbers",
              Type.of(
                  new ValueSchema.Named(ScalarFormat.name(), ScalarFormat.text("X-4120..X-5000")),
                  Scopes::numbers),
              "Only these numbers of a number table: {chassis: X-4120..X-5000}."),
          new Condition(
              "equipment",
              Type.oneOrMore(Definition.word(it -> it.equipment))
                  .as(all -> all.stream().distinct().<Scope>map(Scope.Equipment::new).toList()),
              "Only vehicles with all of this."),
          new Condition(
              "market",
              Type.oneOrMore(Definition.word(it -> it.markets)).as(any(Scope.Markets::new)),
              "Only vehicles for these markets."),
          new Condition(
              "plant",
              Type.oneOrMore(Definition.word(it -> it.plants)).as(any(Scope.Plants::new)),
              "Only vehicles from these plants."),
          new Condition(
              "any_of",
              GROUPS.as(groups -> List.of(new Scope.Any(groups))),
              "Groups of conditions, one of which has to hold."),
          new Condition(
              "none_of",
              GROUPS.as(groups -> groups.stream().<Scope>map(Scope.Not::new).toList()),
              "Groups of conditions, none of which may hold."));

  static final ObjectSchema GROUP = ObjectSchema.of("a condition", keys());

  private Scopes() {}

  /** One of the conditions, and what it asks of a vehicle. */
  private record Condition(PropertySchema key, Type<Definition, List<Scope>> type) {
    Condition(String name, Type<Definition, List<Scope>> type, String about) {
      this(PropertySchema.may(name, type.value(), about), type);
    }
  }

  private static Function<List<String>, List<Scope>> any(Function<Set<String>, Scope> make) {
    return all -> all.isEmpty() ? List.of() : List.of(make.apply(Set.copyOf(all)));
  }

  /** Returns the names of the conditions, which stand among those of an item or a claim. */
  static PropertySchema[] keys() {
    return CONDITIONS.stream().map(Condition::key).toArray(PropertySchema[]::new);
  }

  /** Reads the conditions among the names of an item, a claim or a group of conditions. */
  static Scope read(MappingReader fields, Definition in) {
    List<Scope> parts = new ArrayList<>();
    for (Condition one : CONDITIONS) {
      Optional<Node.Entry> entry = fields.get(one.key());
      if (entry.isPresent()) {
        one.type().reader().apply(entry, in).ifPresent(parts::addAll);
      }
    }
    return parts.isEmpty() ? Scope.EVERY : parts.size() == 1 ? parts.get(0) : new Scope.All(parts);
  }

  private static Optional<List<Scope>> groups(Optional<Node.Entry> entry, Definition in) {
    List<Scope> groups = new ArrayList<>();
    for (Node.Entry one : in.values().list(entry, "a list of conditions")) {
      Optional<Node.Mapping> mapping = in.values().mapping(one, "a group of conditions");
      if (mapping.isPresent()) {
        MappingReader fields = in.values().fields(mapping.get(), GROUP, mapping.get().at());
        groups.add(read(fields, in));
        fields.done();
      }
    }
    return Optional.of(groups);
  }

  private static Optional<List<Scope>> numbers(Optional<Node.Entry> entry, Definition in) {
    List<Scope> numbers = new ArrayList<>();
    for (Node.Entry one : in.values().entries(entry, "a number table and its numbers")) {
      numbers(one, in).ifPresent(numbers::add);
    }
    return Optional.of(numbers);
  }

  private static Optional<Scope> numbers(Node.Entry entry, Definition in) {
    Optional<String> table = in.names().numbers.find(entry.key(), in.values().problems());
    Optional<Node.Scalar> text = in.values().scalar(entry, "two numbers, as X-4120..X-5000,");
    if (table.isEmpty() || text.isEmpty()) {
      return Optional.empty();
    }
    List<String> ends = List.of(text.get().text().split("\\.\\.", -1));
    if (ends.size() > 2 || ends.stream().anyMatch(Invisible::isAllOf)) {
      return in.values()
          .refuse(
              DiagnosticCode.BAD_RANGE,
              text.get(),
              "numbers are given as the first and the last, as in X-4120..X-5000");
    }
    return Optional.of(
        new Scope.Numbers(table.get(), ends.get(0).strip(), ends.get(ends.size() - 1).strip()));
  }
}
