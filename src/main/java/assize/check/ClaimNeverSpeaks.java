package assize.check;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.evidence.Claim;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.util.List;
import java.util.stream.Stream;

/** Finds claims that speak of no vehicle, at items that do apply to some. */
final class ClaimNeverSpeaks implements RuleSetWarningRule {
  @Override
  public DiagnosticCode code() {
    return DiagnosticCode.UNREACHABLE_CLAIM;
  }

  @Override
  public Stream<Diagnostic> in(RuleSet rules) {
    return rules
        .items()
        .filter(item -> UnreachableItem.canBeLookedAt(item.scope(), rules))
        .filter(item -> !UnreachableItem.isFound(item, rules))
        .flatMap(item -> in(item, rules));
  }

  private Stream<Diagnostic> in(Item item, RuleSet rules) {
    return item.aspects().stream()
        .flatMap(rule -> rule.claims().stream())
        .filter(claim -> !NumbersOutsideTable.isFaulty(claim.scope(), rules))
        .filter(claim -> UnreachableItem.isEmpty(List.of(item.scope(), claim.scope()), rules))
        .map(claim -> say(item, claim, rules));
  }

  private Diagnostic say(Item item, Claim claim, RuleSet rules) {
    boolean byItself = UnreachableItem.isEmpty(List.of(claim.scope()), rules);
    return Diagnostic.of(
            code(),
            claim.at(),
            "this claim on \""
                + item.id()
                + "\" speaks of no vehicle"
                + (byItself ? " of this rule set" : " that the item applies to"),
            "look its models, dates and other conditions up again")
        .subjects(WarningSubjects.of(item, claim));
  }
}
