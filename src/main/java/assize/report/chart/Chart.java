package assize.report.chart;

import java.util.List;

/**
 * A drawing: its words for those who cannot see it, and its marks in the order of painting.
 *
 * @param id unique on the page; empty for a bar that stands beside its own numbers
 * @param title what it shows, in a few words
 * @param description the same as it would be read aloud
 * @param width in drawing units; marks lie between 0 and this
 * @param height in drawing units
 * @param stretched whether it may be stretched sideways: it then has no labels
 */
public record Chart(
    String id,
    String title,
    String description,
    int width,
    int height,
    boolean stretched,
    List<Box> boxes,
    List<Path> paths,
    List<Label> labels) {
  public Chart {
    boxes = List.copyOf(boxes);
    paths = List.copyOf(paths);
    labels = List.copyOf(labels);
  }

  /**
   * A filled rectangle.
   *
   * @param look its class in the style sheet
   */
  public record Box(String x, String y, String width, String height, String look) {}

  /**
   * A line or outline, in the path syntax of SVG 1.1.
   *
   * @param look its class in the style sheet
   */
  public record Path(String d, String look) {}

  /**
   * A word or number.
   *
   * @param anchor start, middle or end
   * @param look its class in the style sheet
   */
  public record Label(String x, String y, String anchor, String look, String text) {}
}
