package assize.record;

import assize.aspect.Aspect;
import assize.aspect.Expectation;
import assize.aspect.Reader;
import assize.aspect.Vocabulary;
import assize.diagnostic.DiagnosticCode;
import assize.ruleset.AspectRule;
import assize.ruleset.ClaimReader;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import assize.schema.DefinedNames;
import assize.schema.Field;
import assize.schema.PropertySchema;
import assize.schema.Reading;
import assize.schema.ScalarFormat;
import assize.schema.ScalarReader;
import assize.schema.Type;
import assize.schema.ValueSchema;
import assize.yaml.MessageParts;
import assize.yaml.Node;
import assize.yaml.ReferencedFiles;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * What reading a record needs.
 *
 * @param rules the rule set whose words it uses
 * @param evidence the names of its evidence
 * @param files those that it names
 * @param items every item of the rule set
 */
record RecordReading(
    RuleSet rules,
    Vocabulary names,
    DefinedNames evidence,
    ReferencedFiles files,
    Map<String, Item> items,
    ScalarReader values)
    implements Reading {

  /** A word of the rule set. */
  static Type<RecordReading, String> word(Function<RecordReading, DefinedNames> known) {
    return Type.of(
        ScalarFormat.name(),
        (entry, in) -> entry.flatMap(it -> known.apply(in).find(it, in.values())));
  }

  /** The names of the evidence that shows something, under the key {@code evidence}. */
  static <C extends Reading> Field<C, List<String>> evidence(Function<C, RecordReading> record) {
    PropertySchema key =
        PropertySchema.may(
            "evidence",
            ValueSchema.oneOrMore(ScalarFormat.name()),
            "What shows it: names of evidence.");
    return Field.<C, List<String>>of(
            List.of(), (fields, in) -> record.apply(in).cited(fields.get(key.name())), key)
        .reworded((names, rewording) -> names.stream().map(rewording::name).toList());
  }

  static Map<String, Item> items(RuleSet rules) {
    Map<String, Item> items = new LinkedHashMap<>();
    rules.items().forEach(it -> items.put(it.id(), it));
    return items;
  }

  /** Returns the words that an item lets one choose from. */
  static DefinedNames choices(Item item) {
    DefinedNames choices =
        new DefinedNames(
            "choice", "item \"" + item.id() + "\"", DiagnosticCode.UNKNOWN_CHOICE, true);
    choices.define(item.choices().keySet());
    return choices;
  }

  /** Finds an item, and reports a name that is none. */
  Optional<Item> item(Node.Scalar name) {
    return names
        .items
        .find(name, values.problems())
        .flatMap(it -> Optional.ofNullable(items.get(it)));
  }

  /** Returns the item that a name is of, if it is one; says nothing where it is not. */
  Optional<Item> known(Node.Entry name) {
    return name.value() instanceof Node.Scalar text
        ? Optional.ofNullable(items.get(text.text().strip()))
        : Optional.empty();
  }

  /** Reads the names of evidence. */
  List<String> cited(Optional<Node.Entry> entry) {
    List<String> cited = new ArrayList<>();
    for (Node.Entry one : values.oneOrMore(entry)) {
      evidence.find(one, values).ifPresent(cited::add);
    }
    return List.copyOf(cited);
  }

  /** Says whether an item asks for an aspect, and reports one that it does not ask for. */
  boolean isAsked(Item item, Aspect aspect, Node.Entry entry) {
    List<String> asked = item.aspects().stream().map(AspectRule::aspect).map(Aspect::word).toList();
    boolean isAsked = asked.contains(aspect.word());
    if (!isAsked) {
      values
          .problems()
          .add(
              DiagnosticCode.ASPECT_NOT_EXPECTED,
              entry.key().at(),
              "item \"" + item.id() + "\" is not judged by its " + aspect.spoken(),
              "it is judged by: " + MessageParts.list(asked));
    }
    return isAsked;
  }

  /** Reads what is held of the aspects of an item; reports those that it does not ask for. */
  Map<Aspect, List<Expectation>> held(Item item, Node.Entry entry) {
    Map<Aspect, List<Expectation>> held = new LinkedHashMap<>();
    new ClaimReader(names, values)
        .aspects(entry, choices(item))
        .forEach(
            (aspect, valued) -> {
              if (isAsked(item, aspect, valued.entry()) && !valued.values().isEmpty()) {
                held.put(aspect, valued.values());
              }
            });
    return held;
  }

  Reader aspects(Item item) {
    return new Reader(names, choices(item), values);
  }
}
