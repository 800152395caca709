package assize.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.lang.ref.Reference;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Starts the program: {@code assize VERB ...}. */
@Command(
    name = "assize",
    description = "Judges how authentic a restored vehicle is against a written standard.",
    mixinStandardHelpOptions = true,
    versionProvider = Main.Version.class,
    synopsisSubcommandLabel = "VERB",
    subcommands = {
      DemoCommand.class,
      JudgeCommand.class,
      LintCommand.class,
      StartCommand.class,
      RosterCommand.class,
      DossierCommand.class,
      SheetCommand.class,
      GuideCommand.class,
      DateCommand.class,
      ColorCommand.class,
      MergeCommand.class,
      NumberCommand.class,
      VouchCommand.class,
      SchemaCommand.class,
      CompletionCommand.class,
      ManualCommand.class
    })
public final class Main implements Runnable {
  private static final int STANDARD_STREAMS = 3;
  private static final Path NOTHING = Path.of("/dev/null");

  @Spec private CommandSpec spec = CommandSpec.create();

  /** Runs one command and ends the program with its exit code. */
  public static void main(String[] args) {
    List<InputStream> taken = new ArrayList<>();
    takeStandardPlaces(taken);
    PrintStream out = utf8(FileDescriptor.out);
    PrintStream err = utf8(FileDescriptor.err);
    boolean there = Terminal.isThere();
    boolean colored = Terminal.colorsFor(System.getenv(), there);
    boolean live = Terminal.liveFor(System.getenv(), there);
    int exit = run(new Terminal(out, err, colored, live), args);
    err.flush();
    Reference.reachabilityFence(taken);
    System.exit(exit);
  }

  /**
   * Where a caller has closed the standard streams, the first files that are opened take their
   * places, and messages would end up in a report; so nothing is opened there first.
   */
  private static void takeStandardPlaces(List<InputStream> taken) {
    try {
      for (int stream = 0; stream < STANDARD_STREAMS; stream++) {
        taken.add(Files.newInputStream(NOTHING));
      }
    } catch (IOException e) {
      return;
    }
  }

  private static PrintStream utf8(FileDescriptor descriptor) {
    return new PrintStream(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
  }

  /**
   * Runs one command.
   *
   * @return 0 done, 1 the input has errors, 2 the command line is wrong, 3 an output could not be
   *     written
   */
  public static int run(Terminal terminal, String... args) {
    return run(terminal, Watch.live(terminal), args);
  }

  /** Runs one command; one that goes on at each save keeps this watch. */
  static int run(Terminal terminal, Watch watch, String... args) {
    CommandLine line = line(terminal, watch);
    int exit;
    try {
      exit = line.execute(Arguments.ordered(line.getSubcommands().keySet(), args));
    } catch (OutOfMemoryError | StackOverflowError e) {
      exit = Failures.tooLarge(terminal, e);
    }
    terminal.out().flush();
    if (exit == Exit.DONE && terminal.out().checkError()) {
      terminal.error("can't write to standard output");
      return Exit.CANNOT_WRITE;
    }
    return exit;
  }

  private static CommandLine line(Terminal terminal, Watch watch) {
    CommandLine line =
        new CommandLine(new Main(), new TerminalFactory(terminal, watch))
            .setOut(terminal.outWriter())
            .setErr(terminal.errWriter())
            .setExpandAtFiles(false)
            .setUsageHelpWidth(90)
            .setUsageHelpAutoWidth(false)
            .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
            .registerConverter(Path.class, Typed::path)
            .registerConverter(LocalDate.class, Typed::day)
            .setParameterExceptionHandler(
                (problem, arguments) -> {
                  Mistakes.words(problem).forEach(terminal::error);
                  String verb = problem.getCommandLine().getCommandSpec().qualifiedName();
                  terminal.error("Try: " + verb + " --help");
                  return Exit.BAD_COMMAND_LINE;
                })
            .setExecutionExceptionHandler(
                (problem, command, parsed) -> Failures.say(terminal, problem));
    line.getSubcommands()
        .values()
        .forEach(verb -> verb.getCommandSpec().versionProvider(new Version()));
    return line;
  }

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(), "say what to do: " + String.join(", ", spec.subcommands().keySet()));
  }

  /** The version of the jar. */
  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      String version = Main.class.getPackage().getImplementationVersion();
      return new String[] {"assize " + (version == null ? "(built from source)" : version)};
    }
  }
}
