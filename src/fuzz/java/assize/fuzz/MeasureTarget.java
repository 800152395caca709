package assize.fuzz;

import assize.measure.Gauge;
import assize.measure.GlossRange;
import assize.measure.GlossReading;
import assize.measure.Lab;
import assize.measure.Limits;
import assize.measure.Measured;
import assize.measure.Thread;

/** Sizes, limits, threads, gauges, gloss and color. */
public final class MeasureTarget {
  private MeasureTarget() {}

  /** Tries one input. */
  public static void fuzzerTestOneInput(byte[] data) {
    String text = Checks.text(data);
    Checks.parsed(text, Measured.parse(text), Measured.parse(text));
    Checks.parsed(text, Limits.parse(text), Limits.parse(text));
    Checks.parsed(text, Thread.parse(text), Thread.parse(text));
    Checks.parsed(text, Gauge.parse(text), Gauge.parse(text));
    Checks.parsed(text, GlossRange.parse(text), GlossRange.parse(text));
    Checks.parsed(text, GlossReading.parse(text), GlossReading.parse(text));
    Checks.parsed(text, Lab.parse(text), Lab.parse(text));
  }
}
