package assize.share;

import assize.judge.Judge;
import assize.judge.NumberDating;
import assize.judge.NumberRun;
import assize.ruleset.NumberTable;
import assize.ruleset.NumberTable.Series;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;

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

  private final Judge judge;
  private final NumberTable table;
  private final Seen seen;
  private final Optional<Predicate<String>> alike;

  /**
   * Begins.
   *
   * @param seen numbers that the copy shows in the open
   * @param alike whether a number would be judged as the vehicle's own where it is stamped; empty
   *     where it is stamped nowhere
   */
  Lookalikes(Judge judge, NumberTable table, Seen seen, Optional<Predicate<String>> alike) {
    this.judge = judge;
    this.table = table;
    this.seen = seen;
    this.alike = alike;
  }

  /** Numbers in a row that are masked alike and of which the standard says the same. */
  private record Cell(String masked, NumberRun run, String first, int count) {}

  Hidden of(String number) {
    return table.series().stream()
        .filter(series -> isDated(series, number))
        .findFirst()
        .map(series -> dated(series, number))
        .orElseGet(() -> undated(number));
  }

  private boolean isDated(Series series, String number) {
    return series.numberOf(number).isPresent()
        && NumberDating.of(table, number).stream()
            .anyMatch(it -> it.series().equals(series) && it.days().isPresent());
  }

  private Hidden dated(Series series, String number) {
    long own = series.numberOf(number).getAsLong();
    List<Cell> cells = cells(series, own);
    int at = 0;
    while (own > cells.get(at).run().last()) {
      at++;
    }
    int[] looks = groups(cells, true);
    int[] group = range(looks, at);
    List<Cell> same = cells.subList(group[0], group[1]);
    boolean plain = same.stream().map(Cell::masked).distinct().count() == 1;
    int count = count(same);
    if (count < LEAST) {
      return new Hidden(
          table.id(),
          showing(number, series, plain),
          List.of(),
          OptionalInt.of(count),
          number);
    }
    int[] block = range(groups(same, false), at - group[0]);
    List<Cell> told = same.subList(block[0], block[1]);
    return new Hidden(
        table.id(),
        showing(number, series, plain),
        told.stream().filter(it -> it.count() > 0).map(Cell::first).toList(),
        OptionalInt.of(count(told)),
        told.stream().filter(it -> it.count() > 0).findFirst().orElseThrow().first());
  }

  private static Showing showing(String number, Series series, boolean plain) {
    return plain
        ? Showing.most(number)
        : Showing.beginning(number, Folded.of(series.prefix()).length());
  }

  private static int count(List<Cell> cells) {
    return cells.stream().mapToInt(Cell::count).sum();
  }

  /** Returns the numbers around one, parted where they are masked differently or dated so. */
  private List<Cell> cells(Series series, long own) {
    long from = own / BLOCK * BLOCK;
    // Three letters and digits are masked, so where a digit is among them nine of ten look the same.
    int step = Folded.of(series.suffix()).length() < 3 ? 10 : 1;
    List<Cell> cells = new ArrayList<>();
    for (NumberRun run : judge.numbersAlike(table, series, from, from + BLOCK - 1)) {
      long start = run.first();
      String before = masked(series, start);
      for (long number = start + 1; number <= run.last(); number++) {
        String masked = number % step == 0 ? masked(series, number) : before;
        if (!masked.equals(before)) {
          cells.add(cell(series, new NumberRun(start, number - 1), before));
          start = number;
          before = masked;
        }
      }
      cells.add(cell(series, new NumberRun(start, run.last()), before));
    }
    return cells;
  }

  private Cell cell(Series series, NumberRun run, String masked) {
    String before = Folded.of(series.prefix()).toString();
    String after = Folded.of(series.suffix()).toString();
    Set<Long> open = seen.among(before, run.first(), run.last(), after);
    if (alike.isEmpty()) {
      int count = (int) (run.last() - run.first() + 1) - open.size();
      long first = run.first();
      while (open.contains(first)) {
        first++;
      }
      return new Cell(masked, run, count == 0 ? "" : text(series, first), count);
    }
    String first = "";
    int count = 0;
    for (long number = run.first(); number <= run.last(); number++) {
      String text = text(series, number);
      if (!open.contains(number) && alike.get().test(text)) {
        first = count == 0 ? text : first;
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
  private Hidden undated(String number) {
    Showing most = Showing.most(number);
    boolean many = endings(number) >= LEAST;
    return new Hidden(
        table.id(),
        many ? most : Showing.beginning(number, 0),
        List.of(),
        OptionalInt.empty(),
        number);
  }

  /** Counts undated numbers that are masked alike, as far as it matters. */
  private int endings(String number) {
    Folded folded = Folded.of(number);
    int digits = 0;
    while (digits < 3 && digits < folded.length() && folded.isDigit(folded.length() - 1 - digits)) {
      digits++;
    }
    String letters = folded.toString();
    String before = letters.substring(0, letters.length() - digits);
    if (digits == 0) {
      return 0;
    }
    int all = (int) Math.pow(10, digits);
    int count = 0;
    for (int ending = 0; ending < all && count < LEAST; ending++) {
      String other = before + String.format("%0" + digits + "d", ending);
      boolean dated = NumberDating.of(table, other).stream().anyMatch(it -> it.days().isPresent());
      if (!dated && !seen.has(before, other.substring(before.length()), "")) {
        count++;
      }
    }
    return count;
  }
}
