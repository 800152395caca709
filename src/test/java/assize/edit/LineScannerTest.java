package assize.edit;

import static org.assertj.core.api.Assertions.assertThat;

import assize.text.SourceFile;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LineScannerTest {
  @Test
  void looksAroundAPlaceInItsLine() {
    LineScanner lines = new LineScanner(new SourceFile("x", "a: 1 # one\r\n  - b:  \n\n"));
    assertThat(lines.end(0)).isEqualTo(10);
    assertThat(lines.end(11)).isEqualTo(11);
    assertThat(lines.isLast(4)).isTrue();
    assertThat(lines.isLast(3)).isFalse();
    assertThat(lines.indent(14)).contains(2);
    assertThat(lines.indent(16)).isEmpty();
    assertThat(lines.indentInList(16)).contains(4);
    assertThat(lines.indentInList(17)).isEmpty();
    assertThat(lines.isLast(18)).isTrue();
  }

  /** To copy what stands before each place, or go to the line's end, would be 10^12 letters. */
  @Test
  void looksAtAMillionPlacesInOneLongLine() {
    LineScanner lines = new LineScanner(new SourceFile("x", "{a},".repeat(1_000_000)));
    assertThat(
            IntStream.range(0, 1_000_000)
                .filter(
                    i ->
                        lines.indent(4 * i + 1).isPresent()
                            || lines.indentInList(4 * i + 1).isPresent()
                            || lines.isLast(4 * i)
                            || lines.end(4 * i) != 4_000_000)
                .count())
        .isZero();
  }
}
