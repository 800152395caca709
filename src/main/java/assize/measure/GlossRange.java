package assize.measure;

import assize.text.Parsed;
import java.util.OptionalDouble;

/**
 * The gloss that is right, in units at 60° (ISO 2813), limits included.
 *
 * @param from the least, zero or more
 * @param to the greatest; empty where nothing is too glossy
 * @param text as written
 */
public record GlossRange(double from, OptionalDouble to, String text) {
  /** Black glass, the standard of ISO 2813, reads 100: a band without an end is taken to there. */
  private static final double BLACK_GLASS = 100;

  public GlossRange {
    if (!(from >= 0) || to.orElse(Double.POSITIVE_INFINITY) < from) {
      throw new IllegalArgumentException("not a range of gloss: " + text);
    }
  }

  /** Reads {@code 30 to 50}, {@code semi-gloss}, {@code at most 35} or {@code 40 ± 5}. */
  public static Parsed<GlossRange> parse(String text) {
    return new GlossReader(text).range();
  }

  /**
   * Judges a reading. A band told by eye conforms by the share of it that lies within; that is a
   * convention of this program.
   */
  public Conformity judge(GlossReading reading) {
    return reading
        .band()
        .map(band -> new Conformity(share(band), false))
        .orElseGet(() -> judge(reading.units().orElseThrow(), reading.u()));
  }

  private Conformity judge(double units, double u) {
    double p = Conformity.probability(units, u, OptionalDouble.of(from), to);
    return new Conformity(p, u == 0);
  }

  private double share(GlossBand band) {
    double low = band.from();
    double high = band.to().orElse(BLACK_GLASS);
    double most = to.orElse(Double.POSITIVE_INFINITY);
    if (band.to().isEmpty() && most >= BLACK_GLASS) {
      most = Double.POSITIVE_INFINITY;
    }
    double within = Math.min(high, most) - Math.max(low, from);
    return Math.max(0, Math.min(1, within / (high - low)));
  }

  /** Says whether a reading reaches further above the range than below: over-restored. */
  public boolean isTooGlossy(GlossReading reading) {
    return above(reading) > below(reading);
  }

  /** Says whether a reading reaches further below the range than above. */
  public boolean isTooDull(GlossReading reading) {
    return below(reading) > above(reading);
  }

  /** Returns how far the greatest that a reading means lies above the range, within it below 0. */
  private double above(GlossReading reading) {
    double greatest =
        reading
            .band()
            .map(band -> band.to().orElse(BLACK_GLASS))
            .orElseGet(() -> reading.units().orElseThrow());
    return greatest - to.orElse(Double.POSITIVE_INFINITY);
  }

  private double below(GlossReading reading) {
    return from
        - reading.band().map(GlossBand::from).orElseGet(() -> reading.units().orElseThrow());
  }
}
