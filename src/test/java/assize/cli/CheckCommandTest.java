package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.text.SourceFile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

class CheckCommandTest {
  private CommandBench bench = new CommandBench(Path.of(""));

  @BeforeEach
  void lay(@TempDir Path folder) {
    bench = CommandBench.in(folder);
  }

  @Test
  void saysThatNothingIsWrong() {
    CommandResult one = CommandResult.of("check", bench.at("rules.yaml"));
    String accepted = " 2 warnings accepted: check --show-accepted lists them.\n";
    assertThat(one).isEqualTo(new CommandResult(0, "No errors." + accepted, ""));
    CommandResult two = CommandResult.of("check", bench.at("rules.yaml"), bench.at("one.yaml"));
    assertThat(two)
        .isEqualTo(new CommandResult(0, "No errors in 2 rule sets and records." + accepted, ""));
    assertThat(CommandResult.of("check", bench.at("one.yaml")))
        .isEqualTo(new CommandResult(0, "No errors.\n", ""));
    assertThat(CommandResult.of("check", bench.at("one.yaml"), "--json"))
        .isEqualTo(new CommandResult(0, "", ""));
  }

  @Test
  void looksAtEverythingInAFolder() {
    CommandResult ran = CommandResult.of("check", "rules");
    assertThat(ran.exit()).isZero();
    assertThat(ran.out())
        .isEqualTo(
            "No errors in 5 rule sets and records. 13 warnings accepted: check --show-accepted lists them.\n");
    assertThat(ran.err()).isEmpty();
  }

