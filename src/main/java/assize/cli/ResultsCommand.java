package assize.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Judges every record in a folder and writes a results page. */
@Command(
    name = "results",
    description = "Judges every record in a folder and below, and writes a results page.",
    mixinStandardHelpOptions = true)
final class ResultsCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "DIR", description = "The folder with the records.")
  private Path folder = Path.of("");

  @Option(
      names = "--rules",
      paramLabel = "RULESET",
      description = "Judge by this rule set, whatever the records name.")
  private Optional<Path> rules = Optional.empty();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where to write the results page and the reports; default: reports.")
  private Optional<Path> out = Optional.empty();

  @Mixin private AsOfOption asOf = new AsOfOption();

  @Option(
      names = "--json",
      paramLabel = "FILE",
      arity = "0..1",
      fallbackValue = "-",
      description =
          "Also write the judgments as JSON, one a line; -: to standard output, and no page.")
  private Optional<String> json = Optional.empty();

  @Option(
      names = "--skip-invalid",
      description = "Leave out records that have errors, and list them on the results page.")
  private boolean skipInvalid;

  @Option(names = "--no-reports", description = "Write the results page alone, and no reports.")
  private boolean noReports;

  @Mixin private ReportOptions options = new ReportOptions();

  ResultsCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    ResultsWriter.ResultsOptions wanted =
        new ResultsWriter.ResultsOptions(
            folder, options.wanted(out, json), rules, asOf.day(), skipInvalid, noReports);
    try {
      return new ResultsWriter(terminal, wanted).make();
    } catch (IOException e) {
      throw AtomicFileWriter.cannotWrite(wanted.index(), e);
    }
  }
}
