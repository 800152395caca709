package assize.check;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.evidence.Ternary;
import assize.production.Production;
import assize.production.VehicleKind;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Finds items that apply to some vehicles of which no claim says anything, while it does of others
 * built on the same days.
 */
final class UncoveredVehicles implements RuleSetWarningRule {
  @Override
  public DiagnosticCode code() {
    return DiagnosticCode.UNCOVERED_VEHICLES;
  }

  @Override
  public Stream<Diagnostic> in(RuleSet rules) {
    return rules.items().flatMap(item -> in(item, rules).stream());
  }

  private static Optional<Diagnostic> in(Item item, RuleSet rules) {
    List<VehicleKind> applies =
        Production.of(rules, item).byDays().stream()
            .filter(it -> item.scope().holds(it) != Ternary.NO)
            .toList();
    return applies.stream()
        .filter(it -> !isCovered(item, it))
        .filter(
            it ->
                applies.stream()
                    .anyMatch(
                        other ->
                            other.model().equals(it.model())
                                && other.days().equals(it.days())
                                && isCovered(item, other)))
        .findFirst()
        .map(it -> say(item, it));
  }

  private static boolean isCovered(Item item, VehicleKind vehicle) {
    return item.aspects().stream().anyMatch(rule -> Coverage.isCovered(item, rule, vehicle));
  }

  private static Diagnostic say(Item item, VehicleKind vehicle) {
    return Diagnostic.of(
            DiagnosticCode.UNCOVERED_VEHICLES,
            item.at(),
            "item \""
                + item.id()
                + "\" applies, but no claim says what is right, on model \""
                + vehicle.model().orElseThrow()
                + "\" "
                + words(vehicle)
                + "built "
                + vehicle.days().first()
                + " to "
                + vehicle.days().last(),
            "limit the item to those that a claim speaks of, or add a claim")
        .subjects(item.id());
  }

  private static String words(VehicleKind vehicle) {
    List<String> words = new ArrayList<>();
    vehicle.market().ifPresent(it -> words.add("for the market \"" + it + "\""));
    vehicle.plant().ifPresent(it -> words.add("of the plant \"" + it + "\""));
    vehicle
        .equipment()
        .forEach((it, fitted) -> words.add((fitted ? "with \"" : "without \"") + it + "\""));
    vehicle
        .numbers()
        .forEach(
            (table, parts) ->
                words.add(
                    "with the "
                        + table
                        + " number "
                        + parts.get(0).series().prefix()
                        + parts.get(0).first()
                        + parts.get(0).series().suffix()));
    return words.isEmpty() ? "" : String.join(", ", words) + ", ";
  }
}
