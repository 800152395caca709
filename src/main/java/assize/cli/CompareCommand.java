package assize.cli;

import assize.compare.EditionComparison;
import assize.compare.MigratedRecord;
import assize.compare.VehicleComparison;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.diagnostic.Result;
import assize.judge.Judge;
import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.report.changes.ChangesView;
import assize.report.changes.ChangesViewFactory;
import assize.report.changes.HtmlChanges;
import assize.ruleset.RuleSet;
import assize.text.SourceFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes what changed between two editions of a rule set. */
@Command(
    name = "compare",
    description = "Writes what changed between two editions of a rule set.",
    mixinStandardHelpOptions = true)
final class CompareCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(index = "0", paramLabel = "OLD", description = "The older edition: a file or folder.")
  private Path old = Path.of("");

  @Parameters(index = "1", paramLabel = "NEW", description = "The newer edition: a file or folder.")
  private Path rules = Path.of("");

  @Option(
      names = "--record",
      paramLabel = "RECORD",
      description = "Write what the changes come to for this vehicle, too.")
  private Optional<Path> record = Optional.empty();

  @Option(
      names = "--out",
      paramLabel = "FILE.html",
      description = "Where to write the page; default: reports/NAME-changes.html.")
  private Optional<Path> out = Optional.empty();

  @Option(
      names = "--json",
      description = "Print the changes as one JSON object, and write no page.")
  private boolean json;

  CompareCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    RuleSetPage page = new RuleSetPage(terminal, spec, out);
    InputLoader inputs = new InputLoader(terminal);
    List<Diagnostic> found = new ArrayList<>();
    Result<RuleSet> before = inputs.rules(old);
    found.addAll(before.diagnostics());
    Result<RuleSet> after = inputs.rules(rules);
    found.addAll(after.diagnostics());
    Optional<VehicleRecord> vehicle =
        before
            .value()
            .flatMap(older -> after.value().flatMap(newer -> vehicle(older, newer, found)));
    if (!inputs.report(found.stream().distinct().toList(), false)) {
      return Exit.BAD_INPUT;
    }
    RuleSet older = before.value().orElseThrow();
    RuleSet newer = after.value().orElseThrow();
    EditionComparison editions = EditionComparison.between(older, newer);
    if (editions.isTooMuch()) {
      inputs.report(List.of(tooMuch()), false);
      return Exit.BAD_INPUT;
    }
    List<String> left = new ArrayList<>();
    Optional<VehicleComparison> difference =
        vehicle.map(
            it ->
                VehicleComparison.of(
                    editions,
                    Judge.judge(older, carried(it, older, left), Optional.empty()),
                    Judge.judge(newer, carried(it, newer, left), Optional.empty())));
    ChangesView view = ChangesViewFactory.of(editions, difference, left);
    if (json) {
      terminal.result(ChangesJson.of(editions, view, difference));
      return Exit.DONE;
    }
    page.write("-changes.html", newer, HtmlChanges.render(view));
    view.summary().forEach(line -> terminal.result("  " + line));
    return Exit.DONE;
  }

  /**
   * Reads the record by the newer edition, or by the older where it was written for that; what is
   * wrong with it by both is told as the newer sees it.
   */
  private Optional<VehicleRecord> vehicle(RuleSet older, RuleSet newer, List<Diagnostic> found) {
    if (record.isEmpty()) {
      return Optional.empty();
    }
    Result<VehicleRecord> read = RecordReader.read(record.get(), newer);
    if (read.value().isEmpty()) {
      Result<VehicleRecord> again = RecordReader.read(record.get(), older);
      read = again.value().isPresent() ? again : read;
    }
    found.addAll(read.diagnostics());
    return read.value();
  }

  private Diagnostic tooMuch() {
    SourceFile file = new SourceFile(RecordFileFinder.shown(rules), "");
    return Diagnostic.of(
        DiagnosticCode.TOO_MUCH_CHANGED,
        file.span(0, 0),
        "what changed since the older edition bears on more than "
            + EditionComparison.MOST_BEARING
            + " items, counted for each change",
        "compare it with an edition in between");
  }

  private static VehicleRecord carried(VehicleRecord vehicle, RuleSet edition, List<String> left) {
    MigratedRecord carried = MigratedRecord.over(vehicle, edition);
    carried
        .left()
        .forEach(
            one ->
                left.add(
                    "Edition "
                        + edition.edition()
                        + " has no place for “"
                        + one.where()
                        + "”"
                        + (one.what().isEmpty() ? "" : ": " + one.what())
                        + "."));
    return carried.vehicle();
  }
}
