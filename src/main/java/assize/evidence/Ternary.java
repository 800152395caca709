package assize.evidence;

/** Yes, no or unknown, combined by Kleene's strong logic (Kleene 1952, §64). */
public enum Ternary {
  YES,
  NO,
  UNKNOWN;

  /** Returns what is known for certain. */
  public static Ternary of(boolean known) {
    return known ? YES : NO;
  }

  /** Returns yes where both are, no where either is. */
  public Ternary and(Ternary other) {
    if (this == NO || other == NO) {
      return NO;
    }
    return this == YES && other == YES ? YES : UNKNOWN;
  }

  /** Returns yes where either is, no where both are. */
  public Ternary or(Ternary other) {
    return not().and(other.not()).not();
  }

  /** Returns the opposite; of unknown, unknown. */
  public Ternary not() {
    return switch (this) {
      case YES -> NO;
      case NO -> YES;
      case UNKNOWN -> UNKNOWN;
    };
  }
}
