package assize.check;

import assize.aspect.Aspect;
import assize.aspect.YesNo;
import assize.date.DateRange;
import assize.evidence.Claim;
import assize.evidence.ClaimKind;
import assize.evidence.Ternary;
import assize.production.Production;
import assize.production.VehicleKind;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * For which vehicles claims say what is right at an item.
 *
 * @param aspects in the order of the item
 */
public record Coverage(Item item, List<OfAspect> aspects) {
  public Coverage {
    aspects = List.copyOf(aspects);
  }

  /** How far claims reach on some days. */
  public enum Reach {
    /** The item does not apply. */
    NONE_NEEDED,
    /** Some claim says what is right. */
    COVERED,
    /** Some claim does, for some vehicles built then and not for others. */
    IN_PART,
    /** No claim does. */
    UNCOVERED
  }

  /**
   * One aspect of the item.
   *
   * @param stretches by model, in the order of days; together they are its production
   */
  public record OfAspect(Aspect aspect, Map<String, List<Stretch>> stretches) {}

  /** Days on which claims reach as far as on the day before. */
  public record Stretch(DateRange days, Reach reach) {}

  /** Looks at one item. */
  public static Coverage of(Item item, RuleSet rules) {
    List<VehicleKind> all = Production.of(rules, item).byDays();
    return new Coverage(
        item, item.aspects().stream().map(rule -> aspect(item, rule, rules, all)).toList());
  }

  private static OfAspect aspect(Item item, AspectRule rule, RuleSet rules, List<VehicleKind> all) {
    Map<String, List<Stretch>> byModel = new LinkedHashMap<>();
    rules.models().keySet().forEach(model -> byModel.put(model, new ArrayList<>()));
    Map<List<Object>, List<VehicleKind>> alike = new LinkedHashMap<>();
    for (VehicleKind one : all) {
      alike.computeIfAbsent(List.of(one.model(), one.days()), it -> new ArrayList<>()).add(one);
    }
    alike
        .values()
        .forEach(
            some ->
                add(
                    byModel.getOrDefault(some.get(0).model().orElseThrow(), new ArrayList<>()),
                    new Stretch(some.get(0).days(), reach(item, rule, some))));
    return new OfAspect(rule.aspect(), byModel);
  }

  private static void add(List<Stretch> stretches, Stretch next) {
    int last = stretches.size() - 1;
    if (last >= 0 && stretches.get(last).reach() == next.reach()) {
      DateRange days = stretches.get(last).days().hull(next.days());
      stretches.set(last, new Stretch(days, next.reach()));
    } else {
      stretches.add(next);
    }
  }

  private static Reach reach(Item item, AspectRule rule, List<VehicleKind> alike) {
    List<VehicleKind> needed =
        alike.stream().filter(it -> item.scope().holds(it) != Ternary.NO).toList();
    if (needed.isEmpty()) {
      return Reach.NONE_NEEDED;
    }
    long covered = needed.stream().filter(it -> isCovered(item, rule, it)).count();
    if (covered == needed.size()) {
      return Reach.COVERED;
    }
    return covered == 0 ? Reach.UNCOVERED : Reach.IN_PART;
  }

  /** Says whether some claim says what is right for a vehicle, or that the item is not there. */
  static boolean isCovered(Item item, AspectRule rule, VehicleKind vehicle) {
    return rule.claims().stream().anyMatch(claim -> speaks(claim, vehicle))
        || isToBeAbsent(item, vehicle);
  }

  private static boolean speaks(Claim claim, VehicleKind vehicle) {
    return claim.manner() != ClaimKind.RULES_OUT && claim.scope().holds(vehicle) != Ternary.NO;
  }

  /** Says whether the item should not be there at all: then nothing else is said of it. */
  private static boolean isToBeAbsent(Item item, VehicleKind vehicle) {
    return item.aspects().stream()
        .filter(rule -> rule.aspect() == Aspect.PRESENT)
        .flatMap(rule -> rule.claims().stream())
        .anyMatch(
            claim -> claim.values().contains(new YesNo.Right(false)) && speaks(claim, vehicle));
  }
}
