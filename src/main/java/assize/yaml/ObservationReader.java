package assize.yaml;

import assize.aspect.Aspect;
import assize.aspect.Expectation;
import assize.aspect.Finding;
import assize.date.Edtf;
import assize.diagnostic.Code;
import assize.record.Observation;
import assize.record.Opinion;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import assize.shape.RecordShapes;
import assize.text.SourceFile;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads what was found at each item. */
final class ObservationReader {
  private static final Pattern LINE_END = Pattern.compile("[ \\t]*:[ \\t]*(?:\\R|\\z)");

  private final Map<String, Item> items;
  private final Vocabulary names;
  private final Names evidence;
  private final Values values;

  ObservationReader(Map<String, Item> items, Vocabulary names, Names evidence, Values values) {
    this.items = items;
    this.names = names;
    this.evidence = evidence;
    this.values = values;
  }

  Map<String, Observation> read(Optional<Node.Entry> section) {
    Map<String, Observation> observations = new LinkedHashMap<>();
    for (Node.Entry entry : values.entries(section, "items with what was found")) {
      Optional<String> known = names.items.find(entry.key(), values.problems());
      Optional<Item> item = known.flatMap(it -> Optional.ofNullable(items.get(it)));
      if (item.isPresent()) {
        values
            .fields(entry, "item " + Words.quoted(entry.name()), RecordShapes.OBSERVATION)
            .map(it -> observation(item.get(), entry, it))
            .ifPresent(it -> observations.put(it.item(), it));
      }
    }
    return observations;
  }

  private Observation observation(Item item, Node.Entry entry, Fields fields) {
    Map<Aspect, Finding> findings = new LinkedHashMap<>();
    FindingReader reader = new FindingReader(names, values);
    for (Aspect aspect : Aspect.values()) {
      Optional<Node.Entry> found = fields.get(aspect.word());
      if (found.isPresent()
          && isAsked(item, aspect, found.get(), values.problems())
          && !isLeftBlank(found.get())) {
        reader.read(aspect, found.get(), choices(item)).ifPresent(it -> findings.put(aspect, it));
      }
    }
    Observation observation =
        new Observation(
            item.id(),
            findings,
            cited(fields.get("evidence"), evidence, values),
            values.text(fields.get("note")),
            values.text(fields.get("by")),
            values.parsed(fields.get("on"), Code.BAD_DATE, "a date", Edtf::parse),
            fields.get("departure").flatMap(this::departure),
            opinion(item, fields),
            new PrivateReader(values)
                .unshared(fields.get("private"), RecordShapes.UNSHARED_AT_ITEM),
            entry.key().at());
    fields.done();
    return observation;
  }

  /** Says whether a name ends its line with its colon: not looked at yet. */
  private static boolean isLeftBlank(Node.Entry entry) {
    if (!(entry.value() instanceof Node.Scalar text) || !text.isNothing()) {
      return false;
    }
    SourceFile file = entry.key().at().file();
    String behind = file.text().substring(entry.key().at().end());
    return text.text().isEmpty() && LINE_END.matcher(behind).lookingAt();
  }

  /** Returns the words that an item lets one choose from. */
  static Names choices(Item item) {
    Names choices = new Names("choice", "item \"" + item.id() + "\"", Code.UNKNOWN_CHOICE, true);
    choices.define(item.choices().keySet());
    return choices;
  }

  /** Says whether an item asks for an aspect, and reports one that it does not ask for. */
  static boolean isAsked(Item item, Aspect aspect, Node.Entry entry, Problems problems) {
    List<String> asked = item.aspects().stream().map(AspectRule::aspect).map(Aspect::word).toList();
    boolean isAsked = asked.contains(aspect.word());
    if (!isAsked) {
      problems.add(
          Code.ASPECT_NOT_JUDGED,
          entry.key().at(),
          "item \"" + item.id() + "\" is not judged by its " + aspect.spoken(),
          "it is judged by: " + Words.list(asked));
    }
    return isAsked;
  }

  /** Reads the names of evidence. */
  static List<String> cited(Optional<Node.Entry> entry, Names evidence, Values values) {
    List<String> cited = new ArrayList<>();
    for (Node.Entry one : values.oneOrMore(entry)) {
      evidence.find(one, values).ifPresent(cited::add);
    }
    return cited;
  }

  private Optional<Opinion> opinion(Item item, Fields fields) {
    Optional<Node.Entry> holds = fields.get("holds");
    Optional<Node.Entry> because = fields.get("because");
    if (holds.isEmpty()) {
      because.ifPresent(
          it ->
              values
                  .problems()
                  .add(
                      Code.MISSING_KEY,
                      it.key().at(),
                      "`because` belongs to `holds`, which is not here",
                      "write what the owner holds to be right, as in `holds: {color: black}`"));
      return Optional.empty();
    }
    Map<Aspect, List<Expectation>> held = ClaimReader.asked(item, holds.get(), names, values);
    Optional<String> why = values.text(because);
    return held.isEmpty()
        ? Optional.empty()
        : Optional.of(new Opinion(held, why, holds.get().key().at()));
  }

  private Optional<Observation.Departure> departure(Node.Entry entry) {
    Optional<Fields> fields = values.fields(entry, RecordShapes.DEPARTURE);
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    Optional<String> reason = values.word(fields.get().get("reason"));
    Optional<String> why = values.text(fields.get().get("why"));
    Optional<Edtf> until =
        values.parsed(fields.get().get("until"), Code.BAD_DATE, "a date", Edtf::parse);
    fields.get().done();
    return reason.map(it -> new Observation.Departure(it, why, until, entry.key().at()));
  }
}
