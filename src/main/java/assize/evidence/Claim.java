package assize.evidence;

import assize.aspect.Expectation;
import assize.text.Span;
import java.util.List;
import java.util.Optional;

/**
 * What one source says of one aspect of one item, for some vehicles.
 *
 * @param source the source's name; empty where the rule set names none
 * @param citation where in the source
 * @param scope for which vehicles it speaks
 * @param values at least one
 * @param photo what the source shows of it
 */
public record Claim(
    Optional<String> source,
    Optional<String> citation,
    Scope scope,
    ClaimKind manner,
    List<Expectation> values,
    Optional<Photo> photo,
    Span at) {
  public Claim {
    values = List.copyOf(values);
    if (values.isEmpty()) {
      throw new IllegalArgumentException("a claim without a value at " + at);
    }
  }

  /**
   * What a source shows: a photo of it, or of the part of it that bears on the item.
   *
   * @param file beside the rule set, or below
   */
  public record Photo(String file, Optional<String> caption, Span at) {}
}
