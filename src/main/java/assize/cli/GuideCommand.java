package assize.cli;

import assize.diagnostic.Code;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.Result;
import assize.editions.Carried;
import assize.editions.Editions;
import assize.editions.VehicleDifference;
import assize.judge.Judge;
import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.report.html.HtmlChanges;
import assize.report.html.HtmlGuide;
import assize.report.text.Visible;
import assize.report.view.ChangesView;
import assize.report.view.ChangesViews;
import assize.report.view.GuideViews;
import assize.ruleset.RuleSet;
import assize.text.SourceFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a rule set as a readable book, or what changed since an older edition of it. */
@Command(
    name = "guide",
    description = "Writes a rule set as a readable book, or what changed since an older edition.",
    mixinStandardHelpOptions = true)
final class GuideCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(index = "0", paramLabel = "RULESET", description = "A rule set: a file or folder.")
  private Path rules = Path.of("");

  @Option(
      names = "--out",
      paramLabel = "FILE.html",
      description =
          "Where to write the page; default: reports/NAME-guide.html, or"
              + " reports/NAME-changes.html.")
  private Optional<Path> out = Optional.empty();

  @Option(
      names = "--since",
      paramLabel = "OLD_RULESET",
      description = "Instead of the book, write what changed since this older edition.")
  private Optional<Path> since = Optional.empty();

  @Option(
      names = "--for",
      paramLabel = "RECORD",
      description = "With --since: what the changes come to for this vehicle.")
  private Optional<Path> record = Optional.empty();

  @Option(
      names = "--json",
      description = "With --since: print the changes as one JSON object, and write no page.")
  private boolean json;

  GuideCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    if (since.isEmpty() && (record.isPresent() || json)) {
      String option = json ? "--json" : "--for";
      throw new ParameterException(
          spec.commandLine(), option + " goes with --since OLD_RULESET, which is not given");
    }
    out.filter(it -> !it.toString().toLowerCase(Locale.ROOT).endsWith(".html"))
        .ifPresent(
            it -> {
              throw new ParameterException(
                  spec.commandLine(), "--out: name a file that ends in .html, not " + it);
            });
    Inputs inputs = new Inputs(terminal);
    List<Diagnostic> found = new ArrayList<>();
    Result<RuleSet> read = inputs.rules(rules);
    found.addAll(read.diagnostics());
    Optional<Result<RuleSet>> old = since.map(inputs::rules);
    old.ifPresent(it -> found.addAll(it.diagnostics()));
    Optional<RuleSet> now = read.value();
    Optional<RuleSet> before = old.flatMap(Result::value);
    Optional<VehicleRecord> vehicle =
        now.flatMap(newer -> before.flatMap(older -> vehicle(older, newer, found)));
    if (!inputs.report(found.stream().distinct().toList(), false)) {
      return Exit.BAD_INPUT;
    }
    RuleSet newer = now.orElseThrow();
    return before.map(older -> changes(older, newer, vehicle, inputs)).orElseGet(() -> book(newer));
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

  private int book(RuleSet newer) {
    write("-guide.html", newer, HtmlGuide.render(GuideViews.of(newer)));
    return Exit.DONE;
  }

  private int changes(
      RuleSet older, RuleSet newer, Optional<VehicleRecord> vehicle, Inputs inputs) {
    Editions editions = Editions.between(older, newer);
    if (editions.isTooMuch()) {
      inputs.report(List.of(tooMuch()), false);
      return Exit.BAD_INPUT;
    }
    List<String> left = new ArrayList<>();
    Optional<VehicleDifference> difference =
        vehicle.map(
            it ->
                VehicleDifference.of(
                    editions,
                    Judge.judge(older, carried(it, older, left), Optional.empty()),
                    Judge.judge(newer, carried(it, newer, left), Optional.empty())));
    ChangesView view = ChangesViews.of(editions, difference, left);
    if (json) {
      terminal.result(ChangesJson.of(editions, view, difference));
      return Exit.DONE;
    }
    write("-changes.html", newer, HtmlChanges.render(view));
    view.summary().forEach(line -> terminal.result("  " + line));
    return Exit.DONE;
  }

  private Diagnostic tooMuch() {
    SourceFile file = new SourceFile(RecordFiles.shown(rules), "");
    return Diagnostic.of(
        Code.TOO_MUCH_CHANGED,
        file.span(0, 0),
        "what changed since the older edition bears on more than "
            + Editions.MOST_BEARING
            + " items, counted for each change",
        "compare it with an edition in between");
  }

  private static VehicleRecord carried(VehicleRecord vehicle, RuleSet edition, List<String> left) {
    Carried carried = Carried.over(vehicle, edition);
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

  private void write(String ending, RuleSet ruleSet, String page) {
    Path file = out.orElseGet(() -> OutputFile.reports().resolve(ruleSet.id() + ending));
    OutputFile.writePage(file, page);
    terminal.result(Visible.of(ruleSet.name()) + "\n  " + file);
  }
}
