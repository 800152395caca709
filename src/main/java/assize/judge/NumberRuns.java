package assize.judge;

import assize.evidence.Scope;
import assize.pattern.NumberPattern;
import assize.ruleset.NumberTable;
import assize.ruleset.NumberTable.Reserved;
import assize.ruleset.NumberTable.Series;
import assize.ruleset.NumberTable.TableEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;

/** Cuts the numbers of a series wherever what a rule set says of them changes. */
final class NumberRuns {
  private final NumberTable table;
  private final Series series;
  private final long from;
  private final long to;
  private final NavigableSet<Long> starts = new TreeSet<>();

  private NumberRuns(NumberTable table, Series series, long from, long to) {
    this.table = table;
    this.series = series;
    this.from = from;
    this.to = to;
  }

  /** Returns the runs from one number to another, rising; those that are dated alone. */
  static List<NumberRun> of(
      NumberTable table, Series series, long from, long to, List<Scope> conditions) {
    NumberRuns runs = new NumberRuns(table, series, from, to);
    runs.start(from);
    table.series().stream().filter(runs::isAlike).forEach(runs::cut);
    conditions.forEach(runs::cut);
    return runs.runs();
  }

  /** Says whether the numbers of another series are written in the same way. */
  private boolean isAlike(Series other) {
    return NumberPattern.fold(other.prefix()).equals(NumberPattern.fold(series.prefix()))
        && NumberPattern.fold(other.suffix()).equals(NumberPattern.fold(series.suffix()));
  }

  private String text(long number) {
    return series.prefix() + number + series.suffix();
  }

  /** A number that the table names is dated more closely than those around it. */
  private void cut(Series one) {
    for (TableEntry entry : one.firstNumbers()) {
      alone(entry.number());
    }
    one.last().ifPresent(last -> alone(last.number()));
    for (Reserved block : one.reserved()) {
      start(block.from());
      start(block.to() + 1);
    }
  }

  private void cut(Scope condition) {
    if (condition instanceof Scope.Numbers numbers && numbers.table().equals(table.id())) {
      series.numberOf(numbers.from()).ifPresent(this::start);
      series.numberOf(numbers.to()).ifPresent(last -> start(last + 1));
    }
  }

  private void alone(long number) {
    start(number);
    start(number + 1);
  }

  private void start(long number) {
    if (from <= number && number <= to) {
      starts.add(number);
    }
  }

  private List<NumberRun> runs() {
    List<NumberRun> runs = new ArrayList<>();
    for (long first : starts) {
      Long next = starts.higher(first);
      boolean dated =
          NumberDating.of(table, text(first)).stream().anyMatch(it -> it.days().isPresent());
      if (dated) {
        runs.add(new NumberRun(first, next == null ? to : next - 1));
      }
    }
    return runs;
  }
}
