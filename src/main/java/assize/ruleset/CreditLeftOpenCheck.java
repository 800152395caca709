package assize.ruleset;

import assize.diagnostic.Code;
import assize.evidence.Claim;
import assize.evidence.Manner;
import assize.yaml.Problems;
import java.util.Collection;
import org.apache.commons.numbers.fraction.BigFraction;

/** Finds claims that give a credit to what they do not hold to be right. */
final class CreditLeftOpenCheck implements RuleSetCheck {
  @Override
  public void check(RuleSet rules, Problems problems) {
    rules
        .items()
        .flatMap(item -> item.aspects().stream())
        .map(AspectRule::claims)
        .flatMap(Collection::stream)
        .filter(CreditLeftOpenCheck::givesCredit)
        .forEach(
            claim ->
                problems.add(
                    Code.CREDIT_NOT_ALLOWED,
                    claim.at(),
                    "`" + claim.manner().word() + "` names values only; a credit belongs to `says`",
                    "write a list without credits"));
  }

  private static boolean givesCredit(Claim claim) {
    return claim.manner() != Manner.SAYS
        && claim.values().stream().anyMatch(it -> !it.credit().equals(BigFraction.ONE));
  }
}
