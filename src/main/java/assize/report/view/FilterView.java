package assize.report.view;

import java.util.List;
import java.util.Optional;

/**
 * What every item can be narrowed to.
 *
 * @param total how many items there are
 * @param hazards the one choice of items that carry a hazard
 */
public record FilterView(
    String total,
    List<Choice> verdicts,
    List<Choice> areas,
    List<Choice> disputes,
    List<Choice> hazards) {
  public FilterView {
    verdicts = List.copyOf(verdicts);
    areas = List.copyOf(areas);
    disputes = List.copyOf(disputes);
    hazards = List.copyOf(hazards);
  }

  /**
   * One choice, and how many items it has.
   *
   * @param mark the class of those items: letters, digits and dashes
   * @param verdict its sign, where the choice is a verdict
   * @param any whether it has any item
   */
  public record Choice(
      String mark, String words, Optional<VerdictView> verdict, String count, boolean any) {}
}
