package assize.judge;

import assize.evidence.Ternary;
import assize.ruleset.Item;
import java.util.List;

/**
 * One item for all vehicles that its conditions answer alike for.
 *
 * @param matters its aspects; none where it does not apply
 * @param steady whether judging it needs nothing of the build day
 */
record PreparedItem(Item item, Ternary applies, List<ApplicableClaims> matters, boolean steady) {

  /**
   * Makes one.
   *
   * @param dated whether a date code is expected of it
   */
  static PreparedItem of(
      Item item, Ternary applies, List<ApplicableClaims> matters, boolean dated) {
    boolean sure = matters.stream().allMatch(ApplicableClaims.Known.class::isInstance);
    return new PreparedItem(item, applies, List.copyOf(matters), sure && !dated);
  }
}
