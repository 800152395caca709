package assize.ruleset;

import assize.aspect.Aspect;
import assize.aspect.Colors;
import assize.aspect.Expectation;
import assize.diagnostic.DiagnosticCode;
import assize.evidence.Claim;
import assize.text.Span;
import assize.yaml.DiagnosticCollector;
import assize.yaml.MessageParts;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Finds items that take their color from one without a color, or from each other. */
final class SameColorCheck implements RuleSetCheck {
  @Override
  public void check(RuleSet rules, DiagnosticCollector problems) {
    Map<String, Item> items = new LinkedHashMap<>();
    rules.items().forEach(it -> items.put(it.id(), it));
    Map<String, List<String>> same = new LinkedHashMap<>();
    Map<String, Span> firstClaim = new HashMap<>();
    for (Item item : items.values()) {
      List<String> others = new ArrayList<>();
      for (Claim claim : colorClaims(item)) {
        for (Expectation value : claim.values()) {
          if (value instanceof Colors.Same color) {
            others.add(color.item());
            firstClaim.putIfAbsent(item.id(), claim.at());
            checkColor(items, color.item(), claim.at(), problems);
          }
        }
      }
      if (!others.isEmpty()) {
        same.put(item.id(), others);
      }
    }
    for (List<String> circle : CycleFinder.in(same)) {
      problems.add(
          DiagnosticCode.CIRCULAR_SAME_AS,
          Objects.requireNonNull(firstClaim.get(circle.get(0))),
          "items take their color from each other in a circle: " + MessageParts.circle(circle),
          "give one of them a color of its own");
    }
  }

  private static void checkColor(
      Map<String, Item> items, String other, Span at, DiagnosticCollector problems) {
    Item target = items.get(other);
    if (target != null && colorClaims(target).isEmpty()) {
      problems.add(
          DiagnosticCode.SAME_AS_WITHOUT_COLOR,
          at,
          "item \"" + other + "\" is not judged by its color, so none can be taken from it",
          "name an item that has a color");
    }
  }

  private static List<Claim> colorClaims(Item item) {
    for (AspectRule rule : item.aspects()) {
      if (rule.aspect() == Aspect.COLOR) {
        return rule.claims();
      }
    }
    return List.of();
  }
}
