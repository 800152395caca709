package assize.check;

import assize.aspect.Aspect;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.evidence.Scope;
import assize.production.ScopeAttributes;
import assize.production.VehicleAttribute;
import assize.ruleset.AspectRule;
import assize.ruleset.NumberTable;
import assize.ruleset.RuleSet;
import assize.schema.Field;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Finds equipment that nothing asks for, and lists of words of which nothing uses any.
 *
 * <p>A single color, finish, material, plant or market that no item names is no warning: it is
 * there so that a record can say what was found instead.
 */
final class UnusedVocabulary implements RuleSetWarningRule {
  @Override
  public DiagnosticCode code() {
    return DiagnosticCode.UNUSED_WORD;
  }

  @Override
  public Stream<Diagnostic> in(RuleSet rules) {
    List<Scope> scopes =
        rules
            .items()
            .flatMap(
                item ->
                    Stream.concat(
                        Stream.of(item.scope()),
                        item.aspects().stream()
                            .flatMap(rule -> rule.claims().stream())
                            .map(claim -> claim.scope())))
            .toList();
    ScopeAttributes asked = ScopeAttributes.of(scopes);
    Set<Aspect> aspects =
        rules
            .items()
            .flatMap(item -> item.aspects().stream())
            .map(AspectRule::aspect)
            .collect(Collectors.toSet());
    boolean numbersTellPlant =
        rules.numberTables().values().stream()
            .flatMap((NumberTable table) -> table.series().stream())
            .anyMatch(series -> series.plant().isPresent());
    return Stream.of(
            rules.equipment().keySet().stream()
                .filter(it -> !asked.contains(new VehicleAttribute.OfEquipment(it)))
                .map(
                    it ->
                        say(
                            rules,
                            RuleSet.EQUIPMENT,
                            it,
                            "nothing asks whether a vehicle has the equipment \"" + it + "\"")),
            unused(rules, RuleSet.COLORS, rules.colors().keySet(), aspects.contains(Aspect.COLOR)),
            unused(
                rules,
                RuleSet.FINISHES,
                rules.finishes().keySet(),
                aspects.contains(Aspect.FINISH)),
            unused(
                rules,
                RuleSet.MATERIALS,
                rules.materials().keySet(),
                aspects.contains(Aspect.MATERIAL)),
            unused(
                rules,
                RuleSet.MARKETS,
                rules.markets().keySet(),
                asked.contains(new VehicleAttribute.OfMarket())),
            unused(
                rules,
                RuleSet.PLANTS,
                rules.plants().keySet(),
                numbersTellPlant || asked.contains(new VehicleAttribute.OfPlant())))
        .flatMap(it -> it);
  }

  private static Stream<Diagnostic> unused(
      RuleSet rules, Field<?, ?> section, Collection<String> words, boolean isUsed) {
    return isUsed
        ? Stream.of()
        : words.stream()
            .limit(1)
            .map(it -> say(rules, section, it, "nothing uses any of the " + section.name()));
  }

  private static Diagnostic say(RuleSet rules, Field<?, ?> section, String word, String message) {
    return Diagnostic.of(
            DiagnosticCode.UNUSED_WORD,
            rules.defined().at(section, word).orElseThrow(),
            message,
            "is an item missing that asks for it? Else leave it out")
        .subjects(word);
  }
}
