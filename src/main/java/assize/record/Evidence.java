package assize.record;

import assize.date.Edtf;
import assize.text.Span;
import java.util.Optional;

/**
 * Something that shows what was found.
 *
 * @param what the file, or for a measurement what was measured with
 */
public record Evidence(
    String id,
    Kind kind,
    String what,
    Optional<String> caption,
    Optional<Edtf> taken,
    Optional<String> by,
    Span at) {
  /** What kind of thing it is. */
  public enum Kind {
    PHOTO("photo"),
    DOCUMENT("document"),
    MEASUREMENT("measurement");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** Returns the name that records use. */
    public String word() {
      return word;
    }
  }
}
