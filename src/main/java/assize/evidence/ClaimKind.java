package assize.evidence;

/** How a claim speaks. */
public enum ClaimKind {
  /** This is right, or any of these. */
  SAYS("says"),
  /** Right is one of these, and the source can't tell which. */
  LEAVES_OPEN("leaves_open"),
  /** Whatever is right, it is not this. */
  RULES_OUT("rules_out");

  private final String word;

  ClaimKind(String word) {
    this.word = word;
  }

  /** Returns the name that rule sets use. */
  public String word() {
    return word;
  }
}
