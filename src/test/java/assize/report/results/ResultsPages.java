package assize.report.results;

import static org.assertj.core.api.Assertions.assertThat;

import assize.cli.Main;
import assize.cli.Terminal;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** The results pages that the program writes. */
final class ResultsPages {
  private ResultsPages() {}

  /** Judges all in a folder and returns the results page. */
  static Path of(Path folder, Path out, String... more) {
    ByteArrayOutputStream messages = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(messages, true, StandardCharsets.UTF_8);
    String[] words = new String[4 + more.length];
    System.arraycopy(more, 0, words, 4, more.length);
    words[0] = "results";
    words[1] = folder.toString();
    words[2] = "--out";
    words[3] = out.toString();
    int exit = Main.run(new Terminal(stream, stream, false), words);
    assertThat(exit).as(messages.toString(StandardCharsets.UTF_8)).isZero();
    return out.resolve("results.html");
  }
}
