package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HelpTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "demo", "judge", "check", "new", "date", "color", "number", "prove", "verify", "compare"
      })
  void isAResultForEachCommand(String command) {
    CommandResult ran = CommandResult.of(command, "--help");
    assertThat(ran.exit()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).startsWith("Usage: assize " + command).contains("--json", "--help");
    assertThat(ran.out().lines()).allMatch(line -> line.length() <= 90);
    assertThat(CommandResult.of(command, "-h")).isEqualTo(ran);
    assertThat(CommandResult.of("--help").out()).containsPattern("  " + command + "[ ,]");
    assertThat(CommandResult.of(command, "--version")).isEqualTo(CommandResult.of("--version"));
  }

  @Test
  void namesTheProgramAndItsVersion() {
    CommandResult ran = CommandResult.of("--version");
    assertThat(ran.exit()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).startsWith("assize ").hasLineCount(1);
  }

  @Test
  void asksForACommandWhenThereIsNone() {
    CommandResult ran = CommandResult.of();
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains("new, sheet, merge").contains("Try: assize --help");
  }

  @Test
  void groupsTheCommandsByWhatTheyAreFor() {
    CommandResult ran = CommandResult.of("--help");
    assertThat(ran.exit()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out())
        .isEqualTo(
            """
            Usage: assize COMMAND [OPTIONS]

            For one vehicle
              new         Create a record to fill in
              sheet       Make an inspection sheet for paper, phone or spreadsheet
              merge       Add other people's findings to a record
              judge       Judge vehicles and write reports
              dossier     Write a page on each disputed item
              prove       Print proof codes for masked numbers
              verify      Check a number against a redacted copy
            For a club
              check       Check rule sets and records
              handbook    Write a rule set as a readable handbook
              compare     Show what changed between two editions
              results     Judge a folder of records and write a results page
            Look up
              date        Show which days a date covers
              number      Date a chassis or engine number
              color       Compare two colors
              explain     Explain a message
            Set up
              demo, schema, completion, manual

            Start with: assize demo
            """);
  }
}
