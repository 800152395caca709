package assize.cli;

import assize.report.text.TerminalEscaper;
import assize.ruleset.RuleSet;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** The page on a rule set that a command writes, and where. */
final class RuleSetPage {
  private final Terminal terminal;
  private final Optional<Path> out;

  /**
   * Takes the file that was typed.
   *
   * @throws ParameterException if it is not named like a page
   */
  RuleSetPage(Terminal terminal, CommandSpec spec, Optional<Path> out) {
    out.filter(it -> !it.toString().toLowerCase(Locale.ROOT).endsWith(".html"))
        .ifPresent(
            it -> {
              throw new ParameterException(
                  spec.commandLine(), "--out: name a file that ends in .html, not " + it);
            });
    this.terminal = terminal;
    this.out = out;
  }

  /**
   * Writes the page and says where it is.
   *
   * @param ending what its name has behind the rule set's where no file was typed
   */
  void write(String ending, RuleSet ruleSet, String page) {
    Path file = out.orElseGet(() -> AtomicFileWriter.reports().resolve(ruleSet.id() + ending));
    AtomicFileWriter.writePage(file, page);
    terminal.result(TerminalEscaper.of(ruleSet.name()) + "\n  " + file);
  }
}
