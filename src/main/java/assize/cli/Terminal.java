package assize.cli;

import assize.report.text.TerminalEscaper;
import java.io.Console;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/**
 * Where results and messages go.
 *
 * @param out for results
 * @param err for messages
 * @param colored whether messages may be colored
 * @param live whether a line of a message may be written over, as somebody looks on
 */
public record Terminal(PrintStream out, PrintStream err, boolean colored, boolean live) {
  /** Makes one on which nobody looks on. */
  public Terminal(PrintStream out, PrintStream err, boolean colored) {
    this(out, err, colored, false);
  }

  /** Says whether a line may be written over; that needs no color. */
  static boolean liveFor(Map<String, String> environment, boolean there) {
    String term = environment.getOrDefault("TERM", "");
    return there && !term.isEmpty() && !term.equals("dumb");
  }

  /** Says whether messages may be colored: on a terminal, and unless NO_COLOR is set. */
  static boolean colorsFor(Map<String, String> environment, boolean there) {
    String no = environment.getOrDefault("NO_COLOR", "");
    return liveFor(environment, there) && no.isEmpty();
  }

  /** Says whether a person sits at a terminal: from Java 22 on, a console alone does not tell. */
  static boolean isThere() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException e) {
      return true;
    }
  }

  /** Prints one line of a result. */
  void result(String line) {
    out.print(line + "\n");
  }

  /** Prints one line of a message; what would steer the terminal is shown instead. */
  void error(String line) {
    err.print(TerminalEscaper.of(line) + "\n");
  }

  PrintWriter outWriter() {
    return new PrintWriter(out, true, StandardCharsets.UTF_8);
  }

  PrintWriter errWriter() {
    return new PrintWriter(err, true, StandardCharsets.UTF_8);
  }
}
