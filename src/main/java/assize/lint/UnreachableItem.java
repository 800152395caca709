package assize.lint;

import assize.diagnostic.Code;
import assize.diagnostic.Diagnostic;
import assize.evidence.Claim;
import assize.evidence.Scope;
import assize.production.Production;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.util.List;
import java.util.stream.Stream;

/** Finds items that apply to no vehicle at all, and claims that speak of none. */
final class UnreachableItem implements Doubt {
  @Override
  public Stream<Diagnostic> in(RuleSet rules) {
    return rules.items().flatMap(item -> in(item, rules));
  }

  private static Stream<Diagnostic> in(Item item, RuleSet rules) {
    if (rules.models().isEmpty() || NumbersOutside.isFaulty(item.scope(), rules)) {
      return Stream.of();
    }
    if (isEmpty(List.of(item.scope()), rules)) {
      return Stream.of(
          Diagnostic.of(
                  Code.UNREACHABLE_ITEM,
                  item.at(),
                  "item \"" + item.id() + "\" applies to no vehicle of this rule set",
                  "look its models, dates and other conditions up again")
              .about(item.id()));
    }
    return item.aspects().stream()
        .flatMap(rule -> rule.claims().stream())
        .filter(claim -> !NumbersOutside.isFaulty(claim.scope(), rules))
        .filter(claim -> isEmpty(List.of(item.scope(), claim.scope()), rules))
        .map(claim -> say(item, claim, rules));
  }

  private static boolean isEmpty(List<Scope> scopes, RuleSet rules) {
    return Production.within(rules, scopes).findAny().isEmpty();
  }

  private static Diagnostic say(Item item, Claim claim, RuleSet rules) {
    boolean byItself = isEmpty(List.of(claim.scope()), rules);
    return Diagnostic.of(
            Code.CLAIM_NEVER_SPEAKS,
            claim.at(),
            "this claim on \""
                + item.id()
                + "\" speaks of no vehicle"
                + (byItself ? " of this rule set" : " that the item applies to"),
            "look its models, dates and other conditions up again")
        .about(Abouts.of(item, claim));
  }
}
