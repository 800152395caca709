package assize.report.chart;

/** Bars on a scale from nothing to all, without labels. */
public final class RangeBars {
  private static final int WIDTH = 1000;
  private static final int HEIGHT = 24;

  private RangeBars() {}

  /**
   * Draws points earned: solid up to low, half to likely marked, light up to high.
   *
   * @param low share of what is possible, 0 to 1
   * @param likely the same
   * @param high the same
   */
  public static Chart earned(
      String title, String description, double low, double likely, double high) {
    ChartBuilder sketch = new ChartBuilder(WIDTH, HEIGHT);
    sketch.box(0, 9, WIDTH, 15, 0, "groove");
    if (high > 0) {
      sketch.box(low * WIDTH, 5, high * WIDTH, 19, 0, "may");
      sketch.box(0, 5, low * WIDTH, 19, 0, "sure");
      sketch.box(likely * WIDTH - 3, 1, likely * WIDTH + 3, 23, 6, "mark");
    }
    return sketch.done("", title, description);
  }

  /**
   * Draws how far a position is believed: solid up to belief, light up to plausibility, and where a
   * dispute would be settled.
   *
   * @param belief 0 to 1
   * @param plausibility 0 to 1
   * @param settledAt 0 to 1
   */
  public static Chart belief(
      String title, String description, double belief, double plausibility, double settledAt) {
    ChartBuilder sketch = new ChartBuilder(WIDTH, HEIGHT);
    sketch.box(0, 9, WIDTH, 15, 0, "groove");
    sketch.box(belief * WIDTH, 5, plausibility * WIDTH, 19, 0, "may");
    sketch.box(0, 5, belief * WIDTH, 19, 0, "sure");
    sketch.box(settledAt * WIDTH - 2, 0, settledAt * WIDTH + 2, HEIGHT, 4, "limit");
    return sketch.done("", title, description);
  }
}
