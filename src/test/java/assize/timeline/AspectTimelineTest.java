package assize.timeline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import assize.compare.EditionFixture;
import assize.date.DateRange;
import assize.evidence.DisputeState;
import assize.evidence.Scope;
import assize.judge.RuleSetWeigher;
import assize.judgment.AspectJudgment;
import assize.production.AttributeValue;
import assize.production.ScopeAttributes;
import assize.production.VehicleAttribute;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What the sources of two rule sets come to, reckoned by hand. */
class AspectTimelineTest {
  private final RuleSet yard = EditionFixture.newer();

  private static AspectTimeline of(RuleSet rules, String id) {
    Item item = rules.items().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    return AspectTimeline.of(rules, RuleSetWeigher.by(rules), item, item.aspects().get(0));
  }

  private static DateRange days(String first, String last) {
    return DateRange.of(LocalDate.parse(first), LocalDate.parse(last));
  }

  @Test
  void aRunningChangeHasAStretchInWhichBothAreRight() {
    AspectTimeline bracket = of(yard, "bracket");
    assertThat(bracket.courses()).hasSize(1);
    VehicleTimeline course = bracket.courses().get(0);
    assertThat(course.vehicles()).containsExactly(new VehicleGroup(Map.of()));
    assertThat(course.window()).isEqualTo(days("1932-01-01", "1935-12-31"));
    assertThat(course.stands())
        .extracting(TimelineEntry::days)
        .containsExactly(
            days("1932-01-01", "1934-05-31"),
            days("1934-06-01", "1934-08-31"),
            days("1934-09-01", "1935-12-31"));
    assertThat(course.stands())
        .allSatisfy(
            stand ->
                assertThat(stand.outcome().orElseThrow().dispute()).isEqualTo(DisputeState.AGREED));
  }

  /**
   * X1: a drawing (0.9) says green, a guide (0.5) black, a leaflet that copies it adds nothing; K =
   * 0.45, belief in green 0.45/0.55, in black 0.05/0.55. X2: a survivor (0.7) and the guide agree.
   */
  @Test
  void modelsThatFareDifferentlyStandApart() {
    AspectTimeline color = of(yard, "bed-color");
    assertThat(color.courses()).hasSize(2);
    AspectJudgment x1 = color.courses().get(0).stands().get(0).outcome().orElseThrow();
    assertThat(color.courses().get(0).vehicles())
        .containsExactly(
            new VehicleGroup(
                Map.of(new VehicleAttribute.OfModel(), Set.of(new AttributeValue.Named("X1")))));
    assertThat(x1.dispute()).isEqualTo(DisputeState.DISPUTED);
    assertThat(x1.conflict()).isEqualTo(0.45, within(1e-9));
    assertThat(x1.positions().get(0).belief()).isEqualTo(0.45 / 0.55, within(1e-9));
    assertThat(x1.positions().get(1).belief()).isEqualTo(0.05 / 0.55, within(1e-9));
    assertThat(x1.positions().get(1).repeatingSources()).containsExactly("leaflet");
    VehicleTimeline x2 = color.courses().get(1);
    assertThat(x2.window()).isEqualTo(days("1933-01-01", "1934-12-31"));
    assertThat(x2.stands().get(0).outcome().orElseThrow().dispute()).isEqualTo(DisputeState.AGREED);
  }

  @Test
  void vehiclesToWhichAnItemDoesNotApplyHaveNoCourse() {
    assertThat(of(yard, "heater-tap").courses())
        .singleElement()
        .satisfies(
            course ->
                assertThat(course.vehicles())
                    .containsExactly(
                        new VehicleGroup(
                            Map.of(
                                new VehicleAttribute.OfEquipment("heater"),
                                Set.of(new AttributeValue.Fitted(true))))));
  }

  /** The deluxe model alone bears numbers of these two ranges, and always one of them. */
  @Test
  void rangesOfNumbersAreKinds() {
    RuleSet truck = RuleSetReader.read(Path.of("rules/tarrowby-type-l")).value().orElseThrow();
    Item item =
        truck
            .items()
            .filter(
                one ->
                    one.aspects().stream()
                        .flatMap(rule -> rule.claims().stream())
                        .anyMatch(claim -> claim.scope().toString().contains("L45-4160")))
            .findFirst()
            .orElseThrow();
    ScopeAttributes asked = ScopeAttributes.of(item.aspects().get(0).claims().get(0).scope());
    assertThat(asked.attributes()).contains(new VehicleAttribute.OfNumber("chassis"));
    List<VehicleGroup> all =
        AspectTimeline.of(truck, RuleSetWeigher.by(truck), item, item.aspects().get(0))
            .courses()
            .stream()
            .flatMap(course -> course.vehicles().stream())
            .toList();
    assertThat(all)
        .anyMatch(
            one ->
                one.values()
                    .getOrDefault(new VehicleAttribute.OfNumber("chassis"), Set.of())
                    .equals(Set.of(range("L45-4160", "L45-5187"))));
    assertThat(all)
        .noneMatch(
            one ->
                one
                    .values()
                    .getOrDefault(new VehicleAttribute.OfNumber("chassis"), Set.of())
                    .stream()
                    .anyMatch(value -> ((AttributeValue.Within) value).ranges().size() > 1));
  }

  private static AttributeValue range(String from, String to) {
    return new AttributeValue.Within(List.of(new Scope.Numbers("chassis", from, to)));
  }

  @Test
  void everyAspectOfTheDemonstrationIsLaidOut() {
    for (String name : List.of("rules/tarrowby-type-l", "rules/quillhurst-q.yaml")) {
      RuleSet rules = RuleSetReader.read(Path.of(name)).value().orElseThrow();
      rules
          .items()
          .forEach(
              item -> {
                for (AspectRule rule : item.aspects()) {
                  AspectTimeline standing =
                      AspectTimeline.of(rules, RuleSetWeigher.by(rules), item, rule);
                  assertThat(standing.tooMany()).as(item.id()).isFalse();
                  assertThat(standing.courses()).as(item.id()).isNotEmpty();
                  standing.courses().forEach(course -> isInOrder(item, course));
                }
              });
    }
  }

  private static void isInOrder(Item item, VehicleTimeline course) {
    LocalDate after = LocalDate.MIN;
    for (TimelineEntry stand : course.stands()) {
      assertThat(stand.days().first()).as(item.id()).isAfter(after);
      assertThat(course.window().contains(stand.days())).as(item.id()).isTrue();
      after = stand.days().last();
    }
  }
}
