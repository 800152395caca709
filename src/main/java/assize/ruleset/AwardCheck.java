package assize.ruleset;

import assize.diagnostic.DiagnosticCode;
import assize.yaml.DiagnosticCollector;
import java.math.BigDecimal;

/** Finds awards that ask for more than the full score. */
final class AwardCheck implements RuleSetCheck {
  @Override
  public void check(RuleSet rules, DiagnosticCollector problems) {
    long outOf = rules.scale().outOf();
    for (Award award : rules.awards()) {
      if (award.minScore() > outOf) {
        problems.add(
            DiagnosticCode.AWARD_OUT_OF_REACH,
            award.at(),
            "award \"" + award.id() + "\" asks for more than the full score",
            "the full score is " + points(outOf));
      }
    }
  }

  private static String points(long thousandths) {
    return BigDecimal.valueOf(thousandths, 3).stripTrailingZeros().toPlainString();
  }
}
