package assize.report.sheet;

import assize.date.DateRangeFormatter;
import assize.evidence.Scope;
import assize.evidence.Ternary;
import assize.ruleset.Model;
import assize.ruleset.NumberTable;
import assize.ruleset.RuleSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** For which vehicles something holds, in words. */
final class ScopeFormatter implements Scope.Cases<String> {
  private final RuleSet rules;

  ScopeFormatter(RuleSet rules) {
    this.rules = rules;
  }

  /**
   * Returns as in "of model ‘L41 dropside’, built until 1934, with ‘Cab heater’"; nothing for every
   * vehicle.
   */
  String of(Scope scope) {
    return scope.match(this);
  }

  /** Returns in words what of a scope a vehicle's facts leave open; nothing where they do not. */
  String open(Scope scope, Scope.Facts facts) {
    return scope.holds(facts) == Ternary.UNKNOWN ? of(scope.open(facts)) : "";
  }

  @Override
  public String all(Scope.All scope) {
    return joined(scope.parts(), ", ");
  }

  @Override
  public String any(Scope.Any scope) {
    return joined(scope.parts(), " or ");
  }

  private String joined(List<Scope> parts, String between) {
    if (parts.size() == 1) {
      return of(parts.get(0));
    }
    return parts.stream()
        .map(part -> isJoined(part) ? "(" + of(part) + ")" : of(part))
        .filter(words -> !words.isEmpty())
        .collect(Collectors.joining(between));
  }

  private static boolean isJoined(Scope scope) {
    return scope instanceof Scope.Any any && any.parts().size() > 1
        || scope instanceof Scope.All all && all.parts().size() > 1;
  }

  @Override
  public String not(Scope.Not scope) {
    return scope.part() instanceof Scope.Equipment it
        ? "without " + name(it.equipment(), rules.equipment())
        : "not " + (isJoined(scope.part()) ? "(" + of(scope.part()) + ")" : of(scope.part()));
  }

  @Override
  public String models(Scope.Models scope) {
    return "of model " + names(scope.models(), rules.models(), Model::name);
  }

  @Override
  public String built(Scope.Built scope) {
    return "built " + DateRangeFormatter.of(scope.days());
  }

  @Override
  public String numbers(Scope.Numbers scope) {
    String table =
        Optional.ofNullable(rules.numberTables().get(scope.table()))
            .map(NumberTable::name)
            .orElse(scope.table());
    return table + " " + scope.from() + " to " + scope.to();
  }

  @Override
  public String equipment(Scope.Equipment scope) {
    return "with " + name(scope.equipment(), rules.equipment());
  }

  @Override
  public String markets(Scope.Markets scope) {
    return "for " + names(scope.markets(), rules.markets(), name -> name);
  }

  @Override
  public String plants(Scope.Plants scope) {
    return "from " + names(scope.plants(), rules.plants(), name -> name);
  }

  private static String name(String id, Map<String, String> names) {
    return quoted(names.getOrDefault(id, id));
  }

  /** Names several in the order of the rule set. */
  private static <T> String names(Set<String> ids, Map<String, T> known, Function<T, String> name) {
    return known.entrySet().stream()
        .filter(entry -> ids.contains(entry.getKey()))
        .map(entry -> quoted(name.apply(entry.getValue())))
        .collect(Collectors.joining(" or "));
  }

  private static String quoted(String name) {
    return "‘" + name + "’";
  }
}
