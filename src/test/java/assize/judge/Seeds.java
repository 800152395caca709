package assize.judge;

import java.util.function.LongConsumer;

/** Seeds for properties: the same at every run. */
final class Seeds {
  private Seeds() {}

  /** Tries a property with each seed, and says with which it does not hold. */
  static void each(int count, LongConsumer property) {
    for (long seed = 0; seed < count; seed++) {
      try {
        property.accept(seed);
      } catch (AssertionError | RuntimeException e) {
        throw new AssertionError("with seed " + seed, e);
      }
    }
  }
}
