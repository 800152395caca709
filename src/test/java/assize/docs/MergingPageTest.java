package assize.docs;

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
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The worked example of the page on merging, as somebody would follow it. */
class MergingPageTest {
  private static final Pattern README_BLOCK = Pattern.compile("(?s) {3}```yaml\n(.*?)\n {3}```");
  private static final Pattern BLOCK = Pattern.compile("(?ms)^```(\\w*)\n(.*?)^```$");

  @TempDir private Path folder;

  private String run(String command) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(out, true, StandardCharsets.UTF_8);
    String[] words =
        Stream.of(command.strip().split(" "))
            .skip(1)
            .map(it -> it.endsWith(".yaml") ? folder.resolve(it).toString() : it)
            .toArray(String[]::new);
    assertThat(Main.run(new Terminal(stream, stream, false), words)).isZero();
    return out.toString(StandardCharsets.UTF_8).replace(folder + "/", "");
  }

  @Test
  void theExampleComesOutAsThePageSays() throws IOException {
    List<String> ours =
        README_BLOCK
            .matcher(Files.readString(Path.of("README.md")))
            .results()
            .map(it -> it.group(1).stripIndent() + "\n")
            .toList();
    Files.writeString(folder.resolve("our-standard.yaml"), ours.get(0));
    Files.writeString(folder.resolve("our-truck.yaml"), ours.get(1));
    List<MatchResult> blocks =
        BLOCK.matcher(Files.readString(Path.of("docs/merging.md"))).results().toList();
    assertThat(blocks.stream().map(it -> it.group(1)))
        .containsExactly("yaml", "", "text", "", "yaml");
    Files.writeString(folder.resolve("anna.yaml"), blocks.get(0).group(2));
    assertThat(run(blocks.get(1).group(2))).isEqualTo(blocks.get(2).group(2));
    assertThat(Files.readString(folder.resolve("our-truck.yaml"))).isEqualTo(ours.get(1));
    run(blocks.get(3).group(2));
    assertThat(Files.readString(folder.resolve("our-truck.yaml")))
        .isEqualTo(blocks.get(4).group(2));
  }
}
