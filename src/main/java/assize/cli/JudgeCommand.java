package assize.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Judges vehicles and writes their reports. */
@Command(
    name = "judge",
    description = "Judges vehicles and writes a report for each.",
    mixinStandardHelpOptions = true)
final class JudgeCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(arity = "1..*", paramLabel = "RECORD", description = "Records, one for each vehicle.")
  private List<Path> records = List.of();

  @Option(
      names = "--rules",
      paramLabel = "RULESET",
      description = "Judge by this rule set, whatever the record names.")
  private Optional<Path> rules = Optional.empty();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where to write the reports; default: reports.")
  private Path out = Path.of("reports");

  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      description =
          "The day on which departures with a date are looked at; default: the day of judging.")
  private Optional<LocalDate> asOf = Optional.empty();

  @Option(
      names = "--json",
      paramLabel = "FILE",
      arity = "0..1",
      fallbackValue = "-",
      description = "Also write the judgment as JSON; -: to standard output, and no report.")
  private Optional<String> json = Optional.empty();

  @Mixin private ReportOptions options = new ReportOptions();

  JudgeCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Reports.Wanted wanted = options.wanted(out, json);
    return new Inputs(terminal)
        .judge(records, rules, asOf)
        .map(judged -> new Reports(terminal).write(judged, wanted))
        .filter(written -> written)
        .map(written -> Exit.DONE)
        .orElse(Exit.BAD_INPUT);
  }
}
