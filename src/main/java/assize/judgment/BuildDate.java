package assize.judgment;

import assize.date.DateRange;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * When the vehicle was built, as far as is known.
 *
 * @param days the possible build days, both ends closed
 * @param likely the estimate, where a number gives one
 * @param statements everything that says something, the one that was followed first
 */
public record BuildDate(
    DateRange days, Basis basis, Optional<LocalDate> likely, List<DatingStatement> statements) {
  public BuildDate {
    statements = List.copyOf(statements);
  }

  /** Returns the same, some of its days left: those on which what else is known can be. */
  public BuildDate within(DateRange left) {
    return new BuildDate(left, basis, likely.filter(left::contains), statements);
  }

  /** What the build days rest on. */
  public enum Basis {
    RECORD("record"),
    NUMBER("number"),
    MODEL("model");

    private final String word;

    Basis(String word) {
      this.word = word;
    }

    /** Returns the name that reports use. */
    public String word() {
      return word;
    }
  }

  /** What one thing says of the build days. */
  public record DatingStatement(Basis basis, String words, DateRange days) {}
}
