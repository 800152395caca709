package assize.cli;

import assize.check.Coverage;
import assize.check.RecordWarningRule;
import assize.check.RuleSetWarningRule;
import assize.check.WarningFilter;
import assize.diagnostic.AcceptedWarning;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.Result;
import assize.judgment.Judgment;
import assize.record.Inspected;
import assize.record.VehicleRecord;
import assize.report.text.CoverageJson;
import assize.report.text.CoverageTable;
import assize.report.text.DiagnosticFormatter;
import assize.report.text.TerminalEscaper;
import assize.ruleset.RuleSet;
import assize.text.Span;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads rule sets and records and says everything that is wrong with them, or doubtful. */
@Command(
    name = "check",
    description = "Says what is wrong with rule sets and records, and what is doubtful.",
    mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
  private final Terminal terminal;
  private final FileWatcher watch;

  @Parameters(arity = "1..*", paramLabel = "PATH", description = "Rule sets and records.")
  private List<Path> paths = List.of();

  @Option(names = "--json", description = "One JSON object a line.")
  private boolean json;

  @Option(names = "--show-accepted", description = "Also list the warnings that are accepted.")
  private boolean showAccepted;

  @Option(
      names = "--coverage",
      description = "Show which stretches of production no claim covers, item by item.")
  private boolean coverage;

  @Option(names = "--all-items", description = "With --coverage: also the items without a gap.")
  private boolean allItems;

  @Mixin private AsOfOption asOf = new AsOfOption();

  @Option(
      names = "--watch",
      description = "Look again whenever a file that was read is saved, until Ctrl-C.")
  private boolean watching;

  @Spec private CommandSpec spec = CommandSpec.create();

  CheckCommand(Terminal terminal, FileWatcher watch) {
    this.terminal = terminal;
    this.watch = watch;
  }

  @Override
  public Integer call() {
    if (watching && json) {
      throw wrong(
          "--watch: with --json nobody could tell one run from the next; leave one of them out");
    }
    if (allItems && !coverage) {
      throw wrong("--all-items goes with --coverage, which is not given");
    }
    if (showAccepted && coverage) {
      throw wrong("--show-accepted: --coverage looks for no warnings; leave one of them out");
    }
    return watching ? watch.run(paths, this::once) : once(new InputLoader(terminal));
  }

  private ParameterException wrong(String reason) {
    return new ParameterException(spec.commandLine(), reason);
  }

  private int once(InputLoader inputs) {
    return coverage ? coverage(inputs) : check(inputs);
  }

  private int check(InputLoader inputs) {
    List<Path> inputsFound = paths.stream().flatMap(path -> within(path).stream()).toList();
    List<Diagnostic> open = new ArrayList<>();
    Map<Diagnostic, AcceptedWarning> accepted = new LinkedHashMap<>();
    for (Path path : inputsFound) {
      WarningFilter found =
          Bug.in(path, () -> inputs.isRecord(path) ? record(inputs, path) : rules(inputs, path));
      open.addAll(found.open());
      accepted.putAll(found.accepted());
    }
    boolean good = inputs.report(open.stream().distinct().toList(), json);
    if (showAccepted) {
      list(accepted);
    }
    if (good && !json) {
      terminal.result(
          (inputsFound.size() == 1
                  ? "No errors."
                  : "No errors in " + inputsFound.size() + " rule sets and records.")
              + (accepted.isEmpty()
                  ? ""
                  : " "
                      + DiagnosticFormatter.number(accepted.size(), "warning")
                      + " accepted"
                      + (showAccepted ? "." : ": check --show-accepted lists them.")));
    }
    return good ? Exit.DONE : Exit.BAD_INPUT;
  }

  private static WarningFilter rules(InputLoader inputs, Path path) {
    Result<RuleSet> read = inputs.rules(path);
    List<Diagnostic> found = new ArrayList<>(read.diagnostics());
    read.value().map(RuleSetWarningRule::all).ifPresent(found::addAll);
    read.value()
        .map(rules -> ImageLoader.read(SourceImageLoader.all(rules)).found())
        .ifPresent(found::addAll);
    return WarningFilter.of(found, read.value().map(RuleSet::accepted).orElse(List.of()));
  }

  private WarningFilter record(InputLoader inputs, Path path) {
    Result<InputLoader.Read> read = inputs.vehicle(path, Optional.empty());
    List<Diagnostic> found = new ArrayList<>(read.diagnostics());
    read.value()
        .ifPresent(
            both -> {
              Judgment judged = both.judged(asOf.day()).judgment();
              found.addAll(RecordWarningRule.all(judged, asOf(both.vehicle())));
              found.addAll(ImageLoader.read(ReportWriter.photos(path, both.vehicle())).found());
            });
    return WarningFilter.of(
        found, read.value().map(both -> both.vehicle().accepted()).orElse(List.of()));
  }

  /** Returns the day given, else that of judging, else today. */
  private LocalDate asOf(VehicleRecord vehicle) {
    return asOf.day()
        .or(
            () ->
                vehicle
                    .inspected()
                    .flatMap(Inspected::on)
                    .map(on -> on.span().last())
                    .filter(day -> !day.equals(LocalDate.MAX)))
        .orElseGet(LocalDate::now);
  }

  /** Lists accepted warnings, those of one reason together. */
  private void list(Map<Diagnostic, AcceptedWarning> accepted) {
    if (json) {
      accepted.forEach(
          (warning, by) -> terminal.result(InputLoader.asJson(warning, Optional.of(by.reason()))));
      return;
    }
    Map<Span, List<Map.Entry<Diagnostic, AcceptedWarning>>> byEntry = new LinkedHashMap<>();
    for (Map.Entry<Diagnostic, AcceptedWarning> one : accepted.entrySet()) {
      byEntry.computeIfAbsent(one.getValue().at(), it -> new ArrayList<>()).add(one);
    }
    byEntry
        .values()
        .forEach(all -> list(all.get(0).getValue(), all.stream().map(Map.Entry::getKey).toList()));
  }

  private void list(AcceptedWarning by, List<Diagnostic> warnings) {
    String reason = by.reason().replaceAll("\\s+", " ");
    terminal.result(TerminalEscaper.of("accepted[" + by.warning().id() + "]: " + reason));
    warnings.forEach(
        it -> terminal.result(TerminalEscaper.of("  " + it.at() + ": " + it.message())));
  }

  private int coverage(InputLoader inputs) {
    List<Diagnostic> found = new ArrayList<>();
    List<RuleSet> read = new ArrayList<>();
    for (Path path : paths) {
      for (Path one : within(path)) {
        if (one.equals(path) || !inputs.isRecord(one)) {
          Result<RuleSet> rules = inputs.rules(one);
          found.addAll(rules.diagnostics());
          rules.value().ifPresent(read::add);
        }
      }
    }
    boolean good = inputs.report(found.stream().distinct().toList(), json);
    if (!good) {
      return Exit.BAD_INPUT;
    }
    for (RuleSet rules : read) {
      List<Coverage> items = rules.items().map(item -> Coverage.of(item, rules)).toList();
      (json ? CoverageJson.lines(rules, items) : CoverageTable.lines(rules, items, allItems))
          .forEach(terminal::result);
    }
    return Exit.DONE;
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
