package assize.demo;

/** The color of each place of a filled shape. */
interface Shading {
  int CLEAR = 0;

  /** Returns alpha, red, green and blue, eight bits each, at a place in picture pixels. */
  int at(double x, double y);

  static Shading flat(int rgb) {
    return (x, y) -> 0xFF000000 | rgb;
  }

  /** One color, {@code share} of 255 strong. */
  static Shading veil(int rgb, int share) {
    return (x, y) -> share << 24 | rgb;
  }

  /** From one color to the other along the line between two places. */
  static Shading blend(double x0, double y0, int from, double x1, double y1, int to) {
    double dx = x1 - x0;
    double dy = y1 - y0;
    double square = dx * dx + dy * dy;
    return (x, y) -> mix(from, to, ((x - x0) * dx + (y - y0) * dy) / square);
  }

  /** From the middle of a circle to its edge. */
  static Shading round(double cx, double cy, double r, int middle, int edge) {
    return (x, y) -> mix(middle, edge, Math.sqrt((x - cx) * (x - cx) + (y - cy) * (y - cy)) / r);
  }

  /** Slanting pen strokes on nothing. */
  static Shading hatch(double spacing, double width, double slope, int rgb) {
    return (x, y) -> {
      double d = x + slope * y + 1.5 * noise(x / 23, y / 23);
      double rest = d / spacing - Math.floor(d / spacing);
      return rest * spacing < width ? 0xFF000000 | rgb : CLEAR;
    };
  }

  /** Patches on nothing: the higher {@code over} (0 to 1), the fewer. */
  static Shading patches(double size, double over, int rgb) {
    return patches(size, size, over, rgb);
  }

  /** Patches that lie along the grain of a board. */
  static Shading patches(double width, double height, double over, int rgb) {
    return (x, y) -> {
      double u = x / width;
      double v = y / height;
      double n = 0.65 * noise(u, v) + 0.35 * noise(u * 2.7, v * 2.7);
      return n > over ? 0xFF000000 | rgb : CLEAR;
    };
  }

  /** A smooth field between 0 and 1 that repeats from run to run. */
  static double noise(double x, double y) {
    int ix = (int) Math.floor(x);
    int iy = (int) Math.floor(y);
    double fx = x - ix;
    double fy = y - iy;
    double ux = fx * fx * (3 - 2 * fx);
    double uy = fy * fy * (3 - 2 * fy);
    double top = grain(ix, iy) * (1 - ux) + grain(ix + 1, iy) * ux;
    double bottom = grain(ix, iy + 1) * (1 - ux) + grain(ix + 1, iy + 1) * ux;
    return top * (1 - uy) + bottom * uy;
  }

  private static double grain(int x, int y) {
    int h = x * 0x27D4EB2D ^ y * 0x165667B1;
    h = (h ^ h >>> 15) * 0x2C1B3C6D;
    h = (h ^ h >>> 12) * 0x297A2D39;
    return ((h ^ h >>> 15) & 0xFFFF) / 65535.0;
  }

  private static int mix(int from, int to, double share) {
    double t = Math.max(0, Math.min(1, share));
    int mixed = 0xFF;
    for (int shift = 16; shift >= 0; shift -= 8) {
      int a = from >> shift & 0xFF;
      int b = to >> shift & 0xFF;
      mixed = mixed << 8 | (int) (a + (b - a) * t + 0.5);
    }
    return mixed;
  }
}
