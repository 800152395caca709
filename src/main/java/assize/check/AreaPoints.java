package assize.check;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.ruleset.Area;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.math.BigDecimal;
import java.util.stream.Stream;

/** Finds areas whose items do not add up to the area's points. */
final class AreaPoints implements RuleSetWarningRule {
  @Override
  public DiagnosticCode code() {
    return DiagnosticCode.AREA_POINTS_MISMATCH;
  }

  @Override
  public Stream<Diagnostic> in(RuleSet rules) {
    return rules.areas().stream().filter(area -> sum(area) != area.points()).map(AreaPoints::say);
  }

  private static long sum(Area area) {
    return area.items().stream().mapToLong(Item::points).sum();
  }

  private static Diagnostic say(Area area) {
    return Diagnostic.of(
            DiagnosticCode.AREA_POINTS_MISMATCH,
            area.at(),
            "the items of area \""
                + area.id()
                + "\" have "
                + points(sum(area))
                + " points together; the area says "
                + points(area.points()))
        .subjects(area.id());
  }

  private static String points(long thousandths) {
    return BigDecimal.valueOf(thousandths, 3).stripTrailingZeros().toPlainString();
  }
}
