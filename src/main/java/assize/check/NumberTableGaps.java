package assize.check;

import assize.date.DateRange;
import assize.date.DateRangeSet;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.ruleset.Model;
import assize.ruleset.NumberTable;
import assize.ruleset.NumberTable.Series;
import assize.ruleset.NumberTable.TableEntry;
import assize.ruleset.RuleSet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Finds number tables with a hole: numbers between two series that are written alike, or more than
 * two months of a model's production, for which the table has nothing.
 */
final class NumberTableGaps implements RuleSetWarningRule {
  /** Shorter ones may be holidays, or a table kept by months: our own convention. */
  private static final int TWO_MONTHS = 62;

  @Override
  public DiagnosticCode code() {
    return DiagnosticCode.NUMBER_TABLE_GAP;
  }

  @Override
  public Stream<Diagnostic> in(RuleSet rules) {
    return rules.numberTables().values().stream()
        .flatMap(table -> Stream.concat(numbers(table, rules), days(table, rules)));
  }

  private static Diagnostic say(NumberTable table, RuleSet rules, String message, String hint) {
    return Diagnostic.of(
            DiagnosticCode.NUMBER_TABLE_GAP,
            rules.defined().at(RuleSet.NUMBER_TABLES, table.id()).orElseThrow(),
            message,
            hint)
        .subjects(table.id());
  }

  private static Stream<Diagnostic> numbers(NumberTable table, RuleSet rules) {
    List<Series> rising =
        table.series().stream()
            .filter(it -> !it.firstNumbers().isEmpty())
            .sorted(Comparator.comparingLong(it -> it.firstNumbers().get(0).number()))
            .toList();
    List<Diagnostic> found = new ArrayList<>();
    for (Series one : rising) {
      Optional<Series> next =
          rising.stream()
              .filter(it -> it.prefix().equals(one.prefix()) && it.suffix().equals(one.suffix()))
              .filter(it -> it.firstNumbers().get(0).number() > one.firstNumbers().get(0).number())
              .findFirst();
      Optional<Long> from = one.last().map(TableEntry::number).map(last -> last + 1);
      Optional<Long> to = next.map(it -> it.firstNumbers().get(0).number() - 1);
      if (from.isPresent() && to.isPresent() && from.get() <= to.get()) {
        found.add(
            say(
                table,
                rules,
                "the series of table \""
                    + table.id()
                    + "\" leave out "
                    + written(one, from.get())
                    + (from.get().equals(to.get()) ? "" : " to " + written(one, to.get())),
                "were they given out, or is one of the two numbers mistyped?"));
      }
    }
    return found.stream();
  }

  private static String written(Series series, long number) {
    return series.prefix() + number + series.suffix();
  }

  private static Stream<Diagnostic> days(NumberTable table, RuleSet rules) {
    return rules.models().values().stream()
        .flatMap(
            model -> {
              List<DateRange> told =
                  table.series().stream()
                      .filter(it -> it.models().isEmpty() || it.models().contains(model.id()))
                      .filter(it -> !it.firstNumbers().isEmpty())
                      .map(NumberTableGaps::days)
                      .toList();
              return told.isEmpty() ? Stream.of() : holes(model, DateRangeSet.of(told)).stream();
            })
        .limit(1)
        .map(
            hole ->
                say(
                    table,
                    rules,
                    "no number of table \""
                        + table.id()
                        + "\" dates to "
                        + hole.days.first()
                        + " to "
                        + hole.days.last()
                        + ", when model \""
                        + hole.model.id()
                        + "\" was built",
                    "look up the first and last numbers, or the model's production"));
  }

  private static DateRange days(Series series) {
    LocalDate last = series.last().map(it -> it.built().last()).orElse(LocalDate.MAX);
    LocalDate first = series.firstNumbers().get(0).built().first();
    return new DateRange(first, last.isBefore(first) ? first : last);
  }

  private record Hole(Model model, DateRange days) {}

  private static List<Hole> holes(Model model, DateRangeSet told) {
    List<Hole> holes = new ArrayList<>();
    LocalDate next = model.production().first();
    for (DateRange span : told.intersect(DateRangeSet.of(model.production())).spans()) {
      if (span.first().isAfter(next)) {
        holes.add(new Hole(model, new DateRange(next, span.first().minusDays(1))));
      }
      next = span.last().plusDays(1);
    }
    if (!next.isAfter(model.production().last())) {
      holes.add(new Hole(model, new DateRange(next, model.production().last())));
    }
    return holes.stream().filter(it -> it.days.days() > TWO_MONTHS).toList();
  }
}
