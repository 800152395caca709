package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import assize.diagnostic.Code;
import assize.diagnostic.Diagnostic;
import assize.text.SourceFile;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

class LintCommandTest {
  private Bench bench = new Bench(Path.of(""));

  @BeforeEach
  void lay(@TempDir Path folder) {
    bench = Bench.in(folder);
  }

  @Test
  void saysThatNothingIsWrong() {
    Ran one = Ran.of("lint", bench.at("rules.yaml"));
    assertThat(one).isEqualTo(new Ran(0, "No errors.\n", ""));
    Ran two = Ran.of("lint", bench.at("rules.yaml"), bench.at("one.yaml"));
    assertThat(two).isEqualTo(new Ran(0, "No errors in 2 rule sets and records.\n", ""));
    assertThat(Ran.of("lint", bench.at("one.yaml"), "--json")).isEqualTo(new Ran(0, "", ""));
  }

  @Test
  void looksAtEverythingInAFolder() {
    Ran ran = Ran.of("lint", "rules");
    assertThat(ran.exit()).isZero();
    assertThat(ran.out()).isEqualTo("No errors in 5 rule sets and records.\n");
    assertThat(ran.err()).contains("doubt[copy-beside-original]").doesNotContain("error[");
  }

  @Test
  void printsErrorsForAPerson() {
    Ran ran = Ran.of("lint", bench.at("wrong.yaml"));
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err())
        .contains("error[unknown-finish]: this rule set has no finish \"chrom\"")
        .contains("wrong.yaml:7:22")
        .endsWith("1 error in 1 file\n");
  }

  @Test
  void givesErrorsToAMachineOneALine() {
    Ran ran = Ran.of("lint", "--json", bench.at("wrong.yaml"), bench.at("missing.yaml"));
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.err()).isEmpty();
    List<JsonNode> lines = ran.jsonLines();
    assertThat(lines.stream().map(it -> it.get("code").stringValue()))
        .containsExactly("no-such-file", "unknown-finish");
    JsonNode finish = lines.get(1);
    assertThat(finish.get("line").intValue()).isEqualTo(7);
    assertThat(finish.get("column").intValue()).isEqualTo(22);
    assertThat(finish.get("severity").stringValue()).isEqualTo("error");
    assertThat(finish.get("hint").stringValue()).contains("chrome");
  }

  @Test
  void endsWellWithDoubtsAlone() {
    assertThat(Ran.of("lint", bench.at("doubts.yaml")).exit()).isZero();
    Diagnostic doubt =
        Diagnostic.of(Code.UNSOURCED, new SourceFile("a.yaml", "a: b\n").span(0, 1), "no source");
    Diagnostic error =
        Diagnostic.of(Code.UNKNOWN_KEY, new SourceFile("a.yaml", "a: b\n").span(0, 1), "unknown");
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    PrintStream both = new PrintStream(err, true, StandardCharsets.UTF_8);
    Inputs inputs = new Inputs(new Terminal(both, both, false));
    assertThat(inputs.report(List.of(doubt), false)).isTrue();
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("doubt[unsourced]", "1 doubt");
    assertThat(inputs.report(List.of(doubt, error), false)).isFalse();
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("1 error and 1 doubt in 1 file");
  }

  @Test
  void colorsMessagesOnlyWhereTheTerminalShowsThem() {
    Path wrong = bench.at("wrong.yaml");
    Ran colored = Ran.onTerminal(true, "lint", wrong);
    assertThat(colored.err()).contains("\u001b[");
    String stripped = colored.err().replaceAll("\u001b\\[[0-9;]*m", "");
    assertThat(stripped).isEqualTo(Ran.of("lint", wrong).err());
    assertThat(Ran.onTerminal(true, "lint", wrong, "--json").out()).doesNotContain("\u001b");
  }
}
