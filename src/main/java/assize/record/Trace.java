package assize.record;

import assize.aspect.Aspect;
import assize.aspect.Expectation;
import assize.evidence.Grade;
import assize.evidence.Manner;
import assize.schema.Rewording;
import assize.text.Span;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the vehicle itself shows of what is right: one more source.
 *
 * @param where the place on the vehicle
 * @param evidence names of the record's evidence
 */
public record Trace(
    String item,
    Grade grade,
    Manner manner,
    Map<Aspect, List<Expectation>> values,
    Optional<String> where,
    List<String> evidence,
    Span at) {
  public Trace {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    evidence = List.copyOf(evidence);
  }

  /** Returns the same, its texts changed. */
  Trace reworded(Rewording rewording) {
    return new Trace(
        item,
        grade,
        manner,
        Observation.reworded(values, rewording),
        where.map(rewording::text),
        evidence.stream().map(rewording::name).toList(),
        at);
  }

  private List<Object> said() {
    return List.of(item, grade, manner, values, where, evidence);
  }

  /** Where it is written makes no difference. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Trace that && said().equals(that.said());
  }

  @Override
  public int hashCode() {
    return said().hashCode();
  }
}
