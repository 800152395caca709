package assize.measure;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A named degree of gloss, in units at 60° (ISO 2813).
 *
 * <p>The figures are those of the seven gloss levels that the Master Painters Institute publishes;
 * the bands overlap.
 */
public enum GlossBand {
  FLAT("flat", 0, 5),
  VELVET("velvet", 0, 10),
  EGGSHELL("eggshell", 10, 25),
  SATIN("satin", 20, 35),
  SEMI_GLOSS("semi-gloss", 35, 70),
  GLOSS("gloss", 70, 85),
  HIGH_GLOSS("high gloss", 85, Double.POSITIVE_INFINITY);

  private final String spoken;
  private final double from;
  private final double to;

  GlossBand(String spoken, double from, double to) {
    this.spoken = spoken;
    this.from = from;
    this.to = to;
  }

  /** Returns the word that rule sets and records use. */
  public String spoken() {
    return spoken;
  }

  public double from() {
    return from;
  }

  /** Returns the upper end; empty for high gloss, which has none. */
  public OptionalDouble to() {
    return Double.isInfinite(to) ? OptionalDouble.empty() : OptionalDouble.of(to);
  }

  /** Moves past the name of a band, if one stands here; a dash or a space, as you like. */
  static Optional<GlossBand> read(Cursor cursor) {
    for (GlossBand band : values()) {
      if (cursor.take(band.spoken)
          || cursor.take(band.spoken.replace(' ', '-'))
          || cursor.take(band.spoken.replace('-', ' '))) {
        return Optional.of(band);
      }
    }
    return Optional.empty();
  }
}
