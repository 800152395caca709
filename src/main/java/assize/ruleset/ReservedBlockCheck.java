package assize.ruleset;

import assize.diagnostic.DiagnosticCode;
import assize.yaml.DiagnosticCollector;

/** Finds reserved numbers that lie outside of their series. */
final class ReservedBlockCheck implements RuleSetCheck {
  @Override
  public void check(RuleSet rules, DiagnosticCollector problems) {
    for (NumberTable table : rules.numberTables().values()) {
      for (NumberTable.Series series : table.series()) {
        for (NumberTable.Reserved block : series.reserved()) {
          if (isOutside(block, series)) {
            problems.add(
                DiagnosticCode.RESERVED_OUTSIDE,
                block.at(),
                "the numbers " + block.from() + " to " + block.to() + " lie outside of this series",
                "a reserved block lies between the first number and the last");
          }
        }
      }
    }
  }

  private static boolean isOutside(NumberTable.Reserved block, NumberTable.Series series) {
    boolean before =
        !series.firstNumbers().isEmpty() && block.from() < series.firstNumbers().get(0).number();
    boolean after = series.last().filter(it -> block.to() > it.number()).isPresent();
    return before || after;
  }
}
