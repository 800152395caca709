package assize.check;

import assize.aspect.DateCodes;
import assize.aspect.Expectation;
import assize.aspect.PartNumbers;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.evidence.Claim;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds patterns of part numbers and date codes that fit nothing. */
final class PatternMatchesNothing implements RuleSetWarningRule {
  @Override
  public DiagnosticCode code() {
    return DiagnosticCode.UNMATCHABLE_PATTERN;
  }

  @Override
  public Stream<Diagnostic> in(RuleSet rules) {
    return rules
        .items()
        .flatMap(
            item ->
                item.aspects().stream()
                    .flatMap(rule -> rule.claims().stream())
                    .flatMap(
                        claim ->
                            claim.values().stream()
                                .flatMap(value -> in(item, claim, value).stream())));
  }

  private Optional<Diagnostic> in(Item item, Claim claim, Expectation value) {
    if (value instanceof PartNumbers.Right part && part.number().fitsNothing()) {
      return Optional.of(
          say(
              item,
              claim,
              "no number fits \"" + part.number().text() + "\"",
              "spaces and dashes are dropped before numbers are compared; ^ stands only at the"
                  + " beginning, $ at the end"));
    }
    if (value instanceof DateCodes.Right made && made.code().fitsNothing()) {
      return Optional.of(
          say(
              item,
              claim,
              "no code fits \"" + made.code().text() + "\"",
              "^ stands only at the beginning, $ at the end"));
    }
    return Optional.empty();
  }

  private Diagnostic say(Item item, Claim claim, String what, String hint) {
    return Diagnostic.of(code(), claim.at(), what + ", which \"" + item.id() + "\" asks for", hint)
        .subjects(WarningSubjects.of(item, claim));
  }
}
