package assize.report.view;

import assize.report.drawing.Drawing;
import java.util.List;

/**
 * One area and its items.
 *
 * @param apart items that do not apply to this vehicle
 * @param sums how its items add up
 */
public record AreaView(
    String anchor,
    String name,
    String low,
    String likely,
    String high,
    String possible,
    String most,
    Drawing bar,
    List<ItemView> items,
    List<Apart> apart,
    List<String> sums) {
  public AreaView {
    items = List.copyOf(items);
    apart = List.copyOf(apart);
    sums = List.copyOf(sums);
  }

  /** An item that does not apply. */
  public record Apart(String anchor, String title) {}
}
