package assize.diagnostic;

/** How bad it is. */
public enum Severity {
  /** Nothing can be judged until it is put right. */
  ERROR("error"),
  /** It can be judged, yet it is probably not what was meant. */
  WARNING("warning");

  private final String word;

  Severity(String word) {
    this.word = word;
  }

  /** Returns the name that messages use. */
  public String word() {
    return word;
  }
}
