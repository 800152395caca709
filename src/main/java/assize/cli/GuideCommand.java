package assize.cli;

import assize.diagnostic.Result;
import assize.report.html.HtmlGuide;
import assize.report.view.GuideViews;
import assize.ruleset.RuleSet;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a rule set as a readable book. */
@Command(
    name = "guide",
    description = "Writes a rule set as a readable book, or what changed since an older edition.",
    mixinStandardHelpOptions = true)
final class GuideCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(index = "0", paramLabel = "RULESET", description = "A rule set: a file or folder.")
  private Path rules = Path.of("");

  @Option(
      names = "--out",
      paramLabel = "FILE.html",
      description = "Where to write the book; default: reports/NAME-guide.html.")
  private Optional<Path> out = Optional.empty();

  GuideCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Inputs inputs = new Inputs(terminal);
    Result<RuleSet> read = inputs.rules(rules);
    if (!inputs.report(read.diagnostics(), false)) {
      return Exit.BAD_INPUT;
    }
    RuleSet ruleSet = read.value().orElseThrow();
    Path file = out.orElseGet(() -> Path.of("reports", ruleSet.id() + "-guide.html"));
    OutputFile.write(file, HtmlGuide.render(GuideViews.of(ruleSet)));
    terminal.result(file.toString());
    return Exit.DONE;
  }
}
