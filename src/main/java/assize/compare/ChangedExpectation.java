package assize.compare;

import assize.aspect.Aspect;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import assize.timeline.ExpectationShift;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * An aspect of an item of which two editions hold different things.
 *
 * @param item as the newer edition has it
 * @param old as the older has it
 * @param shifts for which vehicles and days, at least one; none where there is too much to lay out
 */
public record ChangedExpectation(
    Item item, Item old, Aspect aspect, List<ExpectationShift> shifts) {
  public ChangedExpectation {
    shifts = List.copyOf(shifts);
  }

  static List<ChangedExpectation> between(RuleSet before, RuleSet after) {
    Map<String, Item> olds = new LinkedHashMap<>();
    before.items().forEach(item -> olds.put(item.id(), item));
    List<ChangedExpectation> all = new ArrayList<>();
    after
        .items()
        .forEach(
            item ->
                Optional.ofNullable(olds.get(item.id()))
                    .ifPresent(
                        old -> {
                          for (Aspect aspect : aspects(old, item)) {
                            Optional<List<ExpectationShift>> shifts =
                                ExpectationShift.between(
                                    new ExpectationShift.Edition(before, old),
                                    new ExpectationShift.Edition(after, item),
                                    aspect);
                            if (shifts.map(it -> !it.isEmpty()).orElse(true)) {
                              all.add(
                                  new ChangedExpectation(
                                      item, old, aspect, shifts.orElse(List.of())));
                            }
                          }
                        }));
    return all;
  }

  private static Set<Aspect> aspects(Item old, Item item) {
    Set<Aspect> aspects = new LinkedHashSet<>();
    item.aspects().stream().map(AspectRule::aspect).forEach(aspects::add);
    old.aspects().stream().map(AspectRule::aspect).forEach(aspects::add);
    return aspects;
  }
}
