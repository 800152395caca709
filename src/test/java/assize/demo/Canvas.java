package assize.demo;

import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.BitSet;

/**
 * A sheet that shapes are filled and drawn on, three times as fine as the picture that it becomes.
 *
 * <p>It fills shapes by itself, so that the picture does not hang on a machine's fonts or graphics.
 */
final class Canvas {
  static final int WIDTH = 720;
  static final int HEIGHT = 480;
  static final int INK = 0x3B3732;
  static final int PAPER = 0xF4EEE1;

  private static final int FINE = 3;
  private static final int ROW = WIDTH * FINE;

  private final int[] pixels = new int[ROW * HEIGHT * FINE];
  private BitSet stencil = new BitSet();
  private boolean clipped;

  Canvas() {
    Arrays.fill(pixels, PAPER);
  }

  /** Fills a shape; where its runs overlap, the winding decides. */
  Canvas fill(Outline shape, Shading tone) {
    scan(
        shape,
        (row, from, to) -> {
          for (int at = from; at < to; at++) {
            if (!clipped || stencil.get(row * ROW + at)) {
              int color = tone.at((at + 0.5) / FINE, (row + 0.5) / FINE);
              pixels[row * ROW + at] = over(color, pixels[row * ROW + at]);
            }
          }
        });
    return this;
  }

  Canvas fill(Outline shape, int rgb) {
    return fill(shape, Shading.flat(rgb));
  }

  /** Draws the edge of a shape with a round pen. */
  Canvas stroke(Outline shape, double width, int rgb) {
    double half = width / 2;
    Shading tone = Shading.flat(rgb);
    for (double[] run : shape.runs()) {
      for (int i = 0; i < run.length; i += 2) {
        fill(Outline.circle(run[i], run[i + 1], half), tone);
        if (i + 3 < run.length) {
          double dx = run[i + 2] - run[i];
          double dy = run[i + 3] - run[i + 1];
          double length = Math.sqrt(dx * dx + dy * dy);
          if (length > 0) {
            double nx = -dy / length * half;
            double ny = dx / length * half;
            fill(
                Outline.line(
                    run[i] + nx,
                    run[i + 1] + ny,
                    run[i + 2] + nx,
                    run[i + 3] + ny,
                    run[i + 2] - nx,
                    run[i + 3] - ny,
                    run[i] - nx,
                    run[i + 1] - ny),
                tone);
          }
        }
      }
    }
    return this;
  }

  /** Draws the edge of a shape as a hand does, in ink. */
  Canvas pen(Outline shape, double width) {
    return stroke(HandDrawnLine.unsteady(shape), width, INK);
  }

  /** Fills a shape and draws its edge in ink. */
  Canvas part(Outline shape, Shading tone) {
    return fill(shape, tone).pen(shape, 1.6);
  }

  Canvas part(Outline shape, int rgb) {
    return part(shape, Shading.flat(rgb));
  }

  /** What {@code drawing} draws shows only inside the shape. */
  Canvas inside(Outline shape, Runnable drawing) {
    BitSet before = stencil;
    boolean was = clipped;
    BitSet now = new BitSet(pixels.length);
    scan(shape, (row, from, to) -> now.set(row * ROW + from, row * ROW + to));
    if (was) {
      now.and(before);
    }
    stencil = now;
    clipped = true;
    drawing.run();
    stencil = before;
    clipped = was;
    return this;
  }

  /** Writes capitals and figures with their left top at a place, {@code size} pixels high. */
  Canvas write(String text, double x, double y, double size, double width, int rgb) {
    return stroke(StrokeFont.of(text, x, y, size), width, rgb);
  }

  /** A remark in small letters, and a thin line from it to what it speaks of. */
  Canvas remark(
      String text, double x, double y, double fromX, double fromY, double toX, double toY) {
    write(text, x, y, 10, 1.1, 0x5A5348);
    stroke(Outline.line(fromX, fromY, toX, toY), 0.8, 0x5A5348);
    return fill(Outline.circle(toX, toY, 2), 0x5A5348);
  }

  /** Returns the picture: each of its pixels is the mean of nine. */
  BufferedImage picture() {
    Outline sheet = Outline.box(0, 0, WIDTH, HEIGHT);
    Outline window = Outline.path("M20,20 V444 H700 V20 Z");
    fill(sheet.and(window), PAPER);
    stroke(Outline.box(14, 14, WIDTH - 28, HEIGHT - 28), 0.8, 0xC9BFAB);
    stroke(Outline.box(20, 20, WIDTH - 40, 424), 0.8, 0xC9BFAB);
    String line = "DRAWN FOR THE DEMONSTRATION";
    write(line, (WIDTH - StrokeFont.width(line, 8)) / 2, 451, 8, 1, 0x7A7163);
    BufferedImage picture = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        int rgb = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
          int sum = 0;
          for (int k = 0; k < FINE * FINE; k++) {
            sum += pixels[(y * FINE + k / FINE) * ROW + x * FINE + k % FINE] >> shift & 0xFF;
          }
          // Steps of four keep the file small; the eye does not miss them.
          rgb |= (sum / (FINE * FINE) & 0xFC) << shift;
        }
        picture.setRGB(x, y, rgb);
      }
    }
    return picture;
  }

  private interface Span {
    void fill(int row, int from, int to);
  }

  private static void scan(Outline shape, Span span) {
    double top = Double.MAX_VALUE;
    double bottom = -Double.MAX_VALUE;
    int corners = 0;
    for (double[] run : shape.runs()) {
      for (int i = 0; i < run.length; i += 2) {
        top = Math.min(top, run[i + 1]);
        bottom = Math.max(bottom, run[i + 1]);
      }
      corners += run.length / 2;
    }
    int first = Math.max(0, (int) Math.floor(top * FINE));
    int last = Math.min(HEIGHT * FINE - 1, (int) Math.ceil(bottom * FINE));
    double[][] crossings = new double[corners][];
    for (int row = first; row <= last; row++) {
      double y = (row + 0.5) / FINE;
      int found = 0;
      for (double[] run : shape.runs()) {
        for (int i = 0; i < run.length; i += 2) {
          int next = i + 2 < run.length ? i + 2 : 0;
          double y0 = run[i + 1];
          double y1 = run[next + 1];
          if (y0 <= y != y1 <= y) {
            double x = run[i] + (y - y0) / (y1 - y0) * (run[next] - run[i]);
            crossings[found++] = new double[] {x * FINE, y1 > y0 ? 1 : -1};
          }
        }
      }
      Arrays.sort(crossings, 0, found, (a, b) -> Double.compare(a[0], b[0]));
      int winding = 0;
      for (int k = 0; k + 1 < found; k++) {
        winding += (int) crossings[k][1];
        if (winding != 0) {
          int from = Math.max(0, (int) Math.ceil(crossings[k][0] - 0.5));
          int to = Math.min(ROW, (int) Math.ceil(crossings[k + 1][0] - 0.5));
          if (from < to) {
            span.fill(row, from, to);
          }
        }
      }
    }
  }

  private static int over(int color, int below) {
    int share = color >>> 24;
    if (share == 255) {
      return color & 0xFFFFFF;
    }
    int mixed = 0;
    for (int shift = 16; shift >= 0; shift -= 8) {
      int a = color >> shift & 0xFF;
      int b = below >> shift & 0xFF;
      mixed |= (a * share + b * (255 - share) + 127) / 255 << shift;
    }
    return mixed;
  }
}
