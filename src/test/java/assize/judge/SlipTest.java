package assize.judge;

import static org.assertj.core.api.Assertions.assertThat;

import assize.evidence.Kleene;
import assize.judgment.ScoreRange;
import assize.judgment.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What aspects come to as an item; added up by hand. */
class SlipTest {
  private static final Slip MEETS = Slip.of(Verdict.MEETS, 3_000, range(3_000, 3_000, 3_000));
  private static final Slip OPEN = Slip.of(Verdict.OPEN, 4_000, range(0, 1_000, 4_000));

  private static ScoreRange range(long low, long likely, long high) {
    return new ScoreRange(low, likely, high);
  }

  @Test
  void aspectsAreAddedUp() {
    assertThat(Slip.of(Kleene.YES, List.of(MEETS, OPEN)))
        .isEqualTo(
            new Slip(
                Kleene.YES,
                Verdict.OPEN,
                true,
                7_000,
                range(3_000, 4_000, 7_000),
                range(3_000, 4_000, 7_000)));
    assertThat(Slip.of(Kleene.YES, List.of(MEETS, MEETS)).departing()).isFalse();
    assertThat(Slip.of(Kleene.YES, List.of(MEETS, MEETS)).verdict()).isEqualTo(Verdict.MEETS);
  }

  @Test
  void whatMayApplyIsSaidSo() {
    assertThat(Slip.of(Kleene.UNKNOWN, List.of(MEETS, OPEN)).verdict())
        .isEqualTo(Verdict.MAY_APPLY);
    Slip one = Slip.of(Kleene.UNKNOWN, OPEN);
    assertThat(one)
        .isEqualTo(
            new Slip(
                Kleene.UNKNOWN,
                Verdict.MAY_APPLY,
                true,
                4_000,
                range(0, 1_000, 4_000),
                range(0, 1_000, 4_000)));
    assertThat(Slip.of(Kleene.YES, OPEN)).isEqualTo(OPEN);
  }

  @Test
  void whatDoesNotApplyDoesNotCount() {
    assertThat(Slip.of(Kleene.YES, List.of())).isEqualTo(Slip.OUT);
    assertThat(Slip.OUT.counts()).isFalse();
    assertThat(MEETS.counts()).isTrue();
    assertThat(Slip.of(Kleene.UNKNOWN, OPEN).counts()).isTrue();
  }
}
