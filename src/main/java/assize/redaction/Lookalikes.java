package assize.redaction;

import assize.judge.Judge;
import assize.judge.NumberDating;
import assize.judge.NumberRun;
import assize.ruleset.NumberTable;
import assize.ruleset.NumberTable.Series;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;

/**
 * Finds the numbers that a copy must not be told apart by.
 *
 * <p>The numbers of a series that look the same once they are masked are parted into groups of at
 * least {@link #LEAST}, always at the same places, whichever of them the vehicle bears. A copy says
 * what the whole group has in common, so that each number of it gives the same copy.
 */
final class Lookalikes {
  /** The fewest numbers that a copy leaves possible, where the table has as many. */
  static final int LEAST = 100;

  /** Numbers are looked at in blocks of so many: a mask hides at most four digits. */
  private static final int BLOCK = 10_000;

  /** Numbers that are not dated are told from no other with up to so many digits at the end. */
  private static final int ENDING = 3;

  private final Judge judge;
  private final NumberTable table;
  private final String number;
  private final Seen seen;
  private final Optional<Series> dated;
  private Function<String, String> verdicts = other -> "";

  /**
   * Begins.
   *
   * @param number the vehicle's own
   * @param seen numbers that the copy shows in the open
   */
  Lookalikes(Judge judge, NumberTable table, String number, Seen seen) {
    this.judge = judge;
    this.table = table;
    this.number = number;
    this.seen = seen;
    this.dated = table.series().stream().filter(this::isDated).findFirst();
  }

  private boolean isDated(Series series) {
    return series.numberOf(number).isPresent()
        && NumberDating.of(table, number).stream()
            .anyMatch(it -> it.series().equals(series) && it.days().isPresent());
  }

  /** Numbers in a row that are masked alike and of which the standard says the same. */
  private record Cell(String masked, NumberRun run, String first, int count) {}

  /** Says how to hide a number that is stamped on no item. */
  Hidden hidden() {
    return dated.map(this::hidden).orElseGet(this::undated);
  }

  /**
   * Says how to hide a number that is stamped on items too. Where their verdicts would set few
   * numbers apart from the others there is no stand-in, whichever of them it is.
   *
   * @param fits how a number would be judged there
   */
  Hidden stamped(Function<String, String> fits) {
    Map<String, Integer> sizes = new HashMap<>();
    all().forEach(other -> sizes.merge(fits.apply(other), 1, Integer::sum));
    if (sizes.values().stream().anyMatch(size -> size < LEAST)) {
      return hidden().withoutStandIn();
    }
    verdicts = fits;
    return hidden();
  }

  private List<String> all() {
    List<String> all = new ArrayList<>();
    if (dated.isEmpty()) {
      endings().forEach(all::add);
      return all;
    }
    for (NumberRun run : runs(dated.get())) {
      for (long one = run.first(); one <= run.last(); one++) {
        all.add(text(dated.get(), one));
      }
    }
    return all;
  }

  private long own(Series series) {
    return series.numberOf(number).getAsLong();
  }

  private List<NumberRun> runs(Series series) {
    long from = own(series) / BLOCK * BLOCK;
    return judge.numbersAlike(table, series, from, from + BLOCK - 1);
  }

  private Hidden hidden(Series series) {
    List<Cell> cells = cells(series);
    int at = 0;
    while (own(series) > cells.get(at).run().last()) {
      at++;
    }
    int[] group = range(groups(cells, true), at);
    List<Cell> same = cells.subList(group[0], group[1]);
    boolean plain = same.stream().map(Cell::masked).distinct().count() == 1;
    Showing showing =
        plain
            ? Showing.most(number)
            : Showing.beginning(number, NormalizedText.of(series.prefix()).length());
    if (count(same) < LEAST) {
      return new Hidden(
          table.id(), showing, List.of(), OptionalInt.of(count(same)), Optional.empty());
    }
    int[] block = range(groups(same, false), at - group[0]);
    List<Cell> told =
        same.subList(block[0], block[1]).stream().filter(it -> it.count() > 0).toList();
    List<String> samples = told.stream().map(Cell::first).toList();
    return new Hidden(
        table.id(), showing, samples, OptionalInt.of(count(told)), samples.stream().findFirst());
  }

  private static int count(List<Cell> cells) {
    return cells.stream().mapToInt(Cell::count).sum();
  }

