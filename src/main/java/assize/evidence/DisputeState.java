package assize.evidence;

/** How far sources agree on one aspect. */
public enum DisputeState {
  /** Exactly one position stands under every source. */
  AGREED("agreed"),
  /** None does, yet one position's belief is great enough. */
  SETTLED("settled"),
  /** None does, and no belief is great enough. */
  DISPUTED("disputed"),
  /** No source is named. */
  UNSOURCED("unsourced");

  private final String word;

  DisputeState(String word) {
    this.word = word;
  }

  /** Returns the name that reports use. */
  public String word() {
    return word;
  }

  /** Returns how much there is to say of it: 0 for agreed, 3 for disputed. */
  public int rank() {
    return switch (this) {
      case AGREED -> 0;
      case UNSOURCED -> 1;
      case SETTLED -> 2;
      case DISPUTED -> 3;
    };
  }
}
