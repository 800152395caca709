package assize.production;

import assize.date.DateRange;
import assize.evidence.Scope;
import assize.ruleset.NumberTable;
import assize.ruleset.NumberTable.Series;
import assize.ruleset.NumberTable.TableEntry;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Numbers of one series, one after the other, that no scope tells apart.
 *
 * @param series what they are part of
 * @param place where the series stands in its table
 * @param first the first of them
 * @param days when they may have been given out
 * @param ranges those that scopes ask for and that hold them
 */
public record NumberPart(
    Series series, int place, long first, DateRange days, List<Scope.Numbers> ranges) {
  public NumberPart {
    ranges = List.copyOf(ranges);
  }

  /** Says whether a number of a series lies in a range that is written as its numbers are. */
  public static boolean holds(Series series, Scope.Numbers range, long number) {
    OptionalLong from = series.numberOf(range.from());
    OptionalLong to = series.numberOf(range.to());
    return from.isPresent()
        && to.isPresent()
        && from.getAsLong() <= number
        && number <= to.getAsLong();
  }

  /** Parts all series of a table wherever a range begins or ends. */
  public static List<NumberPart> of(NumberTable table, Collection<Scope.Numbers> ranges) {
    List<NumberPart> parts = new ArrayList<>();
    for (int i = 0; i < table.series().size(); i++) {
      Series series = table.series().get(i);
      TreeSet<Long> starts = new TreeSet<>();
      long least = series.firstNumbers().isEmpty() ? 0 : series.firstNumbers().get(0).number();
      starts.add(least);
      for (Scope.Numbers range : ranges) {
        series.numberOf(range.from()).ifPresent(starts::add);
        series.numberOf(range.to()).ifPresent(to -> starts.add(to + 1));
      }
      long most = series.last().map(TableEntry::number).orElse(Long.MAX_VALUE);
      for (long start : starts) {
        if (start >= least && start <= most) {
          long next = Optional.ofNullable(starts.higher(start)).orElse(Long.MAX_VALUE);
          parts.add(
              new NumberPart(
                  series,
                  i,
                  start,
                  givenOut(series, start, next - 1),
                  ranges.stream().filter(range -> holds(series, range, start)).toList()));
        }
      }
    }
    return parts;
  }

  /** Returns the days between the entries around some numbers of a series. */
  private static DateRange givenOut(Series series, long from, long to) {
    List<TableEntry> entries =
        Stream.concat(series.firstNumbers().stream(), series.last().stream()).toList();
    LocalDate first =
        entries.stream()
            .filter(entry -> entry.number() <= from)
            .map(entry -> entry.built().first())
            .reduce((a, b) -> b)
            .orElse(LocalDate.MIN);
    LocalDate last =
        entries.stream()
            .filter(entry -> entry.number() >= to)
            .map(entry -> entry.built().last())
            .findFirst()
            .or(() -> series.last().map(entry -> entry.built().last()))
            .orElse(LocalDate.MAX);
    return new DateRange(first, last.isBefore(first) ? first : last);
  }

  /** Says whether vehicles of a model bear numbers of the series. */
  public boolean isFor(Optional<String> model) {
    return series.models().isEmpty() || model.map(series.models()::contains).orElse(true);
  }

  /** Says whether vehicles of a plant bear numbers of the series. */
  public boolean isFrom(Optional<String> plant) {
    return series.plant().isEmpty() || plant.map(series.plant().orElseThrow()::equals).orElse(true);
  }
}
