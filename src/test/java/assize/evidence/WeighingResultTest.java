package assize.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class WeighingResultTest {
  private static final SimpleSupport DRAWING_SAYS_GREEN = new SimpleSupport(900, 0b001);
  private static final SimpleSupport GUIDE_SAYS_BODY_COLOR = new SimpleSupport(500, 0b010);
  private static final SimpleSupport PHOTO_SAYS_GREEN = new SimpleSupport(700, 0b001);
  private static final SimpleSupport PHOTO_LEAVES_BOTH = new SimpleSupport(700, 0b011);
  private static final SimpleSupport LETTER_RULES_OUT_BODY_COLOR = new SimpleSupport(700, 0b101);

  @Test
  void twoThatDifferAreInDispute() {
    WeighingResult outcome = of(2, DRAWING_SAYS_GREEN, GUIDE_SAYS_BODY_COLOR);

    assertThat(outcome.state()).isEqualTo(DisputeState.DISPUTED);
    assertThat(outcome.settledOn()).isEmpty();
    assertThat(outcome.live()).containsExactly(0, 1);
  }

  @Test
  void aThirdSettlesItAgainstDissent() {
    WeighingResult outcome = of(2, DRAWING_SAYS_GREEN, GUIDE_SAYS_BODY_COLOR, PHOTO_SAYS_GREEN);

    assertThat(outcome.state()).isEqualTo(DisputeState.SETTLED);
    assertThat(outcome.settledOn()).isEqualTo(OptionalInt.of(0));
  }

  @Test
  void beliefThatJustReachesTheThresholdSettles() {
    // 0.75 * 0.5 of the 1 - 0.75 * 0.5 that does not conflict: 0.6 exactly.
    List<SimpleSupport> two = List.of(new SimpleSupport(750, 0b001), new SimpleSupport(500, 0b110));

    assertThat(WeighingResult.of(2, two, 600, 100).state()).isEqualTo(DisputeState.SETTLED);
    assertThat(WeighingResult.of(2, two, 601, 100).state()).isEqualTo(DisputeState.DISPUTED);
  }

  @Test
  void oneSourceAgreesWithItselfWhateverItsGrade() {
    WeighingResult outcome = of(1, new SimpleSupport(300, 0b01));

    assertThat(outcome.state()).isEqualTo(DisputeState.AGREED);
    assertThat(outcome.settledOn()).isEqualTo(OptionalInt.of(0));
  }

  @Test
  void whatOneLeavesOpenAnotherCanAnswer() {
    assertThat(of(2, PHOTO_LEAVES_BOTH, DRAWING_SAYS_GREEN).state()).isEqualTo(DisputeState.AGREED);
    assertThat(of(2, PHOTO_LEAVES_BOTH, LETTER_RULES_OUT_BODY_COLOR).settledOn())
        .isEqualTo(OptionalInt.of(0));
  }

  @Test
  void sourcesThatOnlyLeaveOpenAreInDispute() {
    WeighingResult outcome = of(2, PHOTO_LEAVES_BOTH, PHOTO_LEAVES_BOTH);

    assertThat(outcome.state()).isEqualTo(DisputeState.DISPUTED);
    assertThat(outcome.live()).containsExactly(0, 1);
  }

  @Test
  void agreementOnWhatNobodyMentionsIsNoAgreement() {
    assertThat(of(1, new SimpleSupport(900, 0b10)).state()).isEqualTo(DisputeState.DISPUTED);
  }

  @Test
  void aSourceThatContradictsItselfLeavesTheRestInDispute() {
    assertThat(of(1, new SimpleSupport(900, 0b01), new SimpleSupport(500, 0)).state())
        .isEqualTo(DisputeState.SETTLED);
    assertThat(of(1, new SimpleSupport(500, 0)).state()).isEqualTo(DisputeState.DISPUTED);
  }

  @Test
  void twoThatReachALowThresholdTogetherSettleNothing() {
    List<SimpleSupport> even =
        List.of(new SimpleSupport(900, 0b001), new SimpleSupport(900, 0b010));

    assertThat(WeighingResult.of(2, even, 400, 100).state()).isEqualTo(DisputeState.DISPUTED);
    assertThat(WeighingResult.of(2, even, 400, 100).live()).containsExactly(0, 1);
  }

  @Test
  void whatIsBarelyPlausibleIsNotLive() {
    WeighingResult outcome =
        of(
            2,
            new SimpleSupport(700, 0b001),
            new SimpleSupport(700, 0b001),
            new SimpleSupport(700, 0b001),
            new SimpleSupport(700, 0b100));

    // Position 1 keeps what nobody denied: 0.0081 of 0.3189; position 0 reaches 0.9154.
    assertThat(outcome.weighing().plausibility(1)).isLessThan(0.1);
    assertThat(outcome.live()).containsExactly(0);
  }

  @Test
  void whereElevenStrongSourcesAllDifferNothingIsLive() {
    List<SimpleSupport> each = new ArrayList<>();
    for (int i = 0; i < 11; i++) {
      each.add(new SimpleSupport(900, 1L << i));
    }

    // Each keeps 10 of 11 * 9 + 1 parts: plausibility 0.1 exactly; one source more sinks them all.
    assertThat(WeighingResult.of(11, each, 900, 100).live()).hasSize(11);
    each.add(new SimpleSupport(900, 1L << 11));
    assertThat(WeighingResult.of(12, each, 900, 100).live()).isEmpty();
    assertThat(WeighingResult.of(12, each, 900, 100).state()).isEqualTo(DisputeState.DISPUTED);
  }

  @Test
  void aRuleWithoutASourceIsUnsourced() {
    WeighingResult outcome = of(1);

    assertThat(outcome.state()).isEqualTo(DisputeState.UNSOURCED);
    assertThat(outcome.live()).containsExactly(0);
    assertThat(outcome.settledOn()).isEqualTo(OptionalInt.of(0));
    assertThat(of(2).settledOn()).isEmpty();
  }

  @Test
  void reportsUseTheseWords() {
    assertThat(DisputeState.values())
        .extracting(DisputeState::word)
        .containsExactly("agreed", "settled", "disputed", "unsourced");
  }

  private static WeighingResult of(int positions, SimpleSupport... testimonies) {
    return WeighingResult.of(positions, List.of(testimonies), 900, 100);
  }
}
