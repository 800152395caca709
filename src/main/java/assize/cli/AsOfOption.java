package assize.cli;

import java.time.LocalDate;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The day on which departures with a date are looked at. */
final class AsOfOption {
  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      description =
          "The day on which departures with a date are looked at; default: the day of judging.")
  private Optional<LocalDate> day = Optional.empty();

  /** Returns the day that was named. */
  Optional<LocalDate> day() {
    return day;
  }
}
