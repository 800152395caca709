package assize.fuzz;

import assize.measure.CieLab;
import assize.measure.Gauge;
import assize.measure.GlossRange;
import assize.measure.GlossReading;
import assize.measure.MeasuredSize;
import assize.measure.ThreadDesignation;
import assize.measure.ToleranceLimits;

/** Sizes, limits, threads, gauges, gloss and color. */
public final class MeasureTarget {
  private MeasureTarget() {}

  /** Tries one input. */
  public static void fuzzerTestOneInput(byte[] data) {
    String text = Checks.text(data);
    Checks.parsed(text, MeasuredSize.parse(text), MeasuredSize.parse(text));
    Checks.parsed(text, ToleranceLimits.parse(text), ToleranceLimits.parse(text));
    Checks.parsed(text, ThreadDesignation.parse(text), ThreadDesignation.parse(text));
    Checks.parsed(text, Gauge.parse(text), Gauge.parse(text));
    Checks.parsed(text, GlossRange.parse(text), GlossRange.parse(text));
    Checks.parsed(text, GlossReading.parse(text), GlossReading.parse(text));
    Checks.parsed(text, CieLab.parse(text), CieLab.parse(text));
  }
}
