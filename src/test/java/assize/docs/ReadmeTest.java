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
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The five minutes of the README, as somebody would spend them. */
class ReadmeTest {
  private static final Pattern BLOCK = Pattern.compile("(?s) {3}```(yaml)?\n(.*?)\n {3}```");

  @TempDir private Path folder;
  private String readme = "";
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @BeforeEach
  void writeTheTwoFiles() throws IOException {
    readme = Files.readString(Path.of("README.md"));
    List<String> blocks = blocks();
    Files.writeString(folder.resolve("our-standard.yaml"), blocks.get(0));
    Files.writeString(folder.resolve("our-truck.yaml"), blocks.get(1));
  }

  /** Returns the indented blocks: the rule set, the record, the command, the message. */
  private List<String> blocks() {
    List<String> blocks = new ArrayList<>();
    Matcher matcher = BLOCK.matcher(readme);
    while (matcher.find()) {
      blocks.add(matcher.group(2).stripIndent() + "\n");
    }
    assertThat(blocks).hasSize(4);
    return blocks;
  }

  private int run(String... args) {
    PrintStream toOut = new PrintStream(out, true, StandardCharsets.UTF_8);
    PrintStream toErr = new PrintStream(err, true, StandardCharsets.UTF_8);
    return Main.run(new Terminal(toOut, toErr, false), args);
  }

  @Test
  void theVehicleIsJudged() {
    Path reports = folder.resolve("reports");
    int exit =
        run("judge", folder.resolve("our-truck.yaml").toString(), "--out", reports.toString());
    assertThat(err.toString(StandardCharsets.UTF_8)).isEmpty();
    assertThat(exit).isZero();
    // 3 for the stripe and 7/8 of 5 for the bed, of 10; the horn button is chromium
    assertThat(out.toString(StandardCharsets.UTF_8)).contains("73.75 (30 to 80) of 100");
    assertThat(reports.resolve("our-truck.html")).isNotEmptyFile();
  }

  @Test
  void aSlipIsAnsweredAsTheReadmeShows() throws IOException {
    Path rules = folder.resolve("our-standard.yaml");
    String slip = Files.readString(rules).replace("{finish: nickel}", "{finish: nickle}");
    Files.writeString(rules, slip);
    assertThat(run("check", rules.toString())).isEqualTo(1);
    String said =
        err.toString(StandardCharsets.UTF_8).replace(rules.toString(), "our-standard.yaml");
    assertThat(said).startsWith(blocks().get(3));
  }
}
