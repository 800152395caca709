package assize.production;

import static org.assertj.core.api.Assertions.assertThat;

import assize.check.RuleSetWarningRule;
import assize.evidence.Scope;
import assize.evidence.Ternary;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProductionTest {
  private static final String RULES =
      """
      rule_set: small
      name: A small standard
      edition: "1"
      models:
        X1: {name: Dropside, production: 1932-03/1936-08}
        X2: {name: Box van, production: 1934/1936-08}
      plants: {north: North works, south: South works}
      markets: {home: Home market, export: Export}
      equipment: {heater: Cab heater, tilt: Tilt}
      number_tables:
        chassis:
          name: Chassis number
          series:
            - prefix: X-
              models: [X1]
              plant: north
              first_numbers: {1001: 1932-03, 2000: 1934-01}
              last: {number: 2999, built: 1936-08}
            - prefix: V-
              models: [X2]
              plant: south
              first_numbers: {1: 1934-01}
      areas:
        cab:
          name: Cab
          items:
            horn:
              title: Horn
              points: 2
              expect: {present: yes}
      """;

  /** Is there a vehicle for which the conditions hold? Worked out by hand from the rules above. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "models: [X2]; true",
        "built: 1933, models: [X2]; false",
        "equipment: [heater], none_of: [{equipment: [heater]}]; false",
        "equipment: [heater], none_of: [{equipment: [tilt]}]; true",
        "none_of: [{plant: [north]}, {plant: [south]}]; false",
        "none_of: [{market: [home]}, {plant: [south]}]; true",
        "market: [home], any_of: [{market: [export]}, {equipment: [tilt]}]; true",
        "market: [home], any_of: [{market: [export]}, {built: 1940}]; false",
        "numbers: {chassis: X-1001..X-1500}; true",
        "'numbers: {chassis: X-1001..X-1500}, none_of: [{numbers: {chassis: X-1..X-2000}}]'; false",
        "'numbers: {chassis: X-1001..X-2500}, none_of: [{numbers: {chassis: X-1..X-2000}}]'; true",
        "'numbers: {chassis: X-1001..X-1500}, models: [X2]'; false",
        "'numbers: {chassis: X-1001..X-1500}, plant: [south]'; false",
        "'numbers: {chassis: X-1001..X-1500}, built: 1935/..'; false",
        "'numbers: {chassis: X-2500..X-2600}, built: 1933'; false",
        "'numbers: {chassis: V-5..V-9}, models: [X2], plant: [south]'; true",
        "'none_of: [{numbers: {chassis: X-1001..X-2999}}, {numbers: {chassis: V-1..V-99999}}]';"
            + " true"
      })
  void findsAVehicleWhereThereIsOne(String conditions, boolean exists) {
    RuleSet rules = rules(conditions);
    Scope scope = item(rules).scope();
    assertThat(
            Production.of(rules, List.of(scope)).byDays().stream()
                .anyMatch(it -> scope.holds(it) == Ternary.YES))
        .isEqualTo(exists);
  }

  @Test
  void whereThereAreTooManyWhatIsNotKnownIsLeftOpen() {
    StringBuilder equipment = new StringBuilder();
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < 20; i++) {
      equipment.append(", e").append(i).append(": Piece ").append(i);
      all.append(", e").append(i);
    }
    RuleSet rules =
        parse(
            (RULES + "        equipment: [heater" + all + "]\n")
                .replace("tilt: Tilt", "tilt: Tilt" + equipment));
    Scope scope = item(rules).scope();
    List<VehicleKind> some = Production.of(rules, List.of(scope)).byDays();
    assertThat(some).hasSize(2);
    assertThat(some).allMatch(it -> scope.holds(it) == Ternary.UNKNOWN);
    assertThat(RuleSetWarningRule.all(rules).stream().map(it -> it.code().id()))
        .doesNotContain("unreachable-item");
  }

  private static RuleSet rules(String conditions) {
    return parse(RULES + "        any_of: [{" + conditions + "}]\n");
  }

  private static RuleSet parse(String text) {
    return RuleSetReader.parse(List.of(new SourceFile("rules.yaml", text))).value().orElseThrow();
  }

  private static Item item(RuleSet rules) {
    return rules.items().findFirst().orElseThrow();
  }
}
