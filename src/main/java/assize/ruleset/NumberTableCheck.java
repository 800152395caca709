package assize.ruleset;

import assize.diagnostic.Code;
import assize.text.Span;
import assize.yaml.Problems;
import java.util.List;

/** Finds number tables whose numbers do not rise, or whose dates go back. */
final class NumberTableCheck implements RuleSetCheck {
  @Override
  public void check(RuleSet rules, Places places, Problems problems) {
    for (NumberTable table : rules.numbers().values()) {
      for (int i = 0; i < table.series().size(); i++) {
        check(table.series().get(i), new Place(places, table.id(), Integer.toString(i)), problems);
      }
    }
  }

  /** One series of one table. */
  private record Place(Places places, String table, String series) {
    Span of(String... more) {
      return more.length == 1
          ? places.of("numbers", table, series, more[0])
          : places.of("numbers", table, series, more[0], more[1]);
    }
  }

  private static void check(NumberTable.Series series, Place place, Problems problems) {
    List<NumberTable.Entry> first = series.first();
    for (int i = 1; i < first.size(); i++) {
      Span at = place.of("from", Long.toString(first.get(i).number()));
      rise(first.get(i - 1), first.get(i), 1, at, problems);
    }
    if (series.last().isPresent() && !first.isEmpty()) {
      rise(first.get(first.size() - 1), series.last().get(), 0, place.of("last"), problems);
    }
  }

  private static void rise(
      NumberTable.Entry before, NumberTable.Entry after, long least, Span at, Problems problems) {
    if (after.number() - before.number() < least) {
      problems.add(
          Code.NUMBERS_NOT_RISING,
          at,
          after.number() + " stands behind " + before.number() + "; the numbers of a series rise",
          "sort them");
    } else if (after.built().first().isBefore(before.built().first())) {
      problems.add(
          Code.DATES_GOING_BACK,
          at,
          after.number() + " is dated earlier than " + before.number() + " before it",
          "look the two dates up again");
    }
  }
}
