package assize.aspect;

/** What judging says of an item or of one of its aspects. */
public enum Verdict {
  CORRECT("meets"),
  PARTLY_CORRECT("partly"),
  INCORRECT("departs"),
  /** It depends on a dispute, or on a measurement too coarse to decide. */
  UNDECIDED("open"),
  NOT_ASSESSED("not shown"),
  NOT_APPLICABLE("does not apply"),
  /** The build day or the equipment is too uncertain to say. */
  MAY_APPLY("may apply");

  private final String word;

  Verdict(String word) {
    this.word = word;
  }

  /** Returns the name that reports use. */
  public String word() {
    return word;
  }
}
