package assize.cli;

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
 */
public record Terminal(PrintStream out, PrintStream err, boolean colored) {
  /** Says whether messages may be colored: on a terminal, and unless NO_COLOR is set. */
  static boolean colorsFor(Map<String, String> environment) {
    String no = environment.getOrDefault("NO_COLOR", "");
    String term = environment.getOrDefault("TERM", "");
    return System.console() != null && no.isEmpty() && !term.isEmpty() && !term.equals("dumb");
  }

  /** Prints one line of a result. */
  void result(String line) {
    out.print(line + "\n");
  }

  /** Prints one line of a message. */
  void error(String line) {
    err.print(line + "\n");
  }

  PrintWriter outWriter() {
    return new PrintWriter(out, true, StandardCharsets.UTF_8);
  }

  PrintWriter errWriter() {
    return new PrintWriter(err, true, StandardCharsets.UTF_8);
  }
}
