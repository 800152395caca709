package assize.yaml;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.text.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Collects everything that is wrong; after a thousand for one file it says so and stops. */
public final class DiagnosticCollector {
  private static final int SHOWN_PER_FILE = 1000;
  private static final int HINTED = 200;

  private final List<Diagnostic> found = new ArrayList<>();
  private final Map<String, Integer> perFile = new HashMap<>();

  public void add(DiagnosticCode code, Span at, String message) {
    add(Diagnostic.of(code, at, message));
  }

  public void add(DiagnosticCode code, Span at, String message, String hint) {
    add(Diagnostic.of(code, at, message, hint));
  }

  public void add(DiagnosticCode code, Span at, String message, Optional<String> hint) {
    add(new Diagnostic(code, at, message, hint, List.of(), List.of()));
  }

  public void add(Diagnostic diagnostic) {
    int count = perFile.merge(diagnostic.at().file().path(), 1, Integer::sum);
    if (count <= SHOWN_PER_FILE) {
      found.add(diagnostic);
    } else if (count == SHOWN_PER_FILE + 1) {
      found.add(
          Diagnostic.of(
              DiagnosticCode.TOO_MANY_PROBLEMS,
              diagnostic.at(),
              "more than "
                  + SHOWN_PER_FILE
                  + " things are wrong in this file; the rest is left out"));
    }
  }

  /** Says whether so much is wrong that near names are no longer looked for. */
  public boolean areMany() {
    return found.size() >= HINTED;
  }

  public void addAll(List<Diagnostic> diagnostics) {
    diagnostics.forEach(this::add);
  }

  public boolean hasErrors() {
    return found.stream().anyMatch(Diagnostic::isError);
  }

  public List<Diagnostic> all() {
    return List.copyOf(found);
  }
}
