package assize.cli;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.Result;
import assize.judge.Judge;
import assize.judgment.Judgment;
import assize.judgment.Notice;
import assize.newrecord.RecordTemplate;
import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.report.sheet.InspectionView;
import assize.report.sheet.InspectionViewFactory;
import assize.ruleset.RuleSet;
import assize.text.Json;
import assize.text.SourceFile;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
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

/** Writes a record to fill in. */
@Command(
    name = "new",
    description = {
      "Writes a record to fill in: only the items that apply to the vehicle, each with where to"
          + " look and what is expected. What is not known of the vehicle is left out."
    },
    mixinStandardHelpOptions = true)
final class NewCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(index = "0", paramLabel = "RULESET", description = "A rule set: a file or folder.")
  private Path rules = Path.of("");

  @Parameters(
      index = "1",
      paramLabel = "RECORD",
      description = "The record to write: a file that ends in .yaml, beside the rule set.")
  private Path record = Path.of("");

  @Mixin private VehicleOptions options = new VehicleOptions();

  @Option(names = "--json", description = "Say as JSON what was written.")
  private boolean json;

  @Spec private CommandSpec spec = CommandSpec.create();

  NewCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    if (!ArgumentNormalizer.isYaml(record.toString())) {
      throw new ParameterException(
          spec.commandLine(), "RECORD: name a file that ends in .yaml, not " + record);
    }
    InputLoader inputs = new InputLoader(terminal);
    Result<RuleSet> read = inputs.rules(rules);
    if (!inputs.report(read.diagnostics(), false)) {
      return Exit.BAD_INPUT;
    }
    RuleSet ruleSet = read.value().orElseThrow();
    Optional<String> named =
        RuleSetReference.from(record, rules)
            .match(
                Optional::of,
                bad -> {
                  terminal.error("error: " + bad.reason());
                  return Optional.empty();
                });
    if (named.isEmpty()) {
      return Exit.BAD_INPUT;
    }
    VehicleRecord vehicle = options.vehicle(ruleSet, RuleSetReference.id(record), named.get());
    if (Files.exists(record)) {
      return isThere();
    }
    Judgment judgment = Judge.judge(ruleSet, vehicle, Optional.empty());
    InspectionView view = InspectionViewFactory.of(judgment);
    String text =
        Modeline.of(record, Modeline.RECORD).map(it -> it + "\n").orElse("")
            + RecordTemplate.text(view, vehicle, ruleSet, record.toString().replace('\\', '/'));
    check(text, ruleSet);
    AtomicFileWriter.check(List.of(record));
    try {
      Files.createDirectories(AtomicFileWriter.folderOf(record));
      NewFileWriter.write(record, text);
    } catch (FileAlreadyExistsException e) {
      return isThere();
    } catch (IOException e) {
      throw AtomicFileWriter.cannotWrite(record, e);
    }
    judgment.notices().stream().map(Notice::words).forEach(terminal::error);
    report(view);
    return Exit.DONE;
  }

  private int isThere() {
    terminal.error("error: " + record + " is there already and stays as it is; name a new file");
    return Exit.CANNOT_WRITE;
  }

  /** What is written has to be a record without fault; if it is not, that is a fault of ours. */
  private static void check(String text, RuleSet rules) {
    List<Diagnostic> found =
        RecordReader.parse(new SourceFile("record.yaml", text), rules).diagnostics();
    if (!found.isEmpty()) {
      throw new IllegalStateException("a new record reads with " + found);
    }
  }

  private void report(InspectionView view) {
    long mayApply =
        view.areas().stream()
            .flatMap(area -> area.items().stream())
            .filter(item -> !item.mayApply().isEmpty())
            .count();
    if (json) {
      terminal.result(
          Json.object()
              .text("file", record.toString().replace('\\', '/'))
              .text("record", view.record())
              .text("rule_set", view.rules())
              .whole("items", view.items())
              .whole("aspects", view.aspects())
              .whole("may_apply", mayApply)
              .whole("minutes", view.minutes())
              .toString());
      return;
    }
    terminal.result(
        record
            + ": "
            + view.items()
            + (view.items() == 1 ? " item" : " items")
            + " to look at; a walk round the vehicle takes "
            + view.time()
            + ".");
    if (mayApply > 0) {
      terminal.result(
          mayApply
              + (mayApply == 1 ? " of them depends" : " of them depend")
              + " on the build day, or on equipment, market or works that are not stated.");
    }
    terminal.result("Put what you find behind the colons, then: assize judge " + record);
  }
}
