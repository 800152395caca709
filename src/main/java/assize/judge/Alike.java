package assize.judge;

import assize.date.DaySpan;
import assize.judge.Stretches.Cut;
import assize.judgment.AspectJudgment;
import assize.judgment.ItemInStretch;
import assize.judgment.ItemJudgment;
import assize.judgment.PositionJudgment;
import java.util.ArrayList;
import java.util.List;

/** Joins neighboring stretches in which every item is judged alike. */
final class Alike {
  private Alike() {}

  static List<Cut> joined(List<Cut> cuts, List<ItemJudgment> items) {
    List<Cut> joined = new ArrayList<>();
    List<Object> before = List.of();
    for (int i = 0; i < cuts.size(); i++) {
      int stretch = i;
      List<Object> now = new ArrayList<>();
      items.stream().map(item -> item.stretches().get(stretch)).forEach(one -> add(now, one));
      Cut cut = cuts.get(i);
      if (!joined.isEmpty() && now.equals(before)) {
        Cut last = joined.remove(joined.size() - 1);
        joined.add(new Cut(DaySpan.of(last.days().first(), cut.days().last()), last.sample()));
      } else {
        joined.add(cut);
      }
      before = now;
    }
    return joined;
  }

  /** Adds everything that a report shows of an item, but for the words of its comparisons. */
  private static void add(List<Object> shown, ItemInStretch one) {
    shown.add(one.applies());
    shown.add(one.verdict());
    for (AspectJudgment aspect : one.aspects()) {
      shown.add(aspect.rule().aspect());
      shown.add(aspect.verdict());
      shown.add(aspect.dispute());
      shown.add(aspect.earned());
      shown.add(aspect.strict());
      for (PositionJudgment position : aspect.positions()) {
        shown.add(position.accepts());
        shown.add(position.sources());
        shown.add(position.echoes());
        shown.add(position.belief());
        shown.add(position.plausibility());
        shown.add(position.judged());
        shown.add(position.comparison().verdict());
        shown.add(position.comparison().credit());
      }
    }
  }
}
