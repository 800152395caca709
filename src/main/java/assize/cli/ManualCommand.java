package assize.cli;

import assize.clidoc.Manual;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints the manual page. */
@Command(
    name = "manual",
    description = "Prints the manual page for man: every command with its options.",
    mixinStandardHelpOptions = true)
final class ManualCommand implements Callable<Integer> {
  private static final List<String> EXIT_CODES =
      List.of(
          "Done.",
          "A rule set, a record or a value has errors; each is printed.",
          "The command line is wrong.",
          "An output could not be written.",
          "Assize itself failed; the message says what to report.");

  private final Terminal terminal;

  @Spec private CommandSpec spec = CommandSpec.create();

  ManualCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    terminal.out().print(Manual.page(CommandCatalog.program(spec.root()), EXIT_CODES));
    return Exit.DONE;
  }
}
