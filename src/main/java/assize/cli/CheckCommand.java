package assize.cli;

import assize.check.Accepting;
import assize.check.Coverage;
import assize.check.Doubt;
import assize.check.RecordDoubt;
import assize.diagnostic.Accepted;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.Result;
import assize.judgment.Judgment;
import assize.record.Judged;
import assize.record.VehicleRecord;
import assize.report.text.CoverageJson;
import assize.report.text.CoverageTable;
import assize.report.text.DiagnosticPrinter;
import assize.report.text.Visible;
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
  private final Watch watch;

  @Parameters(arity = "1..*", paramLabel = "PATH", description = "Rule sets and records.")
  private List<Path> paths = List.of();

  @Option(names = "--json", description = "One JSON object a line.")
  private boolean json;

  @Option(names = "--show-accepted", description = "Also list the doubts that are accepted.")
  private boolean showAccepted;

  @Option(
      names = "--coverage",
      description = "Show which stretches of production no claim covers, item by item.")
  private boolean coverage;

  @Option(names = "--all-items", description = "With --coverage: also the items without a gap.")
  private boolean allItems;

  @Mixin private AsOf asOf = new AsOf();

  @Option(
      names = "--watch",
      description = "Look again whenever a file that was read is saved, until Ctrl-C.")
  private boolean watching;

  @Spec private CommandSpec spec = CommandSpec.create();

  CheckCommand(Terminal terminal, Watch watch) {
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
      throw wrong("--show-accepted: --coverage looks for no doubts; leave one of them out");
    }
    return watching ? watch.run(paths, this::once) : once(new Inputs(terminal));
  }

  private ParameterException wrong(String reason) {
    return new ParameterException(spec.commandLine(), reason);
  }

  private int once(Inputs inputs) {
    return coverage ? coverage(inputs) : check(inputs);
  }

  private int check(Inputs inputs) {
    List<Path> inputsFound = paths.stream().flatMap(path -> within(path).stream()).toList();
    List<Diagnostic> open = new ArrayList<>();
    Map<Diagnostic, Accepted> accepted = new LinkedHashMap<>();
    for (Path path : inputsFound) {
      Accepting found =
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
                      + DiagnosticPrinter.number(accepted.size(), "doubt")
                      + " accepted"
                      + (showAccepted ? "." : ": check --show-accepted lists them.")));
    }
    return good ? Exit.DONE : Exit.BAD_INPUT;
  }

  private static Accepting rules(Inputs inputs, Path path) {
    Result<RuleSet> read = inputs.rules(path);
    List<Diagnostic> found = new ArrayList<>(read.diagnostics());
    read.value().map(Doubt::all).ifPresent(found::addAll);
    read.value()
        .map(rules -> Pictures.read(ClaimPictures.all(rules)).found())
        .ifPresent(found::addAll);
    return Accepting.of(found, read.value().map(RuleSet::accepted).orElse(List.of()));
  }

  private Accepting record(Inputs inputs, Path path) {
    Result<Inputs.Read> read = inputs.vehicle(path, Optional.empty());
    List<Diagnostic> found = new ArrayList<>(read.diagnostics());
    read.value()
        .ifPresent(
            both -> {
              Judgment judged = both.judged(asOf.day()).judgment();
              found.addAll(RecordDoubt.all(judged, asOf(both.vehicle())));
              found.addAll(Pictures.read(Reports.photos(path, both.vehicle())).found());
            });
    return Accepting.of(
        found, read.value().map(both -> both.vehicle().accepted()).orElse(List.of()));
  }

  /** Returns the day given, else that of judging, else today. */
  private LocalDate asOf(VehicleRecord vehicle) {
    return asOf.day()
        .or(
            () ->
                vehicle
                    .judged()
                    .flatMap(Judged::on)
                    .map(on -> on.span().last())
                    .filter(day -> !day.equals(LocalDate.MAX)))
        .orElseGet(LocalDate::now);
  }

  /** Lists accepted doubts, those of one reason together. */
  private void list(Map<Diagnostic, Accepted> accepted) {
    if (json) {
      accepted.forEach(
          (doubt, by) -> terminal.result(Inputs.asJson(doubt, Optional.of(by.because()))));
      return;
    }
    Map<Span, List<Map.Entry<Diagnostic, Accepted>>> byEntry = new LinkedHashMap<>();
    for (Map.Entry<Diagnostic, Accepted> one : accepted.entrySet()) {
      byEntry.computeIfAbsent(one.getValue().at(), it -> new ArrayList<>()).add(one);
    }
    byEntry
        .values()
        .forEach(all -> list(all.get(0).getValue(), all.stream().map(Map.Entry::getKey).toList()));
  }

  private void list(Accepted by, List<Diagnostic> doubts) {
    String reason = by.because().replaceAll("\\s+", " ");
    terminal.result(Visible.of("accepted[" + by.doubt().id() + "]: " + reason));
    doubts.forEach(it -> terminal.result(Visible.of("  " + it.at() + ": " + it.message())));
  }

  private int coverage(Inputs inputs) {
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
