package assize.cli;

import assize.clidoc.Bash;
import assize.clidoc.CommandLineModel;
import assize.clidoc.Fish;
import assize.clidoc.PowerShell;
import assize.clidoc.Zsh;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints what makes a shell complete commands, options and files. */
@Command(
    name = "completion",
    description = "Prints what lets a shell complete commands, options and files at the Tab key.",
    mixinStandardHelpOptions = true)
final class CompletionCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "SHELL", description = "The shell: bash, zsh, fish or powershell.")
  private Optional<Shell> shell = Optional.empty();

  @Spec private CommandSpec spec = CommandSpec.create();

  CompletionCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  /** Shells, as they are typed. */
  enum Shell {
    bash,
    zsh,
    fish,
    powershell
  }

  @Override
  public Integer call() {
    CommandLineModel program = CommandCatalog.program(spec.root());
    terminal
        .out()
        .print(
            switch (shell.orElseThrow()) {
              case bash -> Bash.completion(program);
              case zsh -> Zsh.completion(program);
              case fish -> Fish.completion(program);
              case powershell -> PowerShell.completion(program);
            });
    return Exit.DONE;
  }
}
