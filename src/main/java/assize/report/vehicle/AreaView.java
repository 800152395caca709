package assize.report.vehicle;

import assize.report.chart.Chart;
import assize.report.view.ItemView;
import java.util.List;

/**
 * One area and its items.
 *
 * @param mark the class by which choices find it
 * @param count how many items it has, those that do not apply included
 * @param notApplicable items that do not apply to this vehicle
 * @param sums how its items add up
 */
public record AreaView(
    String anchor,
    String name,
    String mark,
    String count,
    String low,
    String likely,
    String high,
    String possible,
    String most,
    Chart bar,
    List<ItemView> items,
    List<NotApplicable> notApplicable,
    List<String> sums) {
  public AreaView {
    items = List.copyOf(items);
    notApplicable = List.copyOf(notApplicable);
    sums = List.copyOf(sums);
  }

  /** An item that does not apply. */
  public record NotApplicable(String anchor, String title) {}
}
