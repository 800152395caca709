package assize.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.InvalidPathException;
import java.util.List;
import picocli.CommandLine.ParameterException;

/** Says what failed around the program (disks, memory, names of files) or in the program itself. */
final class IoErrorMessages {
  /** The environment variable by which a failure of the program is printed with its trace. */
  static final String TRACE = "ASSIZE_TRACE";

  private IoErrorMessages() {}

  /** Says whether a person is told of a problem as of one around the program. */
  static boolean isSaid(Throwable problem) {
    return problem instanceof AtomicFileWriter.CannotWrite
        || problem instanceof UncheckedIOException
        || problem instanceof IOException
        || problem instanceof InvalidPathException
        || problem instanceof ParameterException;
  }

  /**
   * Says what failed.
   *
   * @param named what the command line names, for a failure that does not know its file
   * @return how the command ends
   */
  static int say(Terminal terminal, Throwable problem, List<String> named) {
    if (problem instanceof AtomicFileWriter.CannotWrite) {
      terminal.error(String.valueOf(problem.getMessage()));
      return Exit.CANNOT_WRITE;
    }
    if (problem instanceof UncheckedIOException || problem instanceof IOException) {
      terminal.error("the disk failed: " + problem.getMessage());
      return Exit.CANNOT_WRITE;
    }
    if (problem instanceof InvalidPathException path) {
      terminal.error("error: " + unnameable(path.getInput()));
      return Exit.BAD_INPUT;
    }
    if (problem instanceof OutOfMemoryError) {
      terminal.error(
          "there is too little memory for this; nothing was written. Give it more, as in: java"
              + " -Xmx2g -jar assize.jar");
      return Exit.CANNOT_WRITE;
    }
    String at = problem instanceof Bug bug ? bug.file() : String.join(" ", named);
    ("error: " + bug(at, problem)).lines().forEach(terminal::error);
    terminal.error("Nothing more was written.");
    trace(terminal, problem);
    return Exit.FAILED;
  }

  /** Words a failure of the program itself, in lines. */
  static String bug(String at, Throwable problem) {
    Throwable cause = problem;
    while (cause instanceof Bug && cause.getCause() != null) {
      cause = cause.getCause();
    }
    String message = String.valueOf(cause.getMessage()).lines().findFirst().orElse("");
    String what =
        cause instanceof StackOverflowError
            ? "something here is nested too deeply to be worked on"
            : "Assize failed, and not by your mistake: "
                + cause.getClass().getSimpleName()
                + (cause.getMessage() == null ? "" : ": " + message);
    return (at.isEmpty() ? "" : at + ": ")
        + what
        + "\nSet "
        + TRACE
        + "=1, run it again, and report what is printed then";
  }

  /** Prints where a failure of the program came from, for those who mend it and ask for that. */
  static void trace(Terminal terminal, Throwable problem) {
    if (!System.getenv().getOrDefault(TRACE, "").isEmpty()) {
      problem.printStackTrace(terminal.err());
    }
  }

  /** Says that the system can't name a file. */
  static String unnameable(String name) {
    String encoding = System.getProperty("sun.jnu.encoding", "");
    return encoding.startsWith("UTF")
        ? "no file can have this name here: " + name
        : "a file's name has letters that this system's language setting can't write ("
            + encoding
            + "); set LC_ALL=C.UTF-8, or give the file a name in plain letters";
  }
}
