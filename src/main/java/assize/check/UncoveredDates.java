package assize.check;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Finds stretches of a model's production for which an item applies but no claim says what is
 * right.
 */
final class UncoveredDates implements RuleSetWarningRule {
  @Override
  public DiagnosticCode code() {
    return DiagnosticCode.UNCOVERED_DATES;
  }

  @Override
  public Stream<Diagnostic> in(RuleSet rules) {
    return rules
        .items()
        .flatMap(
            item ->
                Coverage.of(item, rules).aspects().stream().flatMap(it -> in(item, it).stream()));
  }

  private static List<Diagnostic> in(Item item, Coverage.OfAspect aspect) {
    List<String> where = new ArrayList<>();
    aspect
        .stretches()
        .forEach(
            (model, stretches) ->
                stretches.stream()
                    .filter(it -> it.reach() == Coverage.Reach.UNCOVERED)
                    .map(
                        it ->
                            "on model \""
                                + model
                                + "\" built "
                                + it.days().first()
                                + " to "
                                + it.days().last())
                    .forEach(where::add));
    if (where.isEmpty()) {
      return List.of();
    }
    String said =
        "no claim says what is right for the "
            + aspect.aspect().spoken()
            + " of \""
            + item.id()
            + "\" "
            + where.get(0);
    Diagnostic warning =
        where.size() == 1
            ? Diagnostic.of(DiagnosticCode.UNCOVERED_DATES, item.at(), said)
            : Diagnostic.of(
                DiagnosticCode.UNCOVERED_DATES,
                item.at(),
                said,
                where.size() == 2
                    ? "nor " + where.get(1)
                    : "nor on " + (where.size() - 1) + " more stretches: see check --coverage");
    return List.of(warning.subjects(item.id()));
  }
}
