package assize.diagnostic;

import assize.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One thing that is wrong or doubtful.
 *
 * @param message what was found, no full stop
 * @param hint the next step, printed behind the carets
 * @param related other places that have to do with it
 * @param subjects names of what it is about, by which a warning can be accepted
 */
public record Diagnostic(
    DiagnosticCode code,
    Span at,
    String message,
    Optional<String> hint,
    List<RelatedLocation> related,
    List<String> subjects)
    implements Comparable<Diagnostic> {
  public Diagnostic {
    related = List.copyOf(related);
    subjects = List.copyOf(subjects);
  }

  /** Says what is wrong, with no next step to offer. */
  public static Diagnostic of(DiagnosticCode code, Span at, String message) {
    return new Diagnostic(code, at, message, Optional.empty(), List.of(), List.of());
  }

  /** Says what is wrong, and the next step. */
  public static Diagnostic of(DiagnosticCode code, Span at, String message, String hint) {
    return new Diagnostic(code, at, message, Optional.of(hint), List.of(), List.of());
  }

  /** Returns the same with one more place that has to do with it. */
  public Diagnostic with(Span other, String words) {
    List<RelatedLocation> labels = new ArrayList<>(related);
    labels.add(new RelatedLocation(other, words));
    return new Diagnostic(code, at, message, hint, labels, subjects);
  }

  /** Returns the same, about what bears these names. */
  public Diagnostic subjects(String... names) {
    return new Diagnostic(code, at, message, hint, related, List.of(names));
  }

  /** Says whether nothing can be judged until it is put right. */
  public boolean isError() {
    return code.severity() == Severity.ERROR;
  }

  /** Orders by file and place, then by message. */
  @Override
  public int compareTo(Diagnostic other) {
    int byPlace = at.compareTo(other.at);
    return byPlace != 0 ? byPlace : message.compareTo(other.message);
  }
}
