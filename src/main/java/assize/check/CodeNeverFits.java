package assize.check;

import assize.aspect.DateCodes;
import assize.date.DateRange;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.evidence.Claim;
import assize.pattern.DateCodePattern;
import assize.production.Production;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds date codes that can't mean a day on which a part of any vehicle may have been made. */
final class CodeNeverFits implements RuleSetWarningRule {
  @Override
  public DiagnosticCode code() {
    return DiagnosticCode.UNMATCHABLE_DATE_CODE;
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
                                .filter(DateCodes.Right.class::isInstance)
                                .map(value -> ((DateCodes.Right) value).code())
                                .filter(code -> !code.fitsNothing())
                                .flatMap(code -> in(item, claim, code, rules).stream())));
  }

  private Optional<Diagnostic> in(Item item, Claim claim, DateCodePattern code, RuleSet rules) {
    List<DateRange> windows =
        Production.within(rules, List.of(item.scope(), claim.scope()))
            .map(it -> window(code, it.days()))
            .toList();
    if (windows.isEmpty() || windows.stream().anyMatch(code::canMean)) {
      return Optional.empty();
    }
    DateRange all = windows.stream().reduce(DateRange::hull).orElseThrow();
    return Optional.of(
        Diagnostic.of(
                code(),
                claim.at(),
                "no code that fits \""
                    + code.text()
                    + "\" means a day on which this part of \""
                    + item.id()
                    + "\" may have been made, "
                    + all.first()
                    + " to "
                    + all.last(),
                "look up the years of the pattern, the letters of `years` and `months`, and `lead_time`")
            .subjects(WarningSubjects.of(item, claim)));
  }

  private static DateRange window(DateCodePattern code, DateRange built) {
    return DateRange.of(
        code.made().window(built.first()).first(), code.made().window(built.last()).last());
  }
}
