package assize.check;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.evidence.Scope;
import assize.production.ScopeAttributes;
import assize.ruleset.Item;
import assize.ruleset.NumberTable;
import assize.ruleset.NumberTable.Series;
import assize.ruleset.RuleSet;
import assize.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;

/** Finds conditions that ask for numbers that no series of their table gave out. */
final class NumbersOutsideTable implements RuleSetWarningRule {
  @Override
  public DiagnosticCode code() {
    return DiagnosticCode.NUMBERS_OUTSIDE_TABLE;
  }

  @Override
  public Stream<Diagnostic> in(RuleSet rules) {
    return rules
        .items()
        .flatMap(
            item ->
                Stream.concat(
                    in(item, item.scope(), item.at(), rules),
                    item.aspects().stream()
                        .flatMap(rule -> rule.claims().stream())
                        .flatMap(claim -> in(item, claim.scope(), claim.at(), rules))));
  }

  private static Stream<Diagnostic> in(Item item, Scope scope, Span at, RuleSet rules) {
    List<Diagnostic> found = new ArrayList<>();
    ScopeAttributes.of(scope)
        .ranges()
        .forEach(
            (table, ranges) ->
                Optional.ofNullable(rules.numberTables().get(table))
                    .ifPresent(
                        it ->
                            ranges.forEach(
                                range ->
                                    fault(it, range)
                                        .ifPresent(
                                            fault -> found.add(say(item, at, range, it, fault))))));
    return found.stream();
  }

  /** Says whether a condition asks for such numbers. */
  static boolean isFaulty(Scope scope, RuleSet rules) {
    return ScopeAttributes.of(scope).ranges().entrySet().stream()
        .anyMatch(
            asked ->
                Optional.ofNullable(rules.numberTables().get(asked.getKey()))
                    .filter(
                        table ->
                            asked.getValue().stream()
                                .anyMatch(range -> fault(table, range).isPresent()))
                    .isPresent());
  }

  private static Diagnostic say(
      Item item, Span at, Scope.Numbers range, NumberTable table, String fault) {
    return Diagnostic.of(
            DiagnosticCode.NUMBERS_OUTSIDE_TABLE,
            at,
            "\""
                + item.id()
                + "\" asks for the "
                + table.id()
                + " numbers "
                + range.from()
                + ".."
                + range.to()
                + ", "
                + fault)
        .subjects(item.id(), table.id());
  }

  /** Returns why no number can be one of these. */
  private static Optional<String> fault(NumberTable table, Scope.Numbers range) {
    boolean backward = false;
    boolean known = false;
    for (Series series : table.series()) {
      OptionalLong from = series.numberOf(range.from());
      OptionalLong to = series.numberOf(range.to());
      if (from.isPresent() && to.isPresent()) {
        known = true;
        backward |= to.getAsLong() < from.getAsLong();
        if (from.getAsLong() <= to.getAsLong()
            && from.getAsLong() <= last(series)
            && to.getAsLong() >= first(series)) {
          return Optional.empty();
        }
      }
    }
    if (backward) {
      return Optional.of("the last of which stands before the first");
    }
    return Optional.of(
        known ? "which its series never gave out" : "which none of its series can have given out");
  }

  private static long first(Series series) {
    return series.firstNumbers().isEmpty() ? 0 : series.firstNumbers().get(0).number();
  }

  private static long last(Series series) {
    return series.last().map(NumberTable.TableEntry::number).orElse(Long.MAX_VALUE);
  }
}
