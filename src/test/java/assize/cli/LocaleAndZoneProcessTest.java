package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as a process of its own: exit codes, letters, pipes, and machines set otherwise. */
@Tag("slow")
class LocaleAndZoneProcessTest {
  private static final List<String> TURKISH =
      List.of(
          "-Duser.language=tr",
          "-Duser.country=TR",
          "-Duser.timezone=Pacific/Kiritimati",
          "-Dfile.encoding=ISO-8859-9");

  private CommandBench bench = new CommandBench(Path.of(""));

  @BeforeEach
  void lay(@TempDir Path folder) {
    bench = CommandBench.in(folder);
  }

  private ProcessBuilder program(List<String> settings, Object... words) {
    List<String> line = new ArrayList<>();
    line.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    line.addAll(List.of("-XX:TieredStopAtLevel=1", "-Xshare:auto"));
    line.addAll(settings);
    line.addAll(List.of("-cp", System.getProperty("java.class.path", ""), "assize.cli.Main"));
    for (Object word : words) {
      line.add(word.toString());
    }
    ProcessBuilder builder = new ProcessBuilder(line);
    builder.environment().put("LC_ALL", "C");
    builder.environment().remove("JAVA_TOOL_OPTIONS");
    return builder
        .redirectOutput(bench.at("out.txt").toFile())
        .redirectError(bench.at("err.txt").toFile());
  }

  private CommandResult run(List<String> settings, Object... words) throws Exception {
    int exit = program(settings, words).start().waitFor();
    return new CommandResult(exit, read("out.txt"), read("err.txt"));
  }

  private String read(String name) throws IOException {
    return Files.readString(bench.at(name), StandardCharsets.UTF_8);
  }

  @Test
  void givesTheSameBytesInTurkishADayAhead() throws Exception {
    Path demo = bench.at("demo");
    Path there = bench.at("there");
    assertThat(CommandResult.of("demo", demo).exit()).isZero();
    CommandResult far = run(TURKISH, "demo", there);
    assertThat(far.exit()).as(far.err()).isZero();
    assertThat(CommandBench.content(there)).isEqualTo(CommandBench.content(demo));
    Path record = demo.resolve("l45-4388.yaml");
    assertThat(run(TURKISH, "judge", record, "--json", "-"))
        .isEqualTo(CommandResult.of("judge", record, "--json", "-"));
    Path book = bench.at("book.html");
    Path farBook = bench.at("far-book.html");
    assertThat(
            CommandResult.of("handbook", demo.resolve("quillhurst-q.yaml"), "--out", book).exit())
        .isZero();
    assertThat(run(TURKISH, "handbook", demo.resolve("quillhurst-q.yaml"), "--out", farBook).exit())
        .isZero();
    assertThat(Files.readString(farBook)).isEqualTo(Files.readString(book));
    assertThat(run(TURKISH, "check", bench.at("wrong.yaml")))
        .isEqualTo(CommandResult.of("check", bench.at("wrong.yaml")));
  }

  @Test
  void writesItsLettersAndEndsAsItShould() throws Exception {
    assertThat(run(TURKISH, "color", "1,2,3", "1,2,4"))
        .isEqualTo(CommandResult.of("color", "1,2,3", "1,2,4"));
    assertThat(run(List.of(), "jugde").exit()).isEqualTo(2);
    assertThat(run(List.of(), "date", "soon").exit()).isEqualTo(1);
  }

  @Test
  void saysWhenNobodyTakesTheResult() throws Exception {
    Process process =
        program(List.of(), "demo", bench.at("demo"), "--json")
            .redirectOutput(ProcessBuilder.Redirect.PIPE)
            .start();
    process.getInputStream().close();
    assertThat(process.waitFor()).isEqualTo(3);
    assertThat(read("err.txt")).isEqualTo("can't write to standard output\n");
  }
}
