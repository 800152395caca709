package assize.ruleset;

import assize.diagnostic.Code;
import assize.yaml.Problems;
import assize.yaml.Words;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Finds finishes that are kinds of each other. */
final class KindOfCircleCheck implements RuleSetCheck {
  @Override
  public void check(RuleSet rules, Problems problems) {
    Map<String, List<String>> kinds = new LinkedHashMap<>();
    rules.finishes().values().forEach(it -> kinds.put(it.id(), it.kindOf().stream().toList()));
    for (List<String> circle : Circles.in(kinds)) {
      problems.add(
          Code.CIRCULAR_KIND_OF,
          Objects.requireNonNull(rules.finishes().get(circle.get(0))).at(),
          "finishes are kinds of each other in a circle: " + Words.circle(circle),
          "leave out the `kind_of` of the most general");
    }
  }
}
