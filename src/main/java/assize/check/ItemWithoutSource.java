package assize.check;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.ruleset.RuleSet;
import java.util.stream.Stream;

/** Finds items that name no source. */
final class ItemWithoutSource implements RuleSetWarningRule {
  @Override
  public DiagnosticCode code() {
    return DiagnosticCode.NO_SOURCE;
  }

  @Override
  public Stream<Diagnostic> in(RuleSet rules) {
    return rules
        .items()
        .filter(
            item ->
                item.aspects().stream()
                    .flatMap(rule -> rule.claims().stream())
                    .allMatch(claim -> claim.source().isEmpty()))
        .map(
            item ->
                Diagnostic.of(
                        DiagnosticCode.NO_SOURCE,
                        item.at(),
                        "item \"" + item.id() + "\" names no source",
                        "add `source:`")
                    .subjects(item.id()));
  }
}
