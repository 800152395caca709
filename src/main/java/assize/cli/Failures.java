package assize.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.InvalidPathException;

/** Says what failed around the program: disks, memory, names of files. */
final class Failures {
  private Failures() {}

  /**
   * Says what failed, if it is no fault of ours.
   *
   * @return how the command ends
   * @throws Exception the problem itself, if it is
   */
  static int say(Terminal terminal, Exception problem) throws Exception {
    if (problem instanceof OutputFile.CannotWrite) {
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
    throw problem;
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

  /** Says that there is too little memory for what is to be done; what was staged goes. */
  static int tooLarge(Terminal terminal, VirtualMachineError problem) {
    terminal.error(
        problem instanceof OutOfMemoryError
            ? "there is too little memory for this; nothing was written. Give it more, as in: java"
                + " -Xmx2g -jar assize.jar"
            : "something here is nested too deeply to be worked on; nothing was written");
    return Exit.CANNOT_WRITE;
  }
}
