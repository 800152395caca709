package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class TerminalTest {
  @Test
  void colorsOnATerminalUnlessAskedNotTo() {
    assertThat(Terminal.colorsFor(Map.of("TERM", "xterm"), true)).isTrue();
    // https://no-color.org: present and not empty, whatever its value (from memory)
    assertThat(Terminal.colorsFor(Map.of("TERM", "xterm", "NO_COLOR", ""), true)).isTrue();
    assertThat(Terminal.colorsFor(Map.of("TERM", "xterm", "NO_COLOR", "0"), true)).isFalse();
    assertThat(Terminal.colorsFor(Map.of("TERM", "xterm", "NO_COLOR", "1"), true)).isFalse();
    assertThat(Terminal.colorsFor(Map.of("TERM", "dumb"), true)).isFalse();
    assertThat(Terminal.colorsFor(Map.of(), true)).isFalse();
    assertThat(Terminal.colorsFor(Map.of("TERM", "xterm"), false)).isFalse();
  }
}
