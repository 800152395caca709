package assize.report.view;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.IntFunction;

/** Neighboring stretches of which the report has the same to say become one. */
final class Spans {
  private Spans() {}

  /**
   * Joins them.
   *
   * @param reading the judgment
   * @param each what the report says of one stretch; compared by its value
   * @param dated the same with its days in words, empty where it is said of all build days
   */
  static <T> List<T> join(Reading reading, IntFunction<T> each, BiFunction<T, String, T> dated) {
    List<T> joined = new ArrayList<>();
    int from = 0;
    T said = each.apply(0);
    for (int i = 1; i <= reading.stretches(); i++) {
      if (i < reading.stretches()) {
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
