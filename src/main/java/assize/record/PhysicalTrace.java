package assize.record;

import assize.aspect.Aspect;
import assize.aspect.Expectation;
import assize.evidence.ClaimKind;
import assize.evidence.Grade;
import assize.ruleset.AspectSchemas;
import assize.ruleset.ClaimKindReader;
import assize.schema.Facts;
import assize.schema.Field;
import assize.schema.MappingReader;
import assize.schema.PropertySchema;
import assize.schema.Reading;
import assize.schema.Rewording;
import assize.schema.ScalarFormat;
import assize.schema.Table;
import assize.schema.Type;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the vehicle itself shows of what is right: one more source. */
public final class PhysicalTrace extends Facts {
  /** In which way it speaks, and what it says of each aspect. */
  public record Said(ClaimKind manner, Map<Aspect, List<Expectation>> values) {
    public Said {
      values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }

    private Said reworded(Rewording rewording) {
      return new Said(manner, Opinion.reworded(values, rewording));
    }
  }

  public static final Field<RecordReading, String> ITEM =
      Field.need(
          "item",
          "",
          Type.of(
              ScalarFormat.name(),
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
              new Said(ClaimKind.SAYS, Map.of()),
              PhysicalTrace::said,
              AspectSchemas.manners().toArray(PropertySchema[]::new))
          .reworded(Said::reworded);
  public static final Field<Reading, Optional<String>> WHERE =
      Field.may("where", Type.text(), "Where on the vehicle it is.");
  public static final Field<RecordReading, List<String>> EVIDENCE =
      RecordReading.evidence(in -> in);

  public static final Table<RecordReading, PhysicalTrace> TABLE =
      Table.of(
          "a trace",
          PhysicalTrace::new,
          List.of(ITEM, GRADE, SAID, WHERE, EVIDENCE),
          AspectSchemas.oneManner());

  private PhysicalTrace(Drawn drawn) {
    super(drawn);
  }

  private static Optional<Said> said(MappingReader fields, RecordReading in) {
    Optional<ClaimKindReader.Said> said = ClaimKindReader.read(fields, in.values());
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

  public ClaimKind manner() {
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
  public <T> PhysicalTrace with(Field<?, T> field, T value) {
    return TABLE.with(this, field, value);
  }
}