  /** Returns the numbers around one, parted where they are masked differently or dated so. */
  private List<Cell> cells(Series series) {
    // Three letters and digits are masked, so where a digit is among them nine of ten look the
    // same.
    int step = NormalizedText.of(series.suffix()).length() < ENDING ? 10 : 1;
    List<Cell> cells = new ArrayList<>();
    for (NumberRun run : runs(series)) {
      long start = run.first();
      String before = masked(series, start);
      for (long one = start + 1; one <= run.last(); one++) {
        String masked = one % step == 0 ? masked(series, one) : before;
        if (!masked.equals(before)) {
          cells.add(cell(series, new NumberRun(start, one - 1), before));
          start = one;
          before = masked;
        }
      }
      cells.add(cell(series, new NumberRun(start, run.last()), before));
    }
    return cells;
  }

  private Cell cell(Series series, NumberRun run, String masked) {
    String before = NormalizedText.of(series.prefix()).toString();
    String after = NormalizedText.of(series.suffix()).toString();
    Set<Long> open = seen.among(before, run.first(), run.last(), after);
    String own = verdicts.apply(number);
    String first = "";
    int count = 0;
    for (long one = run.first(); one <= run.last(); one++) {
      if (!open.contains(one) && verdicts.apply(text(series, one)).equals(own)) {
        first = count == 0 ? text(series, one) : first;
        count++;
      }
    }
    return new Cell(masked, run, first, count);
  }

  private static String text(Series series, long number) {
    return series.prefix() + number + series.suffix();
  }

  private static String masked(Series series, long number) {
    return Showing.most(text(series, number)).masked();
  }

  /** Returns which group each cell belongs to, each of enough numbers if there are so many. */
  private static int[] groups(List<Cell> cells, boolean byLooks) {
    int[] groups = new int[cells.size()];
    int group = 0;
    int count = 0;
    for (int i = 0; i < groups.length; i++) {
      boolean may = !byLooks || i == 0 || !cells.get(i).masked().equals(cells.get(i - 1).masked());
      if (may && count >= LEAST) {
        group++;
        count = 0;
      }
      groups[i] = group;
      count += cells.get(i).count();
    }
    if (group > 0 && count < LEAST) {
      int last = group;
      return Arrays.stream(groups).map(it -> it == last ? last - 1 : it).toArray();
    }
    return groups;
  }

  /** Returns where the group of a cell begins and ends. */
  private static int[] range(int[] groups, int at) {
    int from = at;
    int to = at + 1;
    while (from > 0 && groups[from - 1] == groups[at]) {
      from--;
    }
    while (to < groups.length && groups[to] == groups[at]) {
      to++;
    }
    return new int[] {from, to};
  }

  /** Nothing follows from it; it must only not be one of few that are masked so. */
  private Hidden undated() {
    NormalizedText folded = NormalizedText.of(number);
    int digits = digits(folded);
    String own = verdicts.apply(number);
    List<String> alike =
        endings().stream()
            .filter(
                it ->
                    !seen.has(
                        it.substring(0, folded.length() - digits),
                        it.substring(folded.length() - digits),
                        ""))
            .filter(it -> verdicts.apply(it).equals(own))
            .toList();
    Showing showing =
        alike.size() < LEAST
            ? Showing.beginning(number, 0)
            : isLow(folded)
                ? Showing.beginning(number, folded.length() - digits)
                : Showing.most(number);
    return new Hidden(
        table.id(),
        showing,
        List.of(),
        OptionalInt.empty(),
        alike.size() < LEAST ? Optional.empty() : alike.stream().findFirst());
  }

  /** Returns numbers that are not dated, of the same beginning and with other last digits. */
  private List<String> endings() {
    NormalizedText folded = NormalizedText.of(number);
    int digits = digits(folded);
    String before = folded.toString().substring(0, folded.length() - digits);
    List<String> endings = new ArrayList<>();
    for (int ending = 0; digits > 0 && ending < 1000; ending++) {
      String other =
          before + (isLow(folded) ? Integer.toString(ending) : String.format("%03d", ending));
      if (NumberDating.of(table, other).stream().allMatch(it -> it.days().isEmpty())) {
        endings.add(other);
      }
    }
    return endings;
  }

  /** Returns how many digits at the end may be others. */
  private static int digits(NormalizedText number) {
    int digits = 0;
    while (digits < Math.min(ENDING, number.length())
        && number.isDigit(number.length() - 1 - digits)) {
      digits++;
    }
    return digits;
  }

  /** Says whether it ends in no more digits than are masked. */
  private static boolean isLow(NormalizedText number) {
    int digits = digits(number);
    return digits == number.length() || !number.isDigit(number.length() - 1 - digits);
  }
}
