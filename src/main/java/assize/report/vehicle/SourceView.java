package assize.report.vehicle;

import assize.report.view.LinkView;
import java.util.List;

/**
 * A source; an empty text stands for what is not known.
 *
 * @param weight what its grade weighs, 0 to 1
 * @param cited how often its claims bear on this vehicle, in words
 */
public record SourceView(
    String anchor,
    String title,
    String kind,
    String grade,
    String weight,
    String date,
    String heldBy,
    List<LinkView> copies,
    String cited,
    String notes) {
  public SourceView {
    copies = List.copyOf(copies);
  }
}
