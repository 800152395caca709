package assize.report.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** A drawing in the making. */
final class ChartBuilder {
  private final int width;
  private final int height;
  private final List<Chart.Box> boxes = new ArrayList<>();
  private final List<Chart.Path> paths = new ArrayList<>();
  private final List<Chart.Label> labels = new ArrayList<>();

  ChartBuilder(int width, int height) {
    this.width = width;
    this.height = height;
  }

  /** Adds a filled rectangle between two corners; never thinner than {@code least}. */
  void box(double left, double top, double right, double bottom, double least, String look) {
    double wide = Math.max(least, right - left);
    double from = Math.max(0, Math.min(left, width - wide));
    boxes.add(new Chart.Box(at(from), at(top), at(wide), at(bottom - top), look));
  }

  void line(double x1, double y1, double x2, double y2, String look) {
    path("M" + at(x1) + " " + at(y1) + "L" + at(x2) + " " + at(y2), look);
  }

  void path(String d, String look) {
    paths.add(new Chart.Path(d, look));
  }

  void label(double x, double y, String anchor, String look, String text) {
    labels.add(new Chart.Label(at(x), at(y), anchor, look, text));
  }

  Chart done(String id, String title, String description) {
    return new Chart(id, title, description, width, height, labels.isEmpty(), boxes, paths, labels);
  }

  /** Returns a coordinate to a tenth of a unit. */
  static String at(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_EVEN);
    return (rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros()).toPlainString();
  }
}
