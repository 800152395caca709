package assize.cli;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.Result;
import assize.lint.Doubt;
import assize.ruleset.RuleSet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Reads rule sets and records and says everything that is wrong with them. */
@Command(
    name = "lint",
    description = "Says what is wrong with rule sets and records.",
    mixinStandardHelpOptions = true)
final class LintCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(arity = "1..*", paramLabel = "PATH", description = "Rule sets and records.")
  private List<Path> paths = List.of();

  @Option(names = "--json", description = "One JSON object a line.")
  private boolean json;

  LintCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Inputs inputs = new Inputs(terminal);
    List<Diagnostic> found = new ArrayList<>();
    List<Path> inputsFound = paths.stream().flatMap(path -> within(path).stream()).toList();
    for (Path path : inputsFound) {
      if (inputs.isRecord(path)) {
        found.addAll(inputs.vehicle(path, Optional.empty()).diagnostics());
      } else {
        Result<RuleSet> rules = inputs.rules(path);
        found.addAll(rules.diagnostics());
        rules.value().map(Doubt::all).ifPresent(found::addAll);
      }
    }
    boolean good = inputs.report(found.stream().distinct().toList(), json);
    if (good && !json) {
      terminal.result(
          inputsFound.size() == 1
              ? "No errors."
              : "No errors in " + inputsFound.size() + " rule sets and records.");
    }
    return good ? Exit.DONE : Exit.BAD_INPUT;
  }

  /**
   * Returns what to look at: the path itself, or for a folder that is no rule set every rule set
   * and record that lies in it.
   */
  private static List<Path> within(Path path) {
    if (!Files.isDirectory(path) || isRuleSet(path)) {
      return List.of(path);
    }
    try (Stream<Path> all = Files.list(path)) {
      List<Path> found =
          all.filter(it -> Files.isDirectory(it) ? isRuleSet(it) : it.toString().endsWith(".yaml"))
              .sorted()
              .toList();
      return found.isEmpty() ? List.of(path) : found;
    } catch (IOException e) {
      return List.of(path);
    }
  }

  private static boolean isRuleSet(Path folder) {
    return Files.exists(folder.resolve("rules.yaml"));
  }
}
