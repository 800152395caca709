package assize.diagnostic;

import java.util.List;
import java.util.Optional;

/**
 * What reading gave: the value, unless something is wrong, and everything to say about it.
 *
 * @param value present exactly where no diagnostic is an error
 * @param diagnostics in the order of file and place
 * @param <T> what was to be read
 */
public record Result<T>(Optional<T> value, List<Diagnostic> diagnostics) {
  public Result {
    diagnostics = diagnostics.stream().sorted().toList();
  }

  /** Returns a value with nothing to say about it. */
  public static <T> Result<T> of(T value) {
    return new Result<>(Optional.of(value), List.of());
  }

  /** Returns a failure. */
  public static <T> Result<T> failed(List<Diagnostic> diagnostics) {
    return new Result<>(Optional.empty(), diagnostics);
  }

  /** Says whether something is wrong. */
  public boolean hasErrors() {
    return diagnostics.stream().anyMatch(Diagnostic::isError);
  }
}
