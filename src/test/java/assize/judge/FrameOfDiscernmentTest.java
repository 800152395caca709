package assize.judge;

import static org.assertj.core.api.Assertions.assertThat;

import assize.aspect.Worded;
import assize.evidence.ClaimKind;
import assize.judge.FrameOfDiscernment.SourceStatement;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** What sources leave standing, of so many that each may be looked at a few times only. */
class FrameOfDiscernmentTest {
  private static final int MANY = 60_000;

  private static SourceStatement voice(String source, ClaimKind manner, int value) {
    return new SourceStatement(
        Optional.of(source),
        Optional.empty(),
        manner,
        List.of(new Worded.Right("w" + value, BigFraction.ONE)));
  }

  @Test
  void laysOutManySources() {
    FrameOfDiscernment frame =
        FrameOfDiscernment.of(
            IntStream.range(0, MANY).mapToObj(i -> voice("s" + i, ClaimKind.SAYS, i % 3)).toList());
    assertThat(frame.positions()).hasSize(3);
    assertThat(frame.sayers()).allMatch(it -> it.size() == MANY / 3);
    assertThat(frame.compatiblePositions()).hasSize(MANY).containsEntry("s7", 0b10L);
  }

  @Test
  void laysOutManyClaimsOfOneSource() {
    FrameOfDiscernment frame =
        FrameOfDiscernment.of(
            IntStream.range(0, MANY).mapToObj(i -> voice("s", ClaimKind.SAYS, i % 3)).toList());
    assertThat(frame.positions()).hasSize(1);
    assertThat(frame.positions().get(0)).hasSize(3);
    assertThat(frame.compatiblePositions()).containsOnlyKeys("s").containsEntry("s", 1L);
  }

  @Test
  void laysOutManyThatRuleOut() {
    List<SourceStatement> voices =
        IntStream.range(0, MANY)
            .mapToObj(
                i -> i < 3 ? voice("s" + i, ClaimKind.SAYS, i) : voice("t", ClaimKind.RULES_OUT, 1))
            .toList();
    assertThat(FrameOfDiscernment.of(voices).compatiblePositions()).containsEntry("t", 0b1101L);
  }

  /** What one source leaves open and says is what it says. */
  @Test
  void sayingOutweighsLeavingOpen() {
    FrameOfDiscernment frame =
        FrameOfDiscernment.of(
            List.of(
                voice("a", ClaimKind.LEAVES_OPEN, 1),
                voice("a", ClaimKind.SAYS, 2),
                voice("b", ClaimKind.LEAVES_OPEN, 1)));
    assertThat(frame.positions()).hasSize(2);
    assertThat(frame.compatiblePositions()).containsEntry("a", 0b01L).containsEntry("b", 0b10L);
    assertThat(frame.sayers()).containsExactly(List.of("a"), List.of());
  }
}
