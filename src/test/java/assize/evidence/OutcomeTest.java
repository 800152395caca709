package assize.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class OutcomeTest {
  private static final Testimony DRAWING_SAYS_GREEN = new Testimony(900, 0b001);
  private static final Testimony GUIDE_SAYS_BODY_COLOR = new Testimony(500, 0b010);
  private static final Testimony PHOTO_SAYS_GREEN = new Testimony(700, 0b001);
  private static final Testimony PHOTO_LEAVES_BOTH = new Testimony(700, 0b011);
  private static final Testimony LETTER_RULES_OUT_BODY_COLOR = new Testimony(700, 0b101);

  @Test
  void twoThatDifferAreInDispute() {
    Outcome outcome = of(2, DRAWING_SAYS_GREEN, GUIDE_SAYS_BODY_COLOR);

    assertThat(outcome.state()).isEqualTo(DisputeState.DISPUTED);
    assertThat(outcome.settledOn()).isEmpty();
    assertThat(outcome.live()).containsExactly(0, 1);
  }

  @Test
  void aThirdSettlesItAgainstDissent() {
    Outcome outcome = of(2, DRAWING_SAYS_GREEN, GUIDE_SAYS_BODY_COLOR, PHOTO_SAYS_GREEN);

    assertThat(outcome.state()).isEqualTo(DisputeState.SETTLED);
    assertThat(outcome.settledOn()).isEqualTo(OptionalInt.of(0));
  }

  @Test
  void beliefThatJustReachesTheThresholdSettles() {
    // 0.75 * 0.5 of the 1 - 0.75 * 0.5 that does not conflict: 0.6 exactly.
    List<Testimony> two = List.of(new Testimony(750, 0b001), new Testimony(500, 0b110));

    assertThat(Outcome.of(2, two, 600, 100).state()).isEqualTo(DisputeState.SETTLED);
    assertThat(Outcome.of(2, two, 601, 100).state()).isEqualTo(DisputeState.DISPUTED);
  }

  @Test
  void oneSourceAgreesWithItselfWhateverItsGrade() {
    Outcome outcome = of(1, new Testimony(300, 0b01));

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
    Outcome outcome = of(2, PHOTO_LEAVES_BOTH, PHOTO_LEAVES_BOTH);

    assertThat(outcome.state()).isEqualTo(DisputeState.DISPUTED);
    assertThat(outcome.live()).containsExactly(0, 1);
  }

  @Test
  void agreementOnWhatNobodyMentionsIsNoAgreement() {
    assertThat(of(1, new Testimony(900, 0b10)).state()).isEqualTo(DisputeState.DISPUTED);
  }

  @Test
  void aSourceThatContradictsItselfLeavesTheRestInDispute() {
    assertThat(of(1, new Testimony(900, 0b01), new Testimony(500, 0)).state())
        .isEqualTo(DisputeState.SETTLED);
    assertThat(of(1, new Testimony(500, 0)).state()).isEqualTo(DisputeState.DISPUTED);
  }

  @Test
  void twoThatReachALowThresholdTogetherSettleNothing() {
    List<Testimony> even = List.of(new Testimony(900, 0b001), new Testimony(900, 0b010));

    assertThat(Outcome.of(2, even, 400, 100).state()).isEqualTo(DisputeState.DISPUTED);
    assertThat(Outcome.of(2, even, 400, 100).live()).containsExactly(0, 1);
  }

  @Test
  void whatIsBarelyPlausibleIsNotLive() {
    Outcome outcome =
        of(
            2,
            new Testimony(700, 0b001),
            new Testimony(700, 0b001),
            new Testimony(700, 0b001),
            new Testimony(700, 0b100));

    // Position 1 keeps what nobody denied: 0.0081 of 0.3189; position 0 reaches 0.9154.
    assertThat(outcome.weighing().plausibility(1)).isLessThan(0.1);
    assertThat(outcome.live()).containsExactly(0);
  }

  @Test
  void whereElevenStrongSourcesAllDifferNothingIsLive() {
    List<Testimony> each = new ArrayList<>();
    for (int i = 0; i < 11; i++) {
      each.add(new Testimony(900, 1L << i));
    }

    // Each keeps 10 of 11 * 9 + 1 parts: plausibility 0.1 exactly; one source more sinks them all.
    assertThat(Outcome.of(11, each, 900, 100).live()).hasSize(11);
    each.add(new Testimony(900, 1L << 11));
    assertThat(Outcome.of(12, each, 900, 100).live()).isEmpty();
    assertThat(Outcome.of(12, each, 900, 100).state()).isEqualTo(DisputeState.DISPUTED);
  }

  @Test
  void aRuleWithoutASourceIsUnsourced() {
    Outcome outcome = of(1);

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

  private static Outcome of(int positions, Testimony... testimonies) {
    return Outcome.of(positions, List.of(testimonies), 900, 100);
  }
}
