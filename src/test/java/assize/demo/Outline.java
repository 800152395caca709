package assize.demo;

import java.util.ArrayList;
import java.util.List;

/**
 * A shape as straight pieces: curves are cut small when they are made, with plain arithmetic only,
 * so that every machine gets the same points.
 *
 * @param runs each a row of x, y, x, y in picture pixels
 */
record Outline(List<double[]> runs) {
  private static final int CUTS = 16;

  Outline {
    runs = List.copyOf(runs);
  }

  /** Reads {@code M L H V Q C Z} with absolute numbers, as drawings on the web write them. */
  static Outline path(String text) {
    List<double[]> runs = new ArrayList<>();
    List<Double> run = new ArrayList<>();
    String[] parts = text.trim().replaceAll("([A-Z])", " $1 ").trim().split("[ ,]+");
    char command = 'M';
    int i = 0;
    while (i < parts.length) {
      if (Character.isLetter(parts[i].charAt(0))) {
        command = parts[i++].charAt(0);
      }
      int n = run.size();
      double x = n == 0 ? 0 : run.get(n - 2);
      double y = n == 0 ? 0 : run.get(n - 1);
      switch (command) {
        case 'M' -> {
          keep(runs, run);
          add(run, number(parts, i), number(parts, i + 1));
          i += 2;
          command = 'L';
        }
        case 'L' -> {
          add(run, number(parts, i), number(parts, i + 1));
          i += 2;
        }
        case 'H' -> add(run, number(parts, i++), y);
        case 'V' -> add(run, x, number(parts, i++));
        case 'Q' -> {
          double[] q = numbers(parts, i, 4);
          for (int k = 1; k <= CUTS; k++) {
            double t = (double) k / CUTS;
            double u = 1 - t;
            add(
                run,
                u * u * x + 2 * u * t * q[0] + t * t * q[2],
                u * u * y + 2 * u * t * q[1] + t * t * q[3]);
          }
          i += 4;
        }
        case 'C' -> {
          double[] c = numbers(parts, i, 6);
          for (int k = 1; k <= CUTS; k++) {
            double t = (double) k / CUTS;
            double u = 1 - t;
            double a = u * u * u;
            double b = 3 * u * u * t;
            double d = 3 * u * t * t;
            double e = t * t * t;
            add(
                run,
                a * x + b * c[0] + d * c[2] + e * c[4],
                a * y + b * c[1] + d * c[3] + e * c[5]);
          }
          i += 6;
        }
        case 'Z' -> add(run, run.get(0), run.get(1));
        default -> throw new IllegalArgumentException("no such stroke: " + command);
      }
    }
    keep(runs, run);
    return new Outline(runs);
  }

  static Outline box(double x, double y, double width, double height) {
    return new Outline(
        List.of(new double[] {x, y, x + width, y, x + width, y + height, x, y + height, x, y}));
  }

  /** A box whose corners are rounded by {@code r}. */
  static Outline soft(double x, double y, double width, double height, double r) {
    double right = x + width;
    double bottom = y + height;
    return path(
        ("M" + (x + r) + "," + y + " L" + (right - r) + "," + y)
            + (" Q" + right + "," + y + " " + right + "," + (y + r))
            + (" L" + right + "," + (bottom - r))
            + (" Q" + right + "," + bottom + " " + (right - r) + "," + bottom)
            + (" L" + (x + r) + "," + bottom)
            + (" Q" + x + "," + bottom + " " + x + "," + (bottom - r))
            + (" L" + x + "," + (y + r) + " Q" + x + "," + y + " " + (x + r) + "," + y));
  }

  static Outline circle(double cx, double cy, double r) {
    return ellipse(cx, cy, r, r);
  }

  static Outline ellipse(double cx, double cy, double rx, double ry) {
    return arc(cx, cy, rx, ry, 0, 360);
  }

  /** A piece of an ellipse, degrees clockwise from the right, as one sees it on the picture. */
  static Outline arc(double cx, double cy, double rx, double ry, double from, double to) {
    int steps = (int) Math.max(8, Math.abs(to - from) / 5);
    double[] run = new double[2 * steps + 2];
    for (int k = 0; k <= steps; k++) {
      double a = StrictMath.toRadians(from + (to - from) * k / steps);
      run[2 * k] = cx + rx * StrictMath.cos(a);
      run[2 * k + 1] = cy + ry * StrictMath.sin(a);
    }
    return new Outline(List.of(run));
  }

  static Outline line(double... xy) {
    return new Outline(List.of(xy.clone()));
  }

  Outline and(Outline other) {
    List<double[]> all = new ArrayList<>(runs);
    all.addAll(other.runs);
    return new Outline(all);
  }

  Outline move(double dx, double dy) {
    return change(1, 0, 0, 1, dx, dy);
  }

  Outline turn(double degrees, double cx, double cy) {
    double c = StrictMath.cos(StrictMath.toRadians(degrees));
    double s = StrictMath.sin(StrictMath.toRadians(degrees));
    return change(c, -s, s, c, cx - c * cx + s * cy, cy - s * cx - c * cy);
  }

  Outline scale(double sx, double sy, double cx, double cy) {
    return change(sx, 0, 0, sy, cx - sx * cx, cy - sy * cy);
  }

  private Outline change(double a, double b, double c, double d, double e, double f) {
    List<double[]> changed = new ArrayList<>();
    for (double[] run : runs) {
      double[] moved = new double[run.length];
      for (int i = 0; i < run.length; i += 2) {
        moved[i] = a * run[i] + b * run[i + 1] + e;
        moved[i + 1] = c * run[i] + d * run[i + 1] + f;
      }
      changed.add(moved);
    }
    return new Outline(changed);
  }

  private static void keep(List<double[]> runs, List<Double> run) {
    if (!run.isEmpty()) {
      runs.add(run.stream().mapToDouble(Double::doubleValue).toArray());
      run.clear();
    }
  }

  private static void add(List<Double> run, double x, double y) {
    run.add(x);
    run.add(y);
  }

  private static double number(String[] parts, int at) {
    return Double.parseDouble(parts[at]);
  }

  private static double[] numbers(String[] parts, int at, int count) {
    double[] found = new double[count];
    for (int k = 0; k < count; k++) {
      found[k] = number(parts, at + k);
    }
    return found;
  }
}
