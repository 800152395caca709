package assize.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import assize.cli.Main;
import assize.cli.Terminal;
import assize.report.sheet.Sheets;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** One page at least of every kind that Assize writes; a new kind gets a line here. */
final class Pages {
  private Pages() {}

  /** Writes the demonstration and all kinds of pages of it in a folder, and returns them. */
  static List<Path> in(Path folder) throws IOException {
    List<Path> pages = new ArrayList<>(DemoReports.in(folder));
    String record = folder.resolve("l45-4388.yaml").toString();
    pages.addAll(first(1, folder.resolve("dossier"), "dossier", record));
    pages.addAll(first(1, folder.resolve("results"), "results", folder.toString(), "--no-reports"));
    pages.addAll(first(1, folder.resolve("shared"), "judge", "--redact", record));
    Path half = folder.resolve("l41-half-recorded.yaml");
    Path sheet = folder.resolve("sheet").resolve("l41-sheet.html");
    Sheets.run("sheet", half.toString(), "--out", sheet.toString());
    pages.add(sheet);
    pages.add(
        handbook(folder.resolve("handbook.html"), "handbook", folder.resolve("quillhurst-q.yaml")));
    Path yard = Path.of("src/test/resources/assize/handbook");
    pages.add(
        handbook(
            folder.resolve("changes.html"),
            "compare",
            yard.resolve("older.yaml"),
            yard.resolve("newer.yaml"),
            "--record",
            yard.resolve("truck.yaml")));
    return List.copyOf(pages);
  }

  private static Path handbook(Path out, Object... words) {
    String[] all =
        Stream.concat(Stream.of(words), Stream.of("--out", out))
            .map(String::valueOf)
            .toArray(String[]::new);
    ByteArrayOutputStream messages = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(messages, true, StandardCharsets.UTF_8);
    int exit = Main.run(new Terminal(stream, stream, false), all);
    assertThat(exit).as(messages.toString(StandardCharsets.UTF_8)).isZero();
    return out;
  }

  private static List<Path> first(int count, Path out, String... command) throws IOException {
    ByteArrayOutputStream messages = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(messages, true, StandardCharsets.UTF_8);
    String[] all =
        Stream.concat(Stream.of(command), Stream.of("--out", out.toString()))
            .toArray(String[]::new);
    int exit = Main.run(new Terminal(stream, stream, false), all);
    assertThat(exit).as(messages.toString(StandardCharsets.UTF_8)).isZero();
    try (Stream<Path> written = Files.list(out)) {
      return written
          .filter(path -> path.toString().endsWith(".html"))
          .sorted()
          .limit(count)
          .toList();
    }
  }
}
