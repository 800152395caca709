package assize.report.view;

import java.util.List;

/**
 * An area of the book.
 *
 * @param points in words, its limit with them
 */
public record GuideAreaView(
    String anchor, String id, String name, String points, List<GuideItemView> items) {
  public GuideAreaView {
    items = List.copyOf(items);
  }
}
