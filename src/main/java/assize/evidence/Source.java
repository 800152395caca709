package assize.evidence;

import assize.date.Edtf;
import assize.text.Span;
import java.util.Optional;
import java.util.Set;

/**
 * One thing that speaks of what is right: a drawing, a photograph, somebody's memory.
 *
 * @param id its name in the rule set
 * @param copies the sources whose sayings it repeats
 */
public record Source(
    String id,
    SourceKind kind,
    Grade grade,
    String title,
    Optional<Edtf> date,
    Optional<String> heldBy,
    Set<String> copies,
    Optional<String> notes,
    Span at) {
  public Source {
    copies = Set.copyOf(copies);
  }
}
