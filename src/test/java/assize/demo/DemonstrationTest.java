package assize.demo;

import static org.assertj.core.api.Assertions.assertThat;

import assize.Pinned;
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
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The reports in {@code reports/} are what the demonstration's records are judged to be. */
class DemonstrationTest {
  private static final Path RULES = Path.of("rules");
  private static final Path REPORTS = Path.of("reports");

  @TempDir private Path folder = Path.of("");

  @Tag("pinned")
  @ParameterizedTest
  @ValueSource(strings = {"l45-4388", "l41-half-recorded", "q-1187"})
  void isJudgedAsTheReportsShow(String name) throws IOException {
    byte[] page = judge(RULES, name);
    Pinned.equal(REPORTS.resolve(name + ".html"), new String(page, StandardCharsets.UTF_8));
  }

  /** Whoever checks the project out elsewhere gets the same bytes, and no path of that machine. */
  @ParameterizedTest
  @ValueSource(strings = {"l45-4388", "l41-half-recorded", "q-1187"})
  void isTheSameWhereverTheFilesLie(String name) throws IOException {
    Path elsewhere = folder.resolve("a checkout/somewhere else");
    try (Stream<Path> all = Files.walk(RULES)) {
      for (Path one : all.filter(Files::isRegularFile).toList()) {
        Path copy = elsewhere.resolve(RULES.relativize(one).toString());
        Files.createDirectories(copy.getParent());
        Files.copy(one, copy);
      }
    }
    byte[] page = judge(RULES, name);
    assertThat(judge(elsewhere, name)).isEqualTo(page);
    assertThat(judge(RULES.toAbsolutePath(), name)).isEqualTo(page);
    String text = new String(page, StandardCharsets.UTF_8).replaceAll("base64,[A-Za-z0-9+/=]*", "");
    for (String path :
        List.of(RULES.toAbsolutePath().toString(), folder.toString(), "file:", "rules/" + name)) {
      assertThat(text.contains(path)).as(path).isFalse();
    }
  }

  private byte[] judge(Path rules, String name) throws IOException {
    Path out = Files.createTempDirectory(folder, "reports");
    String record = rules.resolve(name + ".yaml").toString();
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    PrintStream both = new PrintStream(said, true, StandardCharsets.UTF_8);
    int exit = Main.run(new Terminal(both, both, false), "judge", record, "--out", out.toString());
    assertThat(exit).as(said.toString(StandardCharsets.UTF_8)).isZero();
    return Files.readAllBytes(out.resolve(name + ".html"));
  }
}
