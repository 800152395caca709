package assize.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
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

  @Option(
      names = "--share",
      description =
          "Write the copies for others: without what is private, ends of numbers masked, checked.")
  private boolean share;

  @Option(
      names = "--photos",
      paramLabel = "inside|beside",
      description =
          "Where the photos go: inside the report, or beside it in a folder; default: inside.")
  private Place photos = Place.inside;

  @Option(
      names = "--without-bad-photos",
      description = "Make the report even where a photo can't be shown; it says so.")
  private boolean withoutBadPhotos;

  @Spec private CommandSpec spec = CommandSpec.create();

  JudgeCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  /** Where photos go, as it is typed. */
  private enum Place {
    inside,
    beside
  }

  @Override
  public Integer call() {
    if (share && photos == Place.beside) {
      throw new ParameterException(
          spec.commandLine(),
          "--share: the copy for others is one file; leave --photos beside out");
    }
    Reports.Wanted wanted = new Reports.Wanted(out, json, withoutBadPhotos, photos == Place.beside);
    json.flatMap(Arguments::refusedForJson)
        .ifPresent(
            reason -> {
              throw new ParameterException(spec.commandLine(), reason);
            });
    return new Inputs(terminal)
        .judge(records, rules, asOf)
        .map(
            judged ->
                share
                    ? new Reports(terminal).share(judged, wanted)
                    : new Reports(terminal).write(judged, wanted))
        .filter(written -> written)
        .map(written -> Exit.DONE)
        .orElse(Exit.BAD_INPUT);
  }
}
