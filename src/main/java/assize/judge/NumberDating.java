package assize.judge;

import assize.date.DateRange;
import assize.ruleset.NumberTable;
import assize.ruleset.NumberTable.Reserved;
import assize.ruleset.NumberTable.Series;
import assize.ruleset.NumberTable.TableEntry;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;

/** What a chassis or engine number dates to. */
public final class NumberDating {
  private NumberDating() {}

  /**
   * What one series says of a number.
   *
   * @param number the digits of it
   * @param days when it was given out; empty where the series does not say
   * @param likely the estimate, linear between the two neighboring entries
   * @param reserved the block that it stands in
   */
  public record Dated(
      Series series,
      long number,
      Optional<DateRange> days,
      Optional<LocalDate> likely,
      Optional<Reserved> reserved) {}

  /** Returns what each series that the number fits says of it, in the order of the table. */
  public static List<Dated> of(NumberTable table, String stamped) {
    List<Dated> found = new ArrayList<>();
    for (Series series : table.series()) {
      OptionalLong number = series.numberOf(stamped);
      if (number.isPresent()) {
        found.add(dated(series, number.getAsLong()));
      }
    }
    return found;
  }

  private static Dated dated(Series series, long number) {
    Optional<Reserved> reserved =
        series.reserved().stream()
            .filter(block -> block.from() <= number && number <= block.to())
            .findFirst();
    if (reserved.isPresent()) {
      Optional<DateRange> days = reserved.get().built();
      return new Dated(series, number, days, days.map(NumberDating::middle), reserved);
    }
    List<TableEntry> first = series.firstNumbers();
    int at = -1;
    while (at + 1 < first.size() && first.get(at + 1).number() <= number) {
      at++;
    }
    boolean beyond = series.last().isPresent() && number > series.last().get().number();
    if (at < 0 || beyond) {
      return new Dated(series, number, Optional.empty(), Optional.empty(), reserved);
    }
    Dated dated = afterEntry(series, number, at);
    return Stream.concat(first.stream(), series.last().stream())
        .filter(entry -> entry.number() == number)
        .findFirst()
        .map(entry -> named(dated, entry.built()))
        .orElse(dated);
  }

  private static Dated afterEntry(Series series, long number, int at) {
    List<TableEntry> first = series.firstNumbers();
    TableEntry before = first.get(at);
    LocalDate from = before.built().first();
    if (at + 1 < first.size()) {
      TableEntry after = first.get(at + 1);
      LocalDate to = after.built().first();
      return between(series, number, before.number(), from, after.number(), to);
    }
    if (series.last().isPresent()) {
      TableEntry last = series.last().get();
      return between(series, number, before.number(), from, last.number(), last.built().last());
    }
    return new Dated(
        series,
        number,
        Optional.of(DateRange.of(from, LocalDate.MAX)),
        Optional.empty(),
        Optional.empty());
  }

  /** A number that the table names was given out when the table says. */
  private static Dated named(Dated dated, DateRange built) {
    Optional<DateRange> days = dated.days().flatMap(built::intersect).or(() -> Optional.of(built));
    Optional<LocalDate> likely = dated.likely().or(() -> Optional.of(built.first()));
    return new Dated(dated.series(), dated.number(), days, likely, dated.reserved());
  }

  private static Dated between(
      Series series, long number, long n1, LocalDate from, long n2, LocalDate to) {
    long days = ChronoUnit.DAYS.between(from, to);
    LocalDate likely =
        n2 == n1 ? to : from.plusDays(ExactMath.part(days, ExactMath.of(number - n1, n2 - n1)));
    return new Dated(
        series, number, Optional.of(DateRange.of(from, to)), Optional.of(likely), Optional.empty());
  }

  private static LocalDate middle(DateRange days) {
    return days.first().plusDays(days.days() / 2);
  }
}
