package assize.record;

import assize.date.Edtf;
import assize.schema.Rewording;
import assize.text.Span;
import java.util.List;
import java.util.Optional;

/**
 * Something that shows what was found.
 *
 * @param what the file, or for a measurement what was measured with
 * @param covers parts of a photo that are painted over in the copy for others
 * @param isUnshared whether all of it stays out of the copy for others
 */
public record Evidence(
    String id,
    Kind kind,
    String what,
    Optional<String> caption,
    Optional<Edtf> taken,
    Optional<String> by,
    List<Cover> covers,
    boolean isUnshared,
    Span at) {
  public Evidence {
    covers = List.copyOf(covers);
  }

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

  /** Returns the same, its texts changed. */
  Evidence reworded(Rewording rewording) {
    return new Evidence(
        rewording.name(id),
        kind,
        rewording.text(what),
        caption.map(rewording::text),
        taken,
        by.map(rewording::text),
        covers,
        isUnshared,
        at);
  }

  private List<Object> said() {
    return List.of(id, kind, what, caption, taken, by, covers, isUnshared);
  }

  /** Where it is written makes no difference. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Evidence that && said().equals(that.said());
  }

  @Override
  public int hashCode() {
    return said().hashCode();
  }
}
