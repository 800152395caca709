package assize.report.view;

import java.util.List;

/**
 * What has not been shown.
 *
 * @param sentence how much, and what it is worth
 */
public record NotAssessedView(String sentence, List<InArea> areas) {
  public NotAssessedView {
    areas = List.copyOf(areas);
  }

  /** What one area has of it. */
  public record InArea(String area, String points, List<NotAssessedLine> lines) {
    public InArea {
      lines = List.copyOf(lines);
    }
  }

  /** One item, the aspects of it that were not shown, and what they are worth. */
  public record NotAssessedLine(String anchor, String title, String aspects, String points) {}
}
