package assize.demo;

import java.util.ArrayList;
import java.util.List;

/** The slight unsteadiness of a line that a hand draws; the same at each drawing. */
final class HandDrawnLine {
  private static final double STEP = 7;
  private static final double SWAY = 1.4;

  private HandDrawnLine() {}

  static Outline unsteady(Outline shape) {
    List<double[]> runs = new ArrayList<>();
    for (double[] run : shape.runs()) {
      List<Double> points = new ArrayList<>();
      for (int i = 0; i + 3 < run.length; i += 2) {
        double dx = run[i + 2] - run[i];
        double dy = run[i + 3] - run[i + 1];
        int steps = (int) Math.max(1, Math.sqrt(dx * dx + dy * dy) / STEP);
        for (int k = i == 0 ? 0 : 1; k <= steps; k++) {
          double x = run[i] + dx * k / steps;
          double y = run[i + 1] + dy * k / steps;
          points.add(x + SWAY * (Shading.noise(x / 47, y / 43) - 0.5));
          points.add(y + SWAY * (Shading.noise(x / 43 + 50, y / 47) - 0.5));
        }
      }
      runs.add(points.stream().mapToDouble(Double::doubleValue).toArray());
    }
    return new Outline(runs);
  }
}
