package assize.timeline;

import assize.aspect.Aspect;
import assize.aspect.Expectation;
import assize.date.DateRange;
import assize.evidence.Claim;
import assize.evidence.DisputeState;
import assize.evidence.Scope;
import assize.judge.RuleSetWeigher;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What is held of one aspect by two editions, where they differ, for some vehicles.
 *
 * @param window the production of their models
 * @param days in the order of days, at least one
 */
public record ExpectationShift(List<VehicleGroup> vehicles, DateRange window, List<Days> days) {
  public ExpectationShift {
    vehicles = List.copyOf(vehicles);
    days = List.copyOf(days);
  }

  /** What is held for some build days; empty where the item does not apply or asks nothing. */
  public record Days(
      DateRange days, Optional<PositionState> before, Optional<PositionState> after) {}

  /**
   * What is judged by.
   *
   * @param state empty where no source speaks
   * @param positions those judged by, the most believed first
   */
  public record PositionState(Optional<DisputeState> state, List<Position> positions) {
    public PositionState {
      positions = List.copyOf(positions);
    }
  }

  /**
   * A position judged by.
   *
   * @param belief how far it is believed, 0 to 1, where points depend on it: in a dispute
   */
  public record Position(List<Expectation> accepts, OptionalDouble belief) {
    public Position {
      accepts = List.copyOf(accepts);
    }
  }

  /** One edition's item. */
  public record Edition(RuleSet rules, Item item) {
    private Optional<AspectRule> rule(Aspect aspect) {
      return item.aspects().stream().filter(one -> one.aspect() == aspect).findFirst();
    }
  }

  private record Both(Optional<PositionState> before, Optional<PositionState> after) {}

  /**
   * Compares two editions of an item.
   *
   * @return nothing where there is too much to lay out; an empty list where they hold the same
   */
  public static Optional<List<ExpectationShift>> between(
      Edition before, Edition after, Aspect aspect) {
    List<Scope> scopes =
        Stream.of(before, after)
            .flatMap(
                one ->
                    one.rule(aspect).stream()
                        .flatMap(rule -> AspectTimeline.scopes(one.item(), rule).stream()))
            .toList();
    Map<List<Claim>, PositionState> once = new HashMap<>();
    Map<List<Claim>, PositionState> again = new HashMap<>();
    return TimelineBuilder.of(
            List.of(before.rules(), after.rules()),
            scopes,
            one -> {
              Both both =
                  new Both(held(before, aspect, one, once), held(after, aspect, one, again));
              return both.before().equals(both.after()) ? Optional.empty() : Optional.of(both);
            })
        .map(
            groups ->
                groups.stream()
                    .map(
                        group ->
                            new ExpectationShift(
                                group.vehicles(),
                                group.window(),
                                group.told().stream()
                                    .map(
                                        told ->
                                            new Days(
                                                told.days(),
                                                told.what().before(),
                                                told.what().after()))
                                    .toList()))
                    .toList());
  }

  private static Optional<PositionState> held(
      Edition edition, Aspect aspect, Scope.Facts one, Map<List<Claim>, PositionState> weighed) {
    Optional<AspectRule> rule = edition.rule(aspect);
    Optional<List<Claim>> speaking =
        rule.flatMap(it -> AspectTimeline.speaking(edition.item(), it, one));
    return speaking.map(
        claims -> weighed.computeIfAbsent(claims, it -> weigh(edition, rule.orElseThrow(), it)));
  }

  private static PositionState weigh(Edition edition, AspectRule rule, List<Claim> claims) {
    return RuleSetWeigher.by(edition.rules())
        .weigh(edition.item().id(), rule, claims)
        .map(
            outcome ->
                new PositionState(
                    Optional.of(outcome.dispute()),
                    outcome.positions().stream()
                        .filter(one -> one.scored())
                        .map(
                            one ->
                                new Position(
                                    one.accepts(),
                                    outcome.dispute() == DisputeState.DISPUTED
                                        ? OptionalDouble.of(one.belief())
                                        : OptionalDouble.empty()))
                        .toList()))
        .orElseGet(() -> new PositionState(Optional.empty(), List.of()));
  }
}
