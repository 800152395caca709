package assize.record;

import assize.aspect.Aspect;
import assize.aspect.Expectation;
import assize.evidence.Grade;
import assize.evidence.Manner;
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
}
