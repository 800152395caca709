package assize.timeline;

import assize.evidence.Claim;
import assize.evidence.Kleene;
import assize.evidence.Scope;
import assize.judge.WithoutVehicle;
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
public record Standing(AspectRule rule, List<Course> courses, boolean tooMany) {
  public Standing {
    courses = List.copyOf(courses);
  }

  /**
   * Lays out what is held of one aspect.
   *
   * @param weighing the rule set, made ready
   */
  public static Standing of(RuleSet rules, WithoutVehicle weighing, Item item, AspectRule rule) {
    return Layout.of(List.of(rules), scopes(item, rule), one -> speaking(item, rule, one))
        .map(
            groups ->
                new Standing(
                    rule,
                    groups.stream().map(group -> course(weighing, item, rule, group)).toList(),
                    false))
        .orElseGet(() -> new Standing(rule, List.of(), true));
  }

  static List<Scope> scopes(Item item, AspectRule rule) {
    return Stream.concat(Stream.of(item.scope()), rule.claims().stream().map(Claim::scope))
        .toList();
  }

  /** Returns the claims that speak of such a vehicle; nothing where the item does not apply. */
  static Optional<List<Claim>> speaking(Item item, AspectRule rule, Scope.Facts one) {
    return item.scope().holds(one) == Kleene.YES
        ? Optional.of(
            rule.claims().stream().filter(it -> it.scope().holds(one) == Kleene.YES).toList())
        : Optional.empty();
  }

  private static Course course(
      WithoutVehicle weighing, Item item, AspectRule rule, Layout.Group<List<Claim>> group) {
    return new Course(
        group.vehicles(),
        group.window(),
        group.told().stream()
            .map(
                told ->
                    new Stand(
                        told.days(), told.what(), weighing.weigh(item.id(), rule, told.what())))
            .toList());
  }
}
