package assize.record;

import assize.aspect.Aspect;
import assize.aspect.Finding;
import assize.date.Edtf;
import assize.text.Span;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What was found at one item.
 *
 * @param findings for each aspect that was looked at
 * @param evidence names of the record's evidence
 * @param unshared what of it stays out of the copy for others
 */
public record Observation(
    String item,
    Map<Aspect, Finding> findings,
    List<String> evidence,
    Optional<String> note,
    Optional<String> by,
    Optional<Edtf> on,
    Optional<Departure> departure,
    Optional<Opinion> opinion,
    Set<Unshared> unshared,
    Span at) {
  public Observation {
    unshared = Set.copyOf(unshared);
    findings =
        findings.size() < 2
            ? Map.copyOf(findings)
            : Collections.unmodifiableMap(new LinkedHashMap<>(findings));
    evidence = List.copyOf(evidence);
  }

  /**
   * That the owner knows it is not right, and why.
   *
   * @param reason a word of the rule set's allowed reasons, or any other
   * @param until when it is to be looked at again
   */
  public record Departure(String reason, Optional<String> why, Optional<Edtf> until, Span at) {}
}
