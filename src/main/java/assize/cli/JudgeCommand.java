package assize.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
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
  private final FileWatcher watch;

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
  private Optional<Path> out = Optional.empty();

  @Mixin private AsOfOption asOf = new AsOfOption();

  @Option(
      names = "--json",
      paramLabel = "FILE",
      arity = "0..1",
      fallbackValue = "-",
      description = "Also write the judgment as JSON; -: to standard output, and no report.")
  private Optional<String> json = Optional.empty();

  @Option(
      names = "--watch",
      description = "Judge again whenever a file that was read is saved, until Ctrl-C.")
  private boolean watching;

  @Mixin private ReportOptions options = new ReportOptions();

  @Spec private CommandSpec spec = CommandSpec.create();

  JudgeCommand(Terminal terminal, FileWatcher watch) {
    this.terminal = terminal;
    this.watch = watch;
  }

  @Override
  public Integer call() {
    ReportWriter.ReportOptions wanted = options.wanted(out, json);
    if (!watching) {
      return judge(new InputLoader(terminal), wanted);
    }
    if (json.equals(Optional.of("-"))) {
      throw new ParameterException(
          spec.commandLine(),
          "--watch: on standard output nobody could tell one run from the next; name a file, as in"
              + " --json=FILE");
    }
    List<Path> named = new ArrayList<>(records);
    rules.ifPresent(named::add);
    return watch.run(named, inputs -> judge(inputs, wanted));
  }

  private int judge(InputLoader inputs, ReportWriter.ReportOptions wanted) {
    return inputs
        .judge(records, rules, asOf.day())
        .map(judged -> new ReportWriter(terminal).write(judged, wanted))
        .filter(written -> written)
        .map(written -> Exit.DONE)
        .orElse(Exit.BAD_INPUT);
  }
}
