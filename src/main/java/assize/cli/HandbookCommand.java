package assize.cli;

import assize.diagnostic.Result;
import assize.report.handbook.HandbookViewFactory;
import assize.report.handbook.HtmlHandbook;
import assize.ruleset.RuleSet;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a rule set as a readable handbook. */
@Command(
    name = "handbook",
    description = "Writes a rule set as a readable handbook.",
    mixinStandardHelpOptions = true)
final class HandbookCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(index = "0", paramLabel = "RULESET", description = "A rule set: a file or folder.")
  private Path rules = Path.of("");

  @Option(
      names = "--out",
      paramLabel = "FILE.html",
      description = "Where to write the page; default: reports/NAME-handbook.html.")
  private Optional<Path> out = Optional.empty();

  HandbookCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    RuleSetPage page = new RuleSetPage(terminal, spec, out);
    InputLoader inputs = new InputLoader(terminal);
    Result<RuleSet> read = inputs.rules(rules);
    if (!inputs.report(read.diagnostics(), false)) {
      return Exit.BAD_INPUT;
    }
    RuleSet ruleSet = read.value().orElseThrow();
    page.write("-handbook.html", ruleSet, HtmlHandbook.render(HandbookViewFactory.of(ruleSet)));
    return Exit.DONE;
  }
}
