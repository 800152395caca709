package assize.report.view;

import assize.judgment.ItemJudgment;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;

/** Neighboring stretches of which the report has the same to say become one. */
public final class ViewPeriods {
  private ViewPeriods() {}

  /**
   * Joins them.
   *
   * @param reading the judgment
   * @param each what the report says of one stretch; compared by its value
   * @param dated the same with its days in words, empty where it is said of all build days
   */
  static <T> List<T> join(
      ReportContext reading, IntFunction<T> each, BiFunction<T, String, T> dated) {
    return join(reading, i -> false, each, dated);
  }

  /**
   * Joins what is said of one item; where judging left it as it was, it is not looked at again.
   *
   * @param one the item
   */
  static <T> List<T> join(
      ReportContext reading,
      ItemJudgment one,
      IntFunction<T> each,
      BiFunction<T, String, T> dated) {
    return join(reading, i -> isUnchanged(one, i), each, dated);
  }

  /** Says whether judging left an item in a stretch just as it was in the one before. */
  public static boolean isUnchanged(ItemJudgment one, int stretch) {
    return one.stretches().get(stretch) == one.stretches().get(stretch - 1);
  }

  private static <T> List<T> join(
      ReportContext reading,
      IntPredicate unchanged,
      IntFunction<T> each,
      BiFunction<T, String, T> dated) {
    List<T> joined = new ArrayList<>();
    int from = 0;
    T said = each.apply(0);
    for (int i = 1; i <= reading.stretches(); i++) {
      if (i < reading.stretches()) {
        if (unchanged.test(i)) {
          continue;
        }
        T next = each.apply(i);
        if (next.equals(said)) {
          continue;
        }
        joined.add(dated.apply(said, reading.days(from, i - 1)));
        said = next;
        from = i;
      } else {
        joined.add(dated.apply(said, reading.days(from, i - 1)));
      }
    }
    return joined;
  }
}
