package assize.cli;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.Result;
import assize.judge.Judge;
import assize.judgment.Judgment;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

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

  @Spec private CommandSpec spec = CommandSpec.create();

  JudgeCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    json.flatMap(Arguments::refusedForJson)
        .ifPresent(
            reason -> {
              throw new ParameterException(spec.commandLine(), reason);
            });
    Inputs inputs = new Inputs(terminal);
    List<Diagnostic> found = new ArrayList<>();
    Map<Path, Inputs.Read> read = new LinkedHashMap<>();
    for (Path path : records) {
      Result<Inputs.Read> one = inputs.vehicle(path, rules);
      found.addAll(one.diagnostics());
      one.value().ifPresent(value -> read.put(path, value));
    }
    if (!inputs.report(found.stream().distinct().toList(), false)) {
      return Exit.BAD_INPUT;
    }
    Reports reports = new Reports(terminal);
    Map<Path, Judgment> judged = new LinkedHashMap<>();
    read.forEach((path, one) -> judged.put(path, Judge.judge(one.rules(), one.vehicle(), asOf)));
    return reports.write(judged, out, json) ? Exit.DONE : Exit.BAD_INPUT;
  }
}
