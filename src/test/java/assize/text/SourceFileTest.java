package assize.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SourceFileTest {
  /** What Java counts itself, from the beginning of the line. */
  @Test
  void countsColumnsInLettersWhereverTheyTakeTwoUnits() {
    String[] signs = {"a", "\uD83D\uDE97", "\uD83D", "\uDE97", "\n", "\r", "\r\n", "é"};
    Random random = new Random(7);
    for (int run = 0; run < 200; run++) {
      StringBuilder text = new StringBuilder();
      random.ints(12, 0, signs.length).forEach(i -> text.append(signs[i]));
      SourceFile file = new SourceFile("x", text.toString());
      for (int at = 0; at <= text.length(); at++) {
        int start = file.offset(file.lineAt(at), 1);
        assertThat(file.columnAt(at)).isEqualTo(text.codePointCount(start, at) + 1);
      }
    }
  }

  /** From the beginning of the line each time would be a million million letters. */
  @Test
  void findsAMillionPlacesInOneLongLine() {
    SourceFile file = new SourceFile("x", "\uD83D\uDE97".repeat(1_000_000));
    assertThat(IntStream.range(0, 1_000_000).filter(i -> file.columnAt(2 * i) != i + 1).count())
        .isZero();
  }
}
