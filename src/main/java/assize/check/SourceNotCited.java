package assize.check;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.ruleset.RuleSet;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds sources that no claim names. */
final class SourceNotCited implements RuleSetWarningRule {
  @Override
  public DiagnosticCode code() {
    return DiagnosticCode.UNCITED_SOURCE;
  }

  @Override
  public Stream<Diagnostic> in(RuleSet rules) {
    Set<String> cited =
        rules
            .items()
            .flatMap(item -> item.aspects().stream())
            .flatMap(rule -> rule.claims().stream())
            .flatMap(claim -> claim.source().stream())
            .collect(Collectors.toSet());
    return rules.sources().values().stream()
        .filter(source -> !cited.contains(source.id()))
        .map(
            source ->
                Diagnostic.of(
                        DiagnosticCode.UNCITED_SOURCE,
                        source.at(),
                        "no item cites source \"" + source.id() + "\"",
                        "cite it or leave it out")
                    .subjects(source.id()));
  }
}
