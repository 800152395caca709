package assize.timeline;

import assize.evidence.Claim;
import assize.evidence.Scope;
import assize.evidence.Ternary;
import assize.judge.RuleSetWeigher;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the sources on one aspect of one item come to, for every vehicle that the rule set knows.
 *
 * @param courses one for each kind of vehicle that fares differently, in the order of the models
 * @param tooMany whether the sources ask for so many facts together that nothing is laid out
 */
public record AspectTimeline(AspectRule rule, List<VehicleTimeline> courses, boolean tooMany) {
  public AspectTimeline {
    courses = List.copyOf(courses);
  }

  /**
   * Lays out what is held of one aspect.
   *
   * @param weighing the rule set, made ready
   */
  public static AspectTimeline of(
      RuleSet rules, RuleSetWeigher weighing, Item item, AspectRule rule) {
    return TimelineBuilder.of(List.of(rules), scopes(item, rule), one -> speaking(item, rule, one))
        .map(
            groups ->
                new AspectTimeline(
                    rule,
                    groups.stream().map(group -> course(weighing, item, rule, group)).toList(),
                    false))
        .orElseGet(() -> new AspectTimeline(rule, List.of(), true));
  }

  static List<Scope> scopes(Item item, AspectRule rule) {
    return Stream.concat(Stream.of(item.scope()), rule.claims().stream().map(Claim::scope))
        .toList();
  }

  /** Returns the claims that speak of such a vehicle; nothing where the item does not apply. */
  static Optional<List<Claim>> speaking(Item item, AspectRule rule, Scope.Facts one) {
    return item.scope().holds(one) == Ternary.YES
        ? Optional.of(
            rule.claims().stream().filter(it -> it.scope().holds(one) == Ternary.YES).toList())
        : Optional.empty();
  }

  private static VehicleTimeline course(
      RuleSetWeigher weighing,
      Item item,
      AspectRule rule,
      TimelineBuilder.Group<List<Claim>> group) {
    return new VehicleTimeline(
        group.vehicles(),
        group.window(),
        group.told().stream()
            .map(
                told ->
                    new TimelineEntry(
                        told.days(), told.what(), weighing.weigh(item.id(), rule, told.what())))
            .toList());
  }
}
