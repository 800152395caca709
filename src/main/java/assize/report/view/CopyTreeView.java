package assize.report.view;

import java.util.List;

/**
 * A source, and below it the sources that copy it.
 *
 * @param says what it says of the matter
 * @param witness whether it counts
 * @param counts why it counts or adds nothing
 */
public record CopyTreeView(
    CiteView source, String says, boolean witness, String counts, List<CopyTreeView> copies) {
  public CopyTreeView {
    copies = List.copyOf(copies);
  }
}
