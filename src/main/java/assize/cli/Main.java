package assize.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.lang.module.ModuleDescriptor;
import java.lang.ref.Reference;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.UsageMessageSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Starts the program: {@code assize COMMAND ...}. */
@Command(
    name = "assize",
    description = "Judges how authentic a restored vehicle is against a written standard.",
    mixinStandardHelpOptions = true,
    versionProvider = Main.Version.class,
    customSynopsis = "assize COMMAND [OPTIONS]")
public final class Main implements Runnable {
  /** The commands that tell of all commands. */
  private static final Set<String> TELLING = Set.of("completion", "manual");

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
   *     written, 4 the program itself failed
   */
  public static int run(Terminal terminal, String... args) {
    return run(terminal, FileWatcher.live(terminal), args);
  }

  /** Runs one command; one that goes on at each save keeps this watch. */
  static int run(Terminal terminal, FileWatcher watch, String... args) {
    String[] words =
        ArgumentNormalizer.ordered(
            ProgramCommand.ALL.stream().map(ProgramCommand::name).toList(), args);
    CommandLine line = line(terminal, watch, words);
    int exit;
    try {
      exit = line.execute(words);
    } catch (RuntimeException | Error e) {
      exit = IoErrorMessages.say(terminal, e, List.of(words));
    }
    terminal.out().flush();
    if (exit == Exit.DONE && terminal.out().checkError()) {
      terminal.error("can't write to standard output");
      return Exit.CANNOT_WRITE;
    }
    return exit;
  }

  /** Returns the commands that have to be looked at: making all of them ready takes its time. */
  private static List<ProgramCommand> wanted(String... words) {
    List<ProgramCommand> named =
        ProgramCommand.ALL.stream()
            .filter(it -> words.length > 0 && it.name().equals(words[0]))
            .filter(it -> !TELLING.contains(it.name()))
            .toList();
    return named.isEmpty() ? ProgramCommand.ALL : named;
  }

  private static CommandLine line(Terminal terminal, FileWatcher watch, String... words) {
    CommandLine line = new CommandLine(new Main(), new CommandFactory(terminal, watch));
    wanted(words).forEach(command -> line.addSubcommand(command.name(), command.command()));
    line.getHelpSectionMap()
        .put(
            UsageMessageSpec.SECTION_KEY_COMMAND_LIST,
            help -> CommandOverview.text(ProgramCommand.ALL));
    // The line's own method would set these for each command too.
    line.getCommandSpec()
        .usageMessage()
        .sectionKeys(
            List.of(
                UsageMessageSpec.SECTION_KEY_SYNOPSIS_HEADING,
                UsageMessageSpec.SECTION_KEY_SYNOPSIS,
                UsageMessageSpec.SECTION_KEY_COMMAND_LIST));
    line.setOut(terminal.outWriter())
        .setErr(terminal.errWriter())
        .setExpandAtFiles(false)
        .setUsageHelpWidth(90)
        .setUsageHelpAutoWidth(false)
        .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
        .registerConverter(Path.class, OptionConverters::path)
        .registerConverter(LocalDate.class, OptionConverters::day)
        .setParameterExceptionHandler(
            (problem, arguments) -> {
              UsageErrors.words(problem).forEach(terminal::error);
              String command = problem.getCommandLine().getCommandSpec().qualifiedName();
              terminal.error("Try: " + command + " --help");
              return Exit.BAD_COMMAND_LINE;
            })
        .setExecutionExceptionHandler(
            (problem, command, parsed) -> IoErrorMessages.say(terminal, problem, List.of(words)));
    line.getSubcommands()
        .values()
        .forEach(command -> command.getCommandSpec().versionProvider(new Version()));
    return line;
  }

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(), "say what to do: " + String.join(", ", spec.subcommands().keySet()));
  }

  /** The version of the jar, or of the module in an image. */
  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      String ofJar = Main.class.getPackage().getImplementationVersion();
      Optional<String> ofModule =
          Optional.ofNullable(Main.class.getModule().getDescriptor())
              .flatMap(ModuleDescriptor::rawVersion);
      String version = Optional.ofNullable(ofJar).or(() -> ofModule).orElse("(built from source)");
      return new String[] {"assize " + version};
    }
  }
}