  @Test
  void listsAcceptedDoubtsWithTheirReasonsWhereWanted() {
    CommandResult ran = CommandResult.of("check", "--show-accepted", bench.at("rules.yaml"));
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out().lines())
        .hasSize(4)
        .first()
        .isEqualTo("accepted[number-table-gap]: The books of the first two years were lost.");
    assertThat(ran.out()).endsWith("No errors. 2 warnings accepted.\n");
    List<JsonNode> lines =
        CommandResult.of("check", "--show-accepted", "--json", bench.at("rules.yaml")).jsonLines();
    assertThat(lines).hasSize(2);
    assertThat(lines.get(0).get("accepted").stringValue()).startsWith("The books");
    assertThat(lines.get(0).get("about").get(0).stringValue()).isEqualTo("chassis");
  }

  @Test
  void looksAtPhotosAsJudgeDoes() throws IOException {
    String named =
        Files.readString(bench.at("one.yaml"))
            + "evidence:\n  lamp: {photo: lamp.jpg}\n  horn: {photo: horn.jpg}\n";
    Files.writeString(bench.at("shown.yaml"), named);
    Files.writeString(bench.at("lamp.jpg"), "no photo");
    Files.copy(Path.of("rules/photos/horn-button.png"), bench.at("horn.jpg"));
    CommandResult ran = CommandResult.of("check", bench.at("shown.yaml"));
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.err())
        .contains("error[photo-cannot-be-shown]: evidence \"lamp\"")
        .contains("warning[photo-misnamed]: evidence \"horn\"")
        .contains("warning[uncited-evidence]");
    Files.delete(bench.at("lamp.jpg"));
    Files.copy(Path.of("rules/photos/tail-lamp.png"), bench.at("lamp.jpg"));
    Files.writeString(
        bench.at("shown.yaml"),
        named
            + "accepted_warnings:\n"
            + "  - {warning: photo-misnamed, about: [lamp, horn], reason: The camera does it.}\n"
            + "  - {warning: uncited-evidence, reason: They show all of it.}\n");
    assertThat(CommandResult.of("check", bench.at("shown.yaml")))
        .isEqualTo(
            new CommandResult(
                0, "No errors. 4 warnings accepted: check --show-accepted lists them.\n", ""));
  }

  @Test
  void aDepartureIsOldByTheDayThatIsGiven() throws IOException {
    Files.writeString(
        bench.at("old.yaml"),
        Files.readString(bench.at("one.yaml"))
                .replace("observations:", "inspected: {on: 2020-05-01}\nobservations:")
                .replaceFirst("(?m)^  horn-button:.*\\n", "")
            + "  horn-button: {finish: chrome, departure: {reason: cost, review_by: 2019-01}}\n");
    assertThat(CommandResult.of("check", bench.at("old.yaml")).err())
        .contains("warning[overdue-review]");
    assertThat(CommandResult.of("check", "--as-of", "2020-01-31", bench.at("old.yaml")).err())
        .isEmpty();
  }

  @Test
  void printsErrorsForAPerson() {
    CommandResult ran = CommandResult.of("check", bench.at("wrong.yaml"));
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err())
        .contains("error[unknown-finish]: this rule set has no finish \"chrom\"")
        .contains("wrong.yaml:7:22")
        .endsWith("1 error in 1 file\n");
  }

  @Test
  void givesErrorsToAMachineOneALine() {
    CommandResult ran =
        CommandResult.of("check", "--json", bench.at("wrong.yaml"), bench.at("missing.yaml"));
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.err()).isEmpty();
    List<JsonNode> lines = ran.jsonLines();
    assertThat(lines.stream().map(it -> it.get("code").stringValue()))
        .containsExactly("file-not-found", "unknown-finish");
    JsonNode finish = lines.get(1);
    assertThat(finish.get("line").intValue()).isEqualTo(7);
    assertThat(finish.get("column").intValue()).isEqualTo(22);
    assertThat(finish.get("severity").stringValue()).isEqualTo("error");
    assertThat(finish.get("hint").stringValue()).contains("chrome");
  }

  @Test
  void endsWellWithDoubtsAlone() {
    assertThat(CommandResult.of("check", bench.at("warnings.yaml")).exit()).isZero();
    Diagnostic warning =
        Diagnostic.of(
            DiagnosticCode.NO_SOURCE, new SourceFile("a.yaml", "a: b\n").span(0, 1), "no source");
    Diagnostic error =
        Diagnostic.of(
            DiagnosticCode.UNKNOWN_KEY, new SourceFile("a.yaml", "a: b\n").span(0, 1), "unknown");
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    PrintStream both = new PrintStream(err, true, StandardCharsets.UTF_8);
    InputLoader inputs = new InputLoader(new Terminal(both, both, false));
    assertThat(inputs.report(List.of(warning), false)).isTrue();
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("warning[no-source]", "1 warning");
    assertThat(inputs.report(List.of(warning, error), false)).isFalse();
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("1 error and 1 warning in 1 file");
  }

  @Test
  void colorsMessagesOnlyWhereTheTerminalShowsThem() {
    Path wrong = bench.at("wrong.yaml");
    CommandResult colored = CommandResult.onTerminal(true, "check", wrong);
    assertThat(colored.err()).contains("\u001b[");
    String stripped = colored.err().replaceAll("\u001b\\[[0-9;]*m", "");
    assertThat(stripped).isEqualTo(CommandResult.of("check", wrong).err());
    assertThat(CommandResult.onTerminal(true, "check", wrong, "--json").out())
        .doesNotContain("\u001b");
  }

  /** Each lists more of what is looked for; what is not looked for can't be listed. */
  @Test
  void whatIsListedGoesWithWhatIsLookedFor() {
    CommandResult items = CommandResult.of("check", "--all-items", bench.at("rules.yaml"));
    assertThat(items.exit()).isEqualTo(2);
    assertThat(items.err()).startsWith("--all-items goes with --coverage, which is not given\n");
    CommandResult accepted =
        CommandResult.of("check", "--show-accepted", "--coverage", bench.at("rules.yaml"));
    assertThat(accepted.exit()).isEqualTo(2);
    assertThat(accepted.err()).startsWith("--show-accepted: --coverage looks for no warnings");
  }
}
