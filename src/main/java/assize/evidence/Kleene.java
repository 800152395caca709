package assize.evidence;

/** Yes, no or unknown, combined by Kleene's strong logic (Kleene 1952, §64). */
public enum Kleene {
  YES,
  NO,
  UNKNOWN;

  /** Returns what is known for certain. */
  public static Kleene of(boolean known) {
    return known ? YES : NO;
  }

  /** Returns yes where both are, no where either is. */
  public Kleene and(Kleene other) {
    if (this == NO || other == NO) {
      return NO;
    }
    return this == YES && other == YES ? YES : UNKNOWN;
  }

  /** Returns yes where either is, no where both are. */
  public Kleene or(Kleene other) {
    return not().and(other.not()).not();
  }

  /** Returns the opposite; of unknown, unknown. */
  public Kleene not() {
    return switch (this) {
      case YES -> NO;
      case NO -> YES;
      case UNKNOWN -> UNKNOWN;
    };
  }
}
