package assize.check;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.evidence.Scope;
import assize.production.Production;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.util.List;
import java.util.stream.Stream;

/** Finds items that apply to no vehicle at all. */
final class UnreachableItem implements RuleSetWarningRule {
  @Override
  public DiagnosticCode code() {
    return DiagnosticCode.UNREACHABLE_ITEM;
  }

  @Override
  public Stream<Diagnostic> in(RuleSet rules) {
    return rules.items().filter(item -> isFound(item, rules)).map(this::say);
  }

  /** Says whether an item is one; one whose numbers are at fault is left to another rule. */
  static boolean isFound(Item item, RuleSet rules) {
    return canBeLookedAt(item.scope(), rules) && isEmpty(List.of(item.scope()), rules);
  }

  /** Says whether there are models to go by, and no number asked for is at fault. */
  static boolean canBeLookedAt(Scope scope, RuleSet rules) {
    return !rules.models().isEmpty() && !NumbersOutsideTable.isFaulty(scope, rules);
  }

  /** Says whether no vehicle is within all of some scopes. */
  static boolean isEmpty(List<Scope> scopes, RuleSet rules) {
    return Production.within(rules, scopes).findAny().isEmpty();
  }

  private Diagnostic say(Item item) {
    return Diagnostic.of(
            code(),
            item.at(),
            "item \"" + item.id() + "\" applies to no vehicle of this rule set",
            "look its models, dates and other conditions up again")
        .subjects(item.id());
  }
}
