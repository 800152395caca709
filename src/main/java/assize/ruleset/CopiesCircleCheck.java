package assize.ruleset;

import assize.diagnostic.DiagnosticCode;
import assize.evidence.Source;
import assize.yaml.DiagnosticCollector;
import assize.yaml.MessageParts;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds sources that copy each other: nobody would be the first to say it. */
final class CopiesCircleCheck implements RuleSetCheck {
  @Override
  public void check(RuleSet rules, DiagnosticCollector problems) {
    Map<String, Set<String>> copies = new LinkedHashMap<>();
    rules.sources().values().forEach(it -> copies.put(it.id(), it.copies()));
    for (List<String> circle : CycleFinder.in(copies)) {
      Source first = rules.sources().get(circle.get(0));
      if (first != null) {
        problems.add(
            DiagnosticCode.CIRCULAR_COPIES,
            first.at(),
            "sources copy each other in a circle: " + MessageParts.circle(circle),
            "leave out the `copies` of the oldest");
      }
    }
  }
}
