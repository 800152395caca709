package assize.measure;

import assize.text.Parsed;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Gloss as found: read in units at 60° (ISO 2813), or a band told by eye.
 *
 * @param units the units read, 0 to 2000; empty for a band
 * @param u the standard uncertainty of the units, half of what stands after ±
 * @param band the band told by eye; empty for units
 * @param text as written
 */
public record GlossReading(OptionalDouble units, double u, Optional<GlossBand> band, String text) {
  /** Polished metal reaches 2000 units; nothing goes beyond. */
  public static final int MOST = 2000;

  public GlossReading {
    if (units.isPresent() == band.isPresent() || !(u >= 0)) {
      throw new IllegalArgumentException("gloss is read in units or as a band: " + text);
    }
  }

  /** Returns the reading as a report says it: the name of a band, or the units with their name. */
  public String spoken() {
    boolean named = text.codePoints().anyMatch(Character::isLetter);
    return units.isEmpty() || named ? text : text + " gloss units";
  }

  /** Reads {@code 41}, {@code 41 ± 3} or the name of a band. */
  public static Parsed<GlossReading> parse(String text) {
    return new GlossReader(text).reading();
  }
}
