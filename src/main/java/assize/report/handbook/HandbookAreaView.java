package assize.report.handbook;

import java.util.List;

/**
 * An area of the handbook.
 *
 * @param points in words, its limit with them
 */
public record HandbookAreaView(
    String anchor, String id, String name, String points, List<HandbookItemView> items) {
  public HandbookAreaView {
    items = List.copyOf(items);
  }
}
