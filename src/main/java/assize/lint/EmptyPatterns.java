package assize.lint;

import assize.aspect.DateCodePattern;
import assize.aspect.DateCodes;
import assize.aspect.Expectation;
import assize.aspect.NumberPattern;
import assize.aspect.PartNumbers;
import assize.date.DaySpan;
import assize.diagnostic.Code;
import assize.diagnostic.Diagnostic;
import assize.evidence.Claim;
import assize.evidence.Scope;
import assize.production.Production;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Finds patterns that fit nothing, and date codes that can't mean a day on which a part of any
 * vehicle may have been made.
 */
final class EmptyPatterns implements Doubt {
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
                                .flatMap(value -> in(item, claim, value, rules).stream())));
  }

  private static Optional<Diagnostic> in(Item item, Claim claim, Expectation value, RuleSet rules) {
    if (value instanceof PartNumbers.Right part) {
      return part.number().fitsNothing()
          ? Optional.of(empty(item, claim, part.number()))
          : Optional.empty();
    }
    return value instanceof DateCodes.Right made
        ? in(item, claim, made.code(), rules)
        : Optional.empty();
  }

  private static Diagnostic empty(Item item, Claim claim, NumberPattern pattern) {
    return Diagnostic.of(
            Code.PATTERN_MATCHES_NOTHING,
            claim.at(),
            "no number fits \"" + pattern.text() + "\", which \"" + item.id() + "\" asks for",
            "spaces and dashes are dropped before numbers are compared; ^ stands only at the"
                + " beginning, $ at the end")
        .about(Abouts.of(item, claim));
  }

  private static Optional<Diagnostic> in(
      Item item, Claim claim, DateCodePattern code, RuleSet rules) {
    if (code.fitsNothing()) {
      return Optional.of(
          Diagnostic.of(
                  Code.PATTERN_MATCHES_NOTHING,
                  claim.at(),
                  "no code fits \"" + code.text() + "\", which \"" + item.id() + "\" asks for",
                  "^ stands only at the beginning, $ at the end")
              .about(Abouts.of(item, claim)));
    }
    List<Scope> scopes = List.of(item.scope(), claim.scope());
    List<DaySpan> windows =
        Production.within(rules, scopes).map(it -> window(code, it.days())).toList();
    if (windows.isEmpty() || windows.stream().anyMatch(code::canMean)) {
      return Optional.empty();
    }
    DaySpan all = windows.stream().reduce(DaySpan::hull).orElseThrow();
    return Optional.of(
        Diagnostic.of(
                Code.CODE_NEVER_FITS,
                claim.at(),
                "no code that fits \""
                    + code.text()
                    + "\" means a day on which this part of \""
                    + item.id()
                    + "\" may have been made, "
                    + all.first()
                    + " to "
                    + all.last(),
                "look up the years of the pattern, the letters of `years` and `months`, and `made`")
            .about(Abouts.of(item, claim)));
  }

  private static DaySpan window(DateCodePattern code, DaySpan built) {
    return DaySpan.of(
        code.made().window(built.first()).first(), code.made().window(built.last()).last());
  }
}
