package assize.judge;

import assize.evidence.Kleene;
import assize.ruleset.Item;
import java.util.List;

/**
 * One item for all vehicles that its conditions answer alike for.
 *
 * @param matters its aspects; none where it does not apply
 * @param steady whether judging it needs nothing of the build day
 */
record Asked(Item item, Kleene applies, List<Matter> matters, boolean steady) {

  /**
   * Makes one.
   *
   * @param dated whether a date code is expected of it
   */
  static Asked of(Item item, Kleene applies, List<Matter> matters, boolean dated) {
    boolean sure = matters.stream().allMatch(Matter.Sure.class::isInstance);
    return new Asked(item, applies, List.copyOf(matters), sure && !dated);
  }
}
