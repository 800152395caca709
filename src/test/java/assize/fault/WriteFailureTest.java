package assize.fault;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Runs that are killed, and disks that fail: what was there stays whole, or what is new is. */
@Tag("slow")
class WriteFailureTest {
  private Path folder = Path.of("");
  private Path said = Path.of("");

  @BeforeEach
  void make(@TempDir Path whole) throws IOException {
    folder = Files.createDirectory(whole.resolve("here"));
    said = whole.resolve("said.txt");
  }

  private int run(List<String> settings, String program, String... words) throws Exception {
    List<String> line = new ArrayList<>();
    line.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    line.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
    line.add("-Djava.nio.file.spi.DefaultFileSystemProvider=" + FaultyFiles.class.getName());
    line.addAll(settings);
    line.addAll(List.of("-cp", System.getProperty("java.class.path", ""), program));
    line.addAll(List.of(words));
    ProcessBuilder builder =
        new ProcessBuilder(line).redirectErrorStream(true).redirectOutput(said.toFile());
    builder.environment().remove("JAVA_TOOL_OPTIONS");
    return builder.start().waitFor();
  }

  /** Every command that writes, at every step of writing, with every fault there is. */
  @Test
  void atEveryStepAllThatIsThereIsWhole() throws Exception {
    int exit = run(List.of(), FaultProgram.class.getName(), folder.toString());
    assertThat(exit).as(Files.readString(said)).isZero();
    assertThat(Files.readAllLines(said)).hasSize(4 * WriteScenario.ALL.size());
  }

  /** The same with a process that is really gone; another then clears what it left. */
  @ParameterizedTest
  @CsvSource({
    "a merge, 1",
    "a merge, 2",
    "a merge, 3",
    "a merge, 4",
    "reports with photos in a folder and JSON, 9",
    "reports with photos in a folder and JSON, 17"
  })
  void aProcessThatIsGoneLeavesNothingHalf(String name, int step) throws Exception {
    WriteScenario scene =
        WriteScenario.ALL.stream().filter(it -> it.name().equals(name)).findFirst().orElseThrow();
    scene.lay(folder);
    Map<String, String> before = WriteScenario.files(folder);
    String halt = "-Dfaulty.halt=" + step;
    assertThat(run(List.of(halt), "assize.cli.Main", scene.words(folder))).isEqualTo(137);
    Map<String, String> left = WriteScenario.files(folder);
    assertThat(run(List.of(), "assize.cli.Main", scene.words(folder)))
        .as(Files.readString(said))
        .isZero();
    Map<String, String> after = WriteScenario.files(folder);
    assertThat(after.keySet()).noneMatch(it -> it.contains(".assize-"));
    left.forEach(
        (file, text) -> {
          if (!file.contains(".assize-")) {
            assertThat(text).as(file).isIn(before.get(file), after.get(file));
          }
        });
    assertThat(left.keySet()).containsAll(scene.changes());
  }
}
