package assize.ruleset;

import assize.diagnostic.DiagnosticCode;
import assize.evidence.ClaimKind;
import assize.yaml.DiagnosticCollector;

/** Finds aspects of which it is said only what they are not: nothing is left to judge by. */
final class OnlyRuledOutCheck implements RuleSetCheck {
  @Override
  public void check(RuleSet rules, DiagnosticCollector problems) {
    for (Item item : rules.items().toList()) {
      for (AspectRule rule : item.aspects()) {
        if (rule.claims().stream().allMatch(it -> it.manner() == ClaimKind.RULES_OUT)) {
          problems.add(
              DiagnosticCode.ONLY_RULED_OUT,
              rule.claims().get(0).at(),
              "all that is said of the "
                  + rule.aspect().spoken()
                  + " of \""
                  + item.id()
                  + "\" is what it is not",
              "add a claim with `says:` or `leaves_open:`");
        }
      }
    }
  }
}
