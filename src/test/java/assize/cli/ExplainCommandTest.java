package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import assize.diagnostic.DiagnosticCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ExplainCommandTest {
  @Test
  void saysWhatThePageSays() {
    assertThat(CommandResult.of("explain", "empty-file"))
        .isEqualTo(
            new CommandResult(
                0,
                """
                empty-file

                A file has nothing in it. Remarks alone are nothing to judge by.

                  not:  # to be written
                  but:  rule_set: example-type-x
                """,
                ""));
  }

  @Test
  void brokenLinesKeepEveryWordAndNameThePagesOfLinks() {
    String said = CommandResult.of("explain", "too-many").out();
    assertThat(said.replaceAll("\\s+", " "))
        .contains(
            "more of something than is judged. Limits (docs/limits.md) says how much of each is");
    assertThat(CommandResult.of("explain", "bad-date").out()).contains("See docs/dates.md.");
  }

  @ParameterizedTest
  @EnumSource
  void explainsEveryMessage(DiagnosticCode code) throws IOException {
    CommandResult ran = CommandResult.of("explain", code.id());
    assertThat(ran.exit()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).startsWith(code.id() + "\n\n").contains("  not:  ", "  but:  ");
    assertThat(ran.out()).doesNotContain("```", "](");
    assertThat(ran.out().lines().filter(it -> !it.startsWith("  ")))
        .allMatch(line -> line.length() <= 90);
    String sentence = ran.out().replaceAll("\\s+", " ").split("\\. ")[0];
    assertThat(Files.readString(Path.of("docs/messages.md")).replaceAll("\\s+", " "))
        .contains("### " + sentence + ". ");
  }

  @ParameterizedTest
  @ValueSource(strings = {"unknown-finish", "error[unknown-finish]", "error[unknown-finish]:"})
  void takesACodeAsItStandsInAMessage(String code) {
    assertThat(CommandResult.of("explain", code).out()).startsWith("unknown-finish\n\n");
  }

  @ParameterizedTest
  @ValueSource(strings = {"unknown-finnish", "Unknown_Finish", "error[unknown-finsh]"})
  void asksForANearName(String code) {
    CommandResult ran = CommandResult.of("explain", code);
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err())
        .startsWith("error: there is no message \"")
        .endsWith("did you mean \"unknown-finish\"?\n");
  }

  @Test
  void listsSomeWhereNoneIsNear() {
    CommandResult ran = CommandResult.of("explain", "\u001b[31mchromium");
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.err()).contains("<U+001B>", "known: file-not-found, ").doesNotContain("\u001b");
    assertThat(CommandResult.of("explain").exit()).isEqualTo(2);
    assertThat(CommandResult.of("explain", "tab", "alias").err())
        .contains("\"alias\" is one too many");
  }
}
