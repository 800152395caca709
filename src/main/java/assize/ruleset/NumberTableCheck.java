package assize.ruleset;

import assize.diagnostic.DiagnosticCode;
import assize.yaml.DiagnosticCollector;
import java.util.List;

/** Finds number tables whose numbers do not rise, or whose dates go back. */
final class NumberTableCheck implements RuleSetCheck {
  @Override
  public void check(RuleSet rules, DiagnosticCollector problems) {
    rules.numberTables().values().stream()
        .flatMap(table -> table.series().stream())
        .forEach(series -> check(series, problems));
  }

  private static void check(NumberTable.Series series, DiagnosticCollector problems) {
    List<NumberTable.TableEntry> first = series.firstNumbers();
    for (int i = 1; i < first.size(); i++) {
      rise(first.get(i - 1), first.get(i), 1, problems);
    }
    if (series.last().isPresent() && !first.isEmpty()) {
      rise(first.get(first.size() - 1), series.last().get(), 0, problems);
    }
  }

  private static void rise(
      NumberTable.TableEntry before,
      NumberTable.TableEntry after,
      long least,
      DiagnosticCollector problems) {
    if (after.number() - before.number() < least) {
      problems.add(
          DiagnosticCode.NUMBERS_NOT_ASCENDING,
          after.at(),
          after.number() + " stands behind " + before.number() + "; the numbers of a series rise",
          "sort them");
    } else if (after.built().first().isBefore(before.built().first())) {
      problems.add(
          DiagnosticCode.DATES_NOT_ASCENDING,
          after.at(),
          after.number() + " is dated earlier than " + before.number() + " before it",
          "look the two dates up again");
    }
  }
}
