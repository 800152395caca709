package assize.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AsciiTest {
  /** Lengths around that of the pieces that a text is looked through by. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 8190, 8191, 8192, 8193, 16_383, 16_384, 20_000})
  void findsWhatStandsBehind(int length) {
    String before = "a".repeat(length);
    for (String one : List.of("\u00e9", "\ud83d\ude9a", "\ud83d", "\ude9a", "\t")) {
      String text = before + one + "z";
      int point = one.codePointAt(0);
      assertThat(Ascii.hasBesides(text, c -> c == point)).as("U+%x", point).isTrue();
      assertThat(Ascii.hasBesides(text, c -> c != point)).as("but U+%x", point).isFalse();
    }
    assertThat(Ascii.hasBesides(before + " ~\n", c -> true)).isFalse();
  }

  @Test
  void asksForAPairOnce() {
    assertThat(Ascii.hasBesides("\ud83d\ude9a", Character::isBmpCodePoint)).isFalse();
  }
}
