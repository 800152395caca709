package assize.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import assize.cli.Main;
import assize.cli.Terminal;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The reports that the demonstration writes. */
public final class DemoReports {
  private DemoReports() {}

  /** Unpacks and judges the demonstration in a folder, and returns its reports by name. */
  public static List<Path> in(Path folder) throws IOException {
    ByteArrayOutputStream messages = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(messages, true, StandardCharsets.UTF_8);
    int exit = Main.run(new Terminal(stream, stream, false), "demo", folder.toString());
    assertThat(exit).as(messages.toString(StandardCharsets.UTF_8)).isZero();
    try (Stream<Path> reports = Files.list(folder.resolve("reports"))) {
      return reports.filter(path -> path.toString().endsWith(".html")).sorted().toList();
    }
  }
}
