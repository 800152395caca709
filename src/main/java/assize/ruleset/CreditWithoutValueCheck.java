package assize.ruleset;

import assize.diagnostic.DiagnosticCode;
import assize.evidence.Claim;
import assize.evidence.ClaimKind;
import assize.yaml.DiagnosticCollector;
import java.util.Collection;
import org.apache.commons.numbers.fraction.BigFraction;

/** Finds claims that give a credit to what they do not hold to be right. */
final class CreditWithoutValueCheck implements RuleSetCheck {
  @Override
  public void check(RuleSet rules, DiagnosticCollector problems) {
    rules
        .items()
        .flatMap(item -> item.aspects().stream())
        .map(AspectRule::claims)
        .flatMap(Collection::stream)
        .filter(CreditWithoutValueCheck::givesCredit)
        .forEach(
            claim ->
                problems.add(
                    DiagnosticCode.CREDIT_NOT_ALLOWED,
                    claim.at(),
                    "`" + claim.manner().word() + "` names values only; a credit belongs to `says`",
                    "write a list without credits"));
  }

  private static boolean givesCredit(Claim claim) {
    return claim.manner() != ClaimKind.SAYS
        && claim.values().stream().anyMatch(it -> !it.credit().equals(BigFraction.ONE));
  }
}
