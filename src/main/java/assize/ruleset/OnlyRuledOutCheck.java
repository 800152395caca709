package assize.ruleset;

import assize.diagnostic.Code;
import assize.evidence.Manner;
import assize.yaml.Problems;

/** Finds aspects of which it is said only what they are not: nothing is left to judge by. */
final class OnlyRuledOutCheck implements RuleSetCheck {
  @Override
  public void check(RuleSet rules, Problems problems) {
    for (Item item : rules.items().toList()) {
      for (AspectRule rule : item.aspects()) {
        if (rule.claims().stream().allMatch(it -> it.manner() == Manner.RULES_OUT)) {
          problems.add(
              Code.ONLY_RULED_OUT,
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
