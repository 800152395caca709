package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoCommandTest {
  @TempDir private Path folder = Path.of("");

  @Test
  void unpacksAndJudgesTheSameEachTime() {
    Path demo = folder.resolve("here/demo");
    CommandResult ran = CommandResult.of("demo", demo);
    assertThat(ran.exit()).as(ran.err()).isZero();
    assertThat(ran.err()).isEmpty();
    Map<String, String> content = CommandBench.content(demo);
    assertThat(content)
        .containsAllEntriesOf(CommandBench.content(Path.of("rules")))
        .containsKeys("reports/l45-4388.html", "reports/l41-half-recorded.html")
        .containsKeys("reports/q-1187.html");
    assertThat(content.keySet()).noneMatch(name -> name.endsWith(".part"));
    assertThat(ran.out()).contains(demo.resolve("reports").resolve("l45-4388.html").toString());
    assertThat(CommandResult.of("demo", demo)).isEqualTo(ran);
    assertThat(CommandBench.content(demo)).isEqualTo(content);
  }

  @Test
  void givesTheJudgmentsToAMachine() {
    Path demo = folder.resolve("demo");
    CommandResult ran = CommandResult.of("demo", demo, "--json");
    assertThat(ran.exit()).isZero();
    assertThat(ran.jsonLines().stream().map(it -> it.get("record").stringValue()))
        .containsExactly("l41-half-recorded", "l45-4388", "q-1187");
    assertThat(demo.resolve("reports")).doesNotExist();
  }

  @Test
  void writesNothingOverWhatDiffers() throws IOException {
    Files.writeString(folder.resolve("l45-4388.yaml"), "mine");
    Files.createDirectory(folder.resolve("q-1187.yaml"));
    Map<String, String> before = CommandBench.content(folder);
    CommandResult ran = CommandResult.of("demo", folder);
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains("l45-4388.yaml is there already and differs").hasLineCount(3);
    assertThat(CommandBench.content(folder)).isEqualTo(before);
  }

  @Test
  void writesNothingWhereAFileStandsForAFolder() throws IOException {
    for (String name : new String[] {"photos", "reports"}) {
      Path demo = Files.createDirectory(folder.resolve("demo-" + name));
      Files.writeString(demo.resolve(name), "mine");
      CommandResult ran = CommandResult.of("demo", demo);
      assertThat(ran.exit()).isEqualTo(3);
      assertThat(ran.err()).contains("a file stands where a folder is needed").hasLineCount(1);
      assertThat(CommandBench.content(demo)).containsOnlyKeys("", name);
    }
  }
}
