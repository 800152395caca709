package assize.ruleset;

import assize.diagnostic.DiagnosticCode;
import assize.yaml.DiagnosticCollector;
import assize.yaml.MessageParts;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Finds finishes that are kinds of each other. */
final class KindOfCircleCheck implements RuleSetCheck {
  @Override
  public void check(RuleSet rules, DiagnosticCollector problems) {
    Map<String, List<String>> kinds = new LinkedHashMap<>();
    rules.finishes().values().forEach(it -> kinds.put(it.id(), it.kindOf().stream().toList()));
    for (List<String> circle : CycleFinder.in(kinds)) {
      problems.add(
          DiagnosticCode.CIRCULAR_KIND_OF,
          Objects.requireNonNull(rules.finishes().get(circle.get(0))).at(),
          "finishes are kinds of each other in a circle: " + MessageParts.circle(circle),
          "leave out the `kind_of` of the most general");
    }
  }
}
