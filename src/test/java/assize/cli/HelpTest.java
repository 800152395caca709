package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HelpTest {
  @ParameterizedTest
  @ValueSource(strings = {"demo", "judge", "check", "new", "date", "color", "number", "prove", "verify", "compare"})
  void isAResultForEachVerb(String verb) {
    Ran ran = Ran.of(verb, "--help");
    assertThat(ran.exit()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).startsWith("Usage: assize " + verb).contains("--json", "--help");
    assertThat(ran.out().lines()).allMatch(line -> line.length() <= 90);
    assertThat(Ran.of(verb, "-h")).isEqualTo(ran);
    assertThat(Ran.of("--help").out()).contains("  " + verb + " ");
    assertThat(Ran.of(verb, "--version")).isEqualTo(Ran.of("--version"));
  }

  @Test
  void namesTheProgramAndItsVersion() {
    Ran ran = Ran.of("--version");
    assertThat(ran.exit()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).startsWith("assize ").hasLineCount(1);
  }

  @Test
  void asksForAVerbWhenThereIsNone() {
    Ran ran = Ran.of();
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains("demo, judge, check").contains("Try: assize --help");
  }
}
