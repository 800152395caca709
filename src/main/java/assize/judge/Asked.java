package assize.judge;

import assize.evidence.Kleene;
import assize.ruleset.Item;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One item for all vehicles that its conditions answer alike for.
 *
 * @param matters its aspects; none where it does not apply
 * @param sure whether it is known of each which sources speak
 * @param steady whether judging it needs nothing of the build day
 * @param marks what those aspects come to of which sources speak, where all are sure
 * @param only the only one of those
 */
record Asked(
    Item item,
    Kleene applies,
    List<Matter> matters,
    boolean sure,
    boolean steady,
    List<Marks> marks,
    @Nullable Marks only) {

  /**
   * Makes one.
   *
   * @param dated whether a date code is expected of it
   */
  static Asked of(Item item, Kleene applies, List<Matter> matters, boolean dated) {
    List<Matter.Sure> sure =
        matters.stream()
            .filter(Matter.Sure.class::isInstance)
            .map(Matter.Sure.class::cast)
            .toList();
    boolean all = sure.size() == matters.size();
    List<Marks> marks =
        all ? sure.stream().flatMap(one -> one.marks().stream()).toList() : List.of();
    return new Asked(
        item,
        applies,
        List.copyOf(matters),
        all,
        all && !dated,
        marks,
        marks.size() == 1 ? marks.get(0) : null);
  }
}
