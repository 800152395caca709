package assize.diagnostic;

import assize.text.Span;
import java.util.List;

/**
 * A warning that the writer of a file has looked at and lets stand.
 *
 * @param warning which
 * @param of names of what it is about; empty: whatever it is about
 * @param reason the reason
 */
public record AcceptedWarning(DiagnosticCode warning, List<String> of, String reason, Span at) {
  public AcceptedWarning {
    of = List.copyOf(of);
  }

  /** Says whether this is what is accepted here. */
  public boolean covers(Diagnostic found) {
    return found.code() == warning
        && (of.isEmpty() || found.subjects().stream().anyMatch(of::contains));
  }

  private List<Object> said() {
    return List.of(warning, of, reason);
  }

  /** Where it is written makes no difference. */
  @Override
  public boolean equals(Object other) {
    return other instanceof AcceptedWarning that && said().equals(that.said());
  }

  @Override
  public int hashCode() {
    return said().hashCode();
  }
}
