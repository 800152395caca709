package assize.report.view;

import assize.aspect.Verdict;
import assize.evidence.DisputeState;
import assize.judgment.ItemJudgment;
import assize.judgment.Judgment;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** The choices by which every item can be narrowed, each with its count. */
public final class FilterViewFactory {
  /** The class of items that carry a hazard. */
  private static final String HAZARD = "with-hazard";

  private final Judgment judgment;

  public FilterViewFactory(Judgment judgment) {
    this.judgment = judgment;
  }

  public FilterView view() {
    return new FilterView(
        Integer.toString(judgment.items().size()),
        Arrays.stream(Verdict.values()).map(this::choice).toList(),
        IntStream.range(0, judgment.areas().size()).mapToObj(this::area).toList(),
        Arrays.stream(DisputeState.values()).map(this::choice).toList(),
        List.of(
            choice(
                HAZARD,
                "with a hazard",
                one -> !ItemViewFactory.isNotApplicable(one) && !one.item().hazards().isEmpty())));
  }

  private FilterView.Choice choice(Verdict verdict) {
    VerdictView view = VerdictView.of(verdict);
    long count = count(one -> one.verdict() == verdict);
    return new FilterView.Choice(
        "v-" + view.shape(), view.word(), Optional.of(view), Long.toString(count), count > 0);
  }

  private FilterView.Choice area(int index) {
    var area = judgment.areas().get(index).area();
    return choice(mark(index), area.name(), one -> one.item().area().equals(area.id()));
  }

  private FilterView.Choice choice(DisputeState state) {
    return choice(
        mark(state),
        words(state),
        one -> !ItemViewFactory.isNotApplicable(one) && one.dispute() == state);
  }

  private FilterView.Choice choice(String mark, String words, Predicate<ItemJudgment> has) {
    long count = count(has);
    return new FilterView.Choice(mark, words, Optional.empty(), Long.toString(count), count > 0);
  }

  private long count(Predicate<ItemJudgment> has) {
    return judgment.items().stream().filter(has).count();
  }

  private static String words(DisputeState state) {
    return switch (state) {
      case AGREED -> "agreed";
      case SETTLED -> "settled against dissent";
      case DISPUTED -> "disputed";
      case UNSOURCED -> "no source";
    };
  }

  /** Returns the class of an area's items. */
  public static String mark(int area) {
    return "a-" + (area + 1);
  }

  /** Returns the class of items whose sources stand so; items that do not apply have none. */
  static String mark(DisputeState state) {
    return "s-" + state.word();
  }

  /** Returns all classes of an item that the choices go by, but that of its area. */
  static String marks(ItemJudgment one) {
    return "v-"
        + VerdictView.of(one.verdict()).shape()
        + " "
        + mark(one.dispute())
        + (one.item().hazards().isEmpty() ? "" : " " + HAZARD);
  }
}
