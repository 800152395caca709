package assize.check;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.evidence.Claim;
import assize.evidence.Source;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.util.HashSet;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds claims of a source that only repeat what the source it copies says there. */
final class RedundantCopyClaim implements RuleSetWarningRule {
  @Override
  public DiagnosticCode code() {
    return DiagnosticCode.REDUNDANT_COPY;
  }

  @Override
  public Stream<Diagnostic> in(RuleSet rules) {
    return rules
        .items()
        .flatMap(item -> item.aspects().stream().flatMap(rule -> in(item, rule, rules)));
  }

  private static Stream<Diagnostic> in(Item item, AspectRule rule, RuleSet rules) {
    return rule.claims().stream()
        .flatMap(
            claim ->
                repeated(claim, rule, rules)
                    .map(it -> it.subjects(WarningSubjects.of(item, claim))));
  }

  private static Stream<Diagnostic> repeated(Claim claim, AspectRule rule, RuleSet rules) {
    Optional<Source> source =
        claim.source().flatMap(it -> Optional.ofNullable(rules.sources().get(it)));
    return rule.claims().stream()
        .filter(other -> source.isPresent() && other.source().isPresent())
        .filter(other -> source.orElseThrow().copies().contains(other.source().orElseThrow()))
        .filter(other -> saysTheSame(claim, other))
        .limit(1)
        .map(
            other ->
                Diagnostic.of(
                        DiagnosticCode.REDUNDANT_COPY,
                        claim.at(),
                        "\""
                            + source.orElseThrow().id()
                            + "\" repeats \""
                            + other.source().orElseThrow()
                            + "\", which it copies, and adds nothing",
                        "leave the claim out, unless readers should see it")
                    .with(other.at(), "said here"));
  }

  private static boolean saysTheSame(Claim claim, Claim other) {
    return claim.manner() == other.manner()
        && claim.scope().equals(other.scope())
        && new HashSet<>(claim.values()).equals(new HashSet<>(other.values()));
  }
}
