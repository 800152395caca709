package assize.cli;

import assize.diagnostic.NameSuggestions;
import assize.report.text.TerminalEscaper;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Explains a message: what is wrong, why that matters, and how it is put right. */
@Command(
    name = "explain",
    description = "Explains a message by its code: what is wrong, and how to put it right.",
    mixinStandardHelpOptions = true)
final class ExplainCommand implements Callable<Integer> {
  /** A code as it stands in a message: {@code error[unknown-finish]}. */
  private static final Pattern IN_MESSAGE = Pattern.compile("[a-z]+\\[([^\\]]*)]:?");

  private final Terminal terminal;

  @Parameters(
      paramLabel = "CODE",
      description = "The code that stands in a message between brackets, as in unknown-finish.")
  private String code = "";

  ExplainCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Matcher whole = IN_MESSAGE.matcher(code);
    String wanted = whole.matches() ? whole.group(1) : code;
    MessageReference reference = MessageReference.read();
    Optional<String> text = reference.text(wanted);
    if (text.isEmpty()) {
      String hint = NameSuggestions.hint(wanted, reference.codes()).map(it -> "; " + it).orElse("");
      terminal.error("error: there is no message \"" + TerminalEscaper.of(wanted) + "\"" + hint);
      return Exit.BAD_INPUT;
    }
    terminal.result(wanted + "\n\n" + text.get());
    return Exit.DONE;
  }
}
