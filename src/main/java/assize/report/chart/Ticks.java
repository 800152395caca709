package assize.report.chart;

/** Round numbers along an axis. */
final class Ticks {
  private Ticks() {}

  /**
   * Returns the least round step that gives no more ticks than there is room for.
   *
   * @param span from one end of the axis to the other, above zero
   * @param most how many ticks there is room for
   */
  static double step(double span, double most) {
    double rough = span / Math.max(1, most);
    double power = Math.pow(10, Math.floor(Math.log10(rough)));
    for (double times : new double[] {1, 2, 2.5, 5}) {
      if (times * power >= rough) {
        return times * power;
      }
    }
    return 10 * power;
  }
}
