package assize.ruleset;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.yaml.DiagnosticCollector;
import assize.yaml.MessageParts;
import java.util.HashMap;
import java.util.Map;

/** Finds causes that items of different areas share: a cause stays in one area. */
final class CauseAreaCheck implements RuleSetCheck {
  @Override
  public void check(RuleSet rules, DiagnosticCollector problems) {
    Map<String, Item> first = new HashMap<>();
    for (Item item : rules.items().filter(it -> it.cause().isPresent()).toList()) {
      String cause = item.cause().orElseThrow();
      Item other = first.putIfAbsent(cause, item);
      if (other != null && !other.area().equals(item.area())) {
        problems.add(
            Diagnostic.of(
                    DiagnosticCode.CAUSE_IN_TWO_AREAS,
                    item.at(),
                    "item \""
                        + item.id()
                        + "\" names the cause "
                        + MessageParts.quoted(cause)
                        + ", which belongs to area \""
                        + other.area()
                        + "\"",
                    "use another word here")
                .with(other.at(), "named first by this item"));
      }
    }
  }
}
