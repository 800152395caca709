package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The program where something around it is missing, closed or full, or does the same beside it. */
@Tag("slow")
class EnvironmentTest {
  private CommandBench bench = new CommandBench(Path.of(""));
  private Map<String, String> before = Map.of();

  @BeforeEach
  void lay(@TempDir Path folder) {
    bench = CommandBench.in(folder);
    before = bench.content();
  }

  private ProcessBuilder builder(List<String> line) {
    ProcessBuilder builder = new ProcessBuilder(line).directory(bench.folder().toFile());
    builder.environment().remove("JAVA_TOOL_OPTIONS");
    return builder.redirectErrorStream(true);
  }

  private static List<String> java(List<String> settings, String... words) {
    List<String> line = new ArrayList<>();
    line.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    line.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
    line.addAll(settings);
    line.addAll(List.of("-cp", System.getProperty("java.class.path", ""), "assize.cli.Main"));
    line.addAll(List.of(words));
    return line;
  }

  private static CommandResult run(ProcessBuilder builder) throws Exception {
    Process process = builder.start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return new CommandResult(process.waitFor(), said, "");
  }

  /** Runs a line of a shell, in which {@code $assize} is the program. */
  private CommandResult shell(String line) throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/bin/sh")) && Files.exists(Path.of("/dev/full")));
    String assize =
        java(List.of()).stream().map(it -> "'" + it + "'").collect(Collectors.joining(" "));
    return run(builder(List.of("/bin/sh", "-c", line.replace("$assize", assize))));
  }

  private void inputsAreUntouched() {
    Map<String, String> now = bench.content();
    before.forEach((name, text) -> assertThat(now.get(name)).as(name).isEqualTo(text));
  }

  /** A result that goes nowhere is told; a report is whole whatever becomes of messages. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "$assize judge one.yaml --json - > /dev/full           | 3 | can't write to standard output",
        "$assize check one.yaml > /dev/full                     | 3 | can't write to standard output",
        "$assize date 1934 >&-                                 | 3 | can't write to standard output",
        "$assize judge wrong.yaml 2>&-                         | 1 | ''",
        "$assize judge wrong.yaml 2> /dev/full                 | 1 | ''",
        "$assize judge one.yaml <&-                            | 0 | report",
        "$assize judge one.yaml --json=/dev/full               | 3 | no ordinary file",
        "$assize judge one.yaml --out rules.yaml               | 3 | a file stands where a folder",
        "$assize judge one.yaml --json=plain                   | 3 | is no JSON, and stays as it is",
        "$assize handbook rules.yaml --out rules.yaml          | 2 | a file that ends in .html",
        "$assize sheet one.yaml --out rules.yaml               | 2 | ends in .html, .xlsx, .csv"
      })
  void endsAsItShould(String line, int exit, String said) throws Exception {
    CommandResult ran = shell(line);
    assertThat(ran.exit()).as(ran.out()).isEqualTo(exit);
    assertThat(ran.out()).contains(said).doesNotContain("\tat ");
    inputsAreUntouched();
    if (Files.exists(bench.at("reports/one.html"))) {
      String page = Files.readString(bench.at("reports/one.html"));
      assertThat(page).startsWith("<!DOCTYPE html>").endsWith("</html>\n");
    }
  }

  /**
   * No message ends up in a page, where all three streams are closed and pages are opened first.
   */
  @ParameterizedTest
  @ValueSource(strings = {"judge one.yaml", "results . --skip-invalid"})
  void whatIsSaidToNobodyIsInNoPage(String words) throws Exception {
    int exit = shell("$assize " + words + " --out closed <&- >&- 2>&-").exit();
    // Where the system has put something writable in the place of its output, that takes it.
    assertThat(exit).isIn(Exit.DONE, Exit.CANNOT_WRITE);
    assertThat(CommandResult.of(in(words + " --out open")).exit()).isZero();
    assertThat(CommandBench.content(bench.at("closed")))
        .isEqualTo(CommandBench.content(bench.at("open")));
    inputsAreUntouched();
  }

  private Object[] in(String words) {
    return Stream.of(words.split(" "))
        .map(it -> it.matches("\\.|one.yaml|open") ? bench.at(it).toString() : it)
        .toArray();
  }

  /** A table that was written may have been filled in since. */
  @Test
  void aTableThatIsThereStays() throws IOException {
    Path table = bench.at("sheet.csv");
    assertThat(CommandResult.of("sheet", bench.at("one.yaml"), "--out", table).exit()).isZero();
    assertThat(CommandResult.of("sheet", bench.at("one.yaml"), "--out", table).exit()).isZero();
    String filled = Files.readString(table).replace("nickel", "chrome");
    Files.writeString(table, filled);
    CommandResult again = CommandResult.of("sheet", bench.at("one.yaml"), "--out", table);
    assertThat(again.exit()).isEqualTo(Exit.CANNOT_WRITE);
    assertThat(again.err())
        .isEqualTo(
            "can't write "
                + table
                + ": it is there already, and may be filled in; name a new file\n");
    assertThat(table).hasContent(filled);
  }

  /** No home, no fonts, no screen, no environment at all. */
  @Test
  void needsNeitherHomeNorFontsNorScreen() throws Exception {
    Path demo = bench.at("demo");
    assertThat(CommandResult.of("demo", demo).exit()).isZero();
    ProcessBuilder bare =
        builder(
            java(
                List.of("-Duser.home=?", "-Djava.awt.headless=true"),
                "judge",
                demo.resolve("q-1187.yaml").toString(),
                "--out",
                "bare"));
    bare.environment().clear();
    bare.environment().putAll(Map.of("FONTCONFIG_FILE", "/dev/null", "FONTCONFIG_PATH", "/none"));
    CommandResult ran = run(bare);
    assertThat(ran.exit()).as(ran.out()).isZero();
    assertThat(Files.readString(bench.at("bare/q-1187.html")))
        .isEqualTo(Files.readString(demo.resolve("reports/q-1187.html")))
        .contains("data:image/");
  }

  /** The rows of results wait where temporary files go; nothing else needs that folder. */
  @ParameterizedTest
  @CsvSource({"judge one.yaml,0", "judge one.yaml --redact,0", "merge one.yaml two.yaml,1"})
  void needsNoFolderForTemporaryFiles(String words, int exit) throws Exception {
    List<String> settings = List.of("-Djava.io.tmpdir=" + bench.at("nowhere"));
    CommandResult ran = run(builder(java(settings, words.split(" "))));
    assertThat(ran.exit()).as(ran.out()).isEqualTo(exit);
    assertThat(ran.out()).doesNotContain("\tat ", "nowhere");
  }

  @Test
  void resultsSayThatTheFolderForTemporaryFilesIsMissing() throws Exception {
    Path nowhere = bench.at("nowhere");
    CommandResult ran = run(builder(java(List.of("-Djava.io.tmpdir=" + nowhere), "results", ".")));
    assertThat(ran.out())
        .endsWith(
            "can't write "
                + nowhere
                + ": there is no such folder; rows wait there until the page is made: java"
                + " -Djava.io.tmpdir=DIR names another\n");
    assertThat(ran.exit()).isEqualTo(Exit.CANNOT_WRITE);
    assertThat(bench.content()).isEqualTo(before);
  }

  /** Letters that the system's language setting can't write. */
  @Test
  void saysWhatKeepsItFromAFilesName() throws Exception {
    assumeTrue(System.getProperty("sun.jnu.encoding", "").equals("UTF-8"));
    Files.copy(bench.at("rules.yaml"), bench.at("folder/small.yaml"));
    String record = Files.readString(bench.at("one.yaml"));
    Files.writeString(
        bench.at("folder/größe-ж.yaml"), record.replace("rules: rules", "rules: small"));
    for (String command : List.of("judge folder/größe-ж.yaml", "check folder")) {
      ProcessBuilder plain = builder(java(List.of(), command.split(" ")));
      plain.environment().put("LC_ALL", "POSIX");
      CommandResult ran = run(plain);
      assertThat(ran.exit()).as(ran.out()).isBetween(1, 2);
      assertThat(ran.out()).contains("set LC_ALL=C.UTF-8").doesNotContain("\tat ");
      plain.environment().put("LC_ALL", "C.UTF-8");
      assertThat(run(plain).out()).doesNotContain("LC_ALL", "\tat ");
    }
  }

  @Test
  void saysThatThereIsTooLittleMemory() throws Exception {
    ResultsFixture.write(bench.at("many"), "1", 0, 3);
    String note = "x".repeat(60_000) + "\n";
    String notes =
        IntStream.range(0, 60)
            .mapToObj(
                i -> "  e" + i + ": {document: rules.yaml, caption: \"" + note.strip() + "\"}\n")
            .collect(Collectors.joining());
    Path record = bench.at("many/v00000.yaml");
    Files.writeString(record, Files.readString(record) + "evidence:\n" + notes);
    Map<String, String> laid = bench.content();
    CommandResult ran = run(builder(java(List.of("-Xmx16m"), "results", "many", "--out", "out")));
    assertThat(ran.out())
        .isEqualTo(
            "there is too little memory for this; nothing was written. Give it more, as in: java"
                + " -Xmx2g -jar assize.jar\n");
    assertThat(ran.exit()).isEqualTo(Exit.CANNOT_WRITE);
    assertThat(bench.content()).isEqualTo(laid);
  }

  private List<CommandResult> atOnce(List<List<String>> lines) throws Exception {
    List<Process> processes = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      processes.add(
          builder(java(List.of(), lines.get(i).toArray(String[]::new)))
              .redirectOutput(bench.at("said-" + i).toFile())
              .start());
    }
    List<CommandResult> ran = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      ran.add(
          new CommandResult(
              processes.get(i).waitFor(), Files.readString(bench.at("said-" + i)), ""));
    }
    return ran;
  }

  private static List<String> words(String line) {
    return List.of(line.split(" "));
  }

  /** Two editions of one standard give two pages of one name: one of them stands there, whole. */
  @ParameterizedTest
  @CsvSource({"judge one.yaml two.yaml --out out --rules", "results . --skip-invalid --rules"})
  void twoAtOnceGiveOneOrTheOther(String line) throws Exception {
    String rules = Files.readString(bench.at("rules.yaml"));
    Files.writeString(bench.at("later"), rules.replace("edition: \"1\"", "edition: \"2\""));
    before = bench.content();
    String command =
        line.replace("--rules", "--out out --rules").replace("--out out --out", "--out");
    for (CommandResult ran :
        atOnce(List.of(words(command + " rules.yaml"), words(command + " later")))) {
      assertThat(ran.exit()).as(ran.out()).isZero();
    }
    inputsAreUntouched();
    Map<String, String> there = CommandBench.content(bench.at("out"));
    assertThat(there.keySet()).noneMatch(it -> it.contains(".assize-"));
    Map<String, String> first = alone(command + " rules.yaml");
    Map<String, String> second = alone(command + " later");
    assertThat(first.get("one.html")).isNotEqualTo(second.get("one.html"));
    assertThat(there.keySet()).isEqualTo(first.keySet());
    there.forEach((name, text) -> assertThat(text).isIn(first.get(name), second.get(name)));
  }

  private Map<String, String> alone(String line) throws Exception {
    CommandResult ran = run(builder(java(List.of(), line.split(" "))));
    assertThat(ran.exit()).as(ran.out()).isZero();
    return CommandBench.content(bench.at("out"));
  }

  /** Of two that add to one record, each that says it is done is in it. */
  @Test
  void ofTwoMergesNoneIsLost() throws Exception {
    String head = Files.readString(bench.at("one.yaml")).split("observations:")[0];
    Files.writeString(bench.at("a.yaml"), head + "observations: {horn-button: {note: Of A.}}\n");
    Files.writeString(bench.at("b.yaml"), head + "observations: {door-key: {note: Of B.}}\n");
    Map<String, String> laid = bench.content();
    List<CommandResult> ran =
        atOnce(
            List.of(
                words("merge --write one.yaml a.yaml"), words("merge --write one.yaml b.yaml")));
    String now = Files.readString(bench.at("one.yaml"));
    assertThat(ran).anyMatch(it -> it.exit() == Exit.DONE);
    for (int i = 0; i < 2; i++) {
      boolean done = ran.get(i).exit() == Exit.DONE;
      assertThat(now.contains(i == 0 ? "Of A." : "Of B.")).as(ran.get(i).out()).isEqualTo(done);
      if (!done) {
        assertThat(ran.get(i).out()).contains("error[changed-during-merge]");
      }
    }
    laid.forEach(
        (name, text) -> {
          if (!name.equals("one.yaml")) {
            assertThat(bench.at(name)).as(name).satisfies(it -> unchanged(it, text));
          }
        });
  }

  private static void unchanged(Path file, String text) throws IOException {
    assertThat(Files.isDirectory(file) ? "" : Files.readString(file, StandardCharsets.ISO_8859_1))
        .isEqualTo(text);
  }

  @Test
  void theDemonstrationCanBeUnpackedTwiceAtOnce() throws Exception {
    for (CommandResult ran : atOnce(List.of(words("demo there"), words("demo there")))) {
      assertThat(ran.exit()).as(ran.out()).isZero();
    }
    Map<String, String> there = CommandBench.content(bench.at("there"));
    assertThat(CommandResult.of("demo", bench.at("other")).exit()).isZero();
    assertThat(there).isEqualTo(CommandBench.content(bench.at("other")));
  }
}
