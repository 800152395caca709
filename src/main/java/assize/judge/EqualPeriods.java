package assize.judge;

import assize.judge.PeriodSplitter.Cut;
import assize.judgment.AspectJudgment;
import assize.judgment.ItemInPeriod;
import assize.judgment.PositionJudgment;
import java.util.ArrayList;
import java.util.List;

/**
 * Neighboring stretches in which every item is judged alike, joined.
 *
 * @param items what each item is in them, in the rule set's order
 */
record EqualPeriods(Cut cut, List<ItemInPeriod> items) {

  /**
   * Joins what is alike.
   *
   * @param items for each cut, what each item is in it
   */
  static List<EqualPeriods> joined(List<Cut> cuts, List<List<ItemInPeriod>> items) {
    List<EqualPeriods> joined = new ArrayList<>();
    for (int i = 0; i < cuts.size(); i++) {
      Cut cut = cuts.get(i);
      if (!joined.isEmpty()
          && cuts.get(i - 1).isBefore(cut)
          && alike(items.get(i - 1), items.get(i))) {
        EqualPeriods last = joined.remove(joined.size() - 1);
        joined.add(new EqualPeriods(last.cut().until(cut.days().last()), last.items()));
      } else {
        joined.add(new EqualPeriods(cut, items.get(i)));
      }
    }
    return joined;
  }

  private static boolean alike(List<ItemInPeriod> before, List<ItemInPeriod> now) {
    for (int i = 0; i < now.size(); i++) {
      if (before.get(i) != now.get(i) && !shown(before.get(i)).equals(shown(now.get(i)))) {
        return false;
      }
    }
    return true;
  }

  /** Returns everything that a report shows of an item, but for the words of its comparisons. */
  private static List<Object> shown(ItemInPeriod one) {
    List<Object> shown = new ArrayList<>();
    shown.add(one.applies());
    shown.add(one.verdict());
    for (AspectJudgment aspect : one.aspects()) {
      shown.add(aspect.rule().aspect());
      shown.add(aspect.verdict());
      shown.add(aspect.dispute());
      shown.add(aspect.earned());
      shown.add(aspect.withoutAllowances());
      for (PositionJudgment position : aspect.positions()) {
        shown.add(position.accepts());
        shown.add(position.sources());
        shown.add(position.repeatingSources());
        shown.add(position.belief());
        shown.add(position.plausibility());
        shown.add(position.scored());
        shown.add(position.comparison().verdict());
        shown.add(position.comparison().credit());
      }
    }
    return shown;
  }
}
