package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HelpTest {
  @ParameterizedTest
  @ValueSource(strings = {"demo", "judge", "check", "new", "date", "color", "number", "prove", "verify", "compare"})
  void isAResultForEachCommand(String command) {
    Ran ran = Ran.of(command, "--help");
    assertThat(ran.exit()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).startsWith("Usage: assize " + command).contains("--json", "--help");
    assertThat(ran.out().lines()).allMatch(line -> line.length() <= 90);
    assertThat(Ran.of(command, "-h")).isEqualTo(ran);
    assertThat(Ran.of("--help").out()).contains("  " + command + " ");
    assertThat(Ran.of(command, "--version")).isEqualTo(Ran.of("--version"));
  }

  @Test
  void namesTheProgramAndItsVersion() {
    Ran ran = Ran.of("--version");
    assertThat(ran.exit()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).startsWith("assize ").hasLineCount(1);
  }

  @Test
  void asksForACommandWhenThereIsNone() {
    Ran ran = Ran.of();
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains("demo, judge, check").contains("Try: assize --help");
  }
}
