package assize.judgment;

/**
 * Something that judging noticed and a person should know.
 *
 * @param words whole sentences
 */
public record Notice(Kind kind, String words) {
  /** What it is about. */
  public enum Kind {
    BUILD_DAYS,
    NUMBER,
    EDITION,
    DEPARTURE_DUE
  }
}
