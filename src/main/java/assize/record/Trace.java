package assize.record;

import assize.aspect.Aspect;
import assize.aspect.Expectation;
import assize.evidence.Grade;
import assize.evidence.Manner;
import assize.ruleset.AspectShapes;
import assize.ruleset.Manners;
import assize.schema.Facts;
import assize.schema.Field;
import assize.schema.Fields;
import assize.schema.Form;
import assize.schema.Key;
import assize.schema.Reading;
import assize.schema.Rewording;
import assize.schema.Table;
import assize.schema.Type;
import assize.schema.Value;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the vehicle itself shows of what is right: one more source. */
public final class Trace extends Facts {
  /** In which way it speaks, and what it says of each aspect. */
  public record Said(Manner manner, Map<Aspect, List<Expectation>> values) {
    public Said {
      values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }

    private Said reworded(Rewording rewording) {
      return new Said(manner, Observation.reworded(values, rewording));
    }
  }

  public static final Field<RecordReading, String> ITEM =
      Field.need(
          "item",
          "",
          Type.of(
              Form.name(),
              (entry, in) ->
                  entry
                      .flatMap(it -> in.names().items.find(it, in.values()))
                      .filter(it -> in.items().containsKey(it))),
          "The item of the rule set that it tells of.");
  public static final Field<Reading, Grade> GRADE =
      Field.need(
          "grade", Grade.D, Type.oneOf(Grade.WORDS), "How far it can be trusted: A the most.");
  public static final Field<RecordReading, Said> SAID =
      Field.<RecordReading, Said>need(
              new Said(Manner.SAYS, Map.of()),
              Trace::said,
              AspectShapes.manners().toArray(Key[]::new))
          .reworded(Said::reworded);
  public static final Field<Reading, Optional<String>> WHERE =
      Field.may("where", Type.text(), "Where on the vehicle it is.");
  public static final Field<RecordReading, List<String>> EVIDENCE =
      Field.<RecordReading, List<String>>of(
              List.of(),
              (fields, in) -> in.cited(fields.get("evidence")),
              Key.may(
                  "evidence", Value.oneOrMore(Form.name()), "What shows it: names of evidence."))
          .reworded((names, rewording) -> names.stream().map(rewording::name).toList());

  public static final Table<RecordReading, Trace> TABLE =
      Table.of(
          "a trace",
          Trace::new,
          List.of(ITEM, GRADE, SAID, WHERE, EVIDENCE),
          AspectShapes.oneManner());

  private Trace(Drawn drawn) {
    super(drawn);
  }

  private static Optional<Said> said(Fields fields, RecordReading in) {
    Optional<Manners.Said> said = Manners.read(fields, in.values());
    return fields
        .peek(ITEM.name())
        .flatMap(in::known)
        .flatMap(item -> said.map(it -> new Said(it.manner(), in.held(item, it.entry()))))
        .filter(it -> !it.values().isEmpty());
  }

  public String item() {
    return get(ITEM);
  }

  public Grade grade() {
    return get(GRADE);
  }

  public Manner manner() {
    return get(SAID).manner();
  }

  /** Returns what it says of each aspect that it speaks of. */
  public Map<Aspect, List<Expectation>> values() {
    return get(SAID).values();
  }

  /** Returns the place on the vehicle. */
  public Optional<String> where() {
    return get(WHERE);
  }

  /** Returns names of the record's evidence. */
  public List<String> evidence() {
    return get(EVIDENCE);
  }

  /** Returns the same, one of its facts changed. */
  public <T> Trace with(Field<?, T> field, T value) {
    return TABLE.with(this, field, value);
  }
}
