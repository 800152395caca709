package assize.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.within;

import assize.evidence.DempsterCombination.Share;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DempsterCombinationTest {
  private static final Offset<Double> PRINTED = within(0.0005);
  private static final Offset<Double> TINY = within(1e-12);

  /** A drawing, grade A, says green (0); a club guide, grade C, says body color (1). */
  private static final List<SimpleSupport> TWO =
      List.of(new SimpleSupport(900, 0b001), new SimpleSupport(500, 0b010));

  static List<PublishedCase> cases() {
    return PublishedCase.all().stream().filter(it -> it.testimonies().isPresent()).toList();
  }

  @Test
  void workedByHand() {
    DempsterCombination weighing = DempsterCombination.of(2, TWO);

    assertThat(weighing.conflict()).isEqualTo(0.45);
    assertThat(weighing.belief(0)).isCloseTo(0.818, PRINTED);
    assertThat(weighing.belief(1)).isCloseTo(0.091, PRINTED);
    assertThat(weighing.unassigned()).isCloseTo(0.091, PRINTED);
    assertThat(weighing.plausibility(0)).isCloseTo(0.50 / 0.55, TINY);
    assertThat(weighing.plausibility(1)).isCloseTo(0.10 / 0.55, TINY);
    assertThat(weighing.belief(2)).isZero();
    assertThat(weighing.plausibility(2)).isCloseTo(0.05 / 0.55, TINY);
  }

  @Test
  void aFurtherWitnessLiftsTheBelief() {
    List<SimpleSupport> three = new ArrayList<>(TWO);
    three.add(new SimpleSupport(700, 0b001));

    assertThat(DempsterCombination.of(2, three).belief(0)).isCloseTo(0.942, PRINTED);
  }

  @Test
  void atLeastFiveCasesOfTheLiteratureAreTestimonies() {
    assertThat(cases()).hasSizeGreaterThanOrEqualTo(5);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void weighsAsPublished(PublishedCase published) {
    int positions = published.frame().size() - 1;
    DempsterCombination weighing =
        DempsterCombination.of(positions, published.testimonies().orElseThrow());

    assertThat(weighing.conflict()).isCloseTo(published.conflict().doubleValue(), TINY);
    assertThat(weighing.masses().keySet())
        .containsExactlyInAnyOrderElementsOf(published.exact().keySet());
    published
        .exact()
        .forEach(
            (set, mass) ->
                assertThat(weighing.masses().get(set)).isCloseTo(mass.doubleValue(), TINY));
    for (int i = 0; i <= positions; i++) {
      String[] bounds = published.bounds().getOrDefault(1L << i, "0..0").split("\\.\\.");
      assertThat(weighing.belief(i)).isCloseTo(Double.parseDouble(bounds[0]), TINY);
      assertThat(weighing.plausibility(i)).isCloseTo(Double.parseDouble(bounds[1]), TINY);
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void sharesArePignisticWithoutWhatNobodyMentions(PublishedCase published) {
    int positions = published.frame().size() - 1;
    List<Share> shares =
        DempsterCombination.of(positions, published.testimonies().orElseThrow())
            .shares((1L << positions) - 1);

    double named =
        IntStream.range(0, positions)
            .mapToDouble(i -> published.pignistic().getOrDefault(1L << i, 0.0))
            .sum();
    for (int i = 0; i < positions; i++) {
      assertThat(shares.get(i).value())
          .isCloseTo(published.pignistic().getOrDefault(1L << i, 0.0) / named, TINY);
    }
  }

  @Test
  void noEvidenceBelievesNothingAndExcludesNothing() {
    DempsterCombination weighing = DempsterCombination.of(2, List.of());

    assertThat(weighing.conflict()).isZero();
    assertThat(weighing.belief(0)).isZero();
    assertThat(weighing.plausibility(0)).isEqualTo(1);
    assertThat(weighing.unassigned()).isEqualTo(1);
    assertThat(weighing.masses()).containsExactly(entry(0b111L, 1.0));
    assertThat(weighing.shares(0b11)).containsExactly(share(1, 2), share(1, 2));
  }

  @Test
  void thresholdsAreExact() {
    DempsterCombination weighing = DempsterCombination.of(1, List.of(new SimpleSupport(900, 0b01)));
    DempsterCombination against = DempsterCombination.of(1, List.of(new SimpleSupport(900, 0b10)));

    assertThat(weighing.beliefAtLeast(0, 900)).isTrue();
    assertThat(weighing.beliefAtLeast(0, 901)).isFalse();
    assertThat(against.plausibilityAtLeast(0, 100)).isTrue();
    assertThat(against.plausibilityAtLeast(0, 101)).isFalse();
  }

  @Test
  void aPhotographThatCannotTellLeavesItsMassTogether() {
    DempsterCombination weighing =
        DempsterCombination.of(2, List.of(new SimpleSupport(700, 0b011)));

    assertThat(weighing.belief(0)).isZero();
    assertThat(weighing.masses()).containsExactly(entry(0b011L, 0.7), entry(0b111L, 0.3));
    assertThat(weighing.masses().keySet()).containsExactly(0b011L, 0b111L);
  }

  @Test
  void whatIsNotLiveHasNoShare() {
    // Green 9/11, body color 1/11, all three 1/11: green 28/33 and body color 4/33 of the bets.
    assertThat(DempsterCombination.of(2, TWO).shares(0b11))
        .containsExactly(share(7, 8), share(1, 8));
    assertThat(DempsterCombination.of(2, TWO).shares(0b01))
        .containsExactly(share(1, 1), share(0, 1));
    assertThat(DempsterCombination.of(2, TWO).shares(0)).containsExactly(share(0, 1), share(0, 1));
  }

  @Test
  void aSourceThatContradictsItselfOnlyAddsConflict() {
    List<SimpleSupport> three = new ArrayList<>(TWO);
    three.add(new SimpleSupport(500, 0));
    DempsterCombination weighing = DempsterCombination.of(2, three);

    // 0.45, and half of the 0.55 that did not conflict.
    assertThat(weighing.conflict()).isEqualTo(0.725);
    assertThat(weighing.masses()).isEqualTo(DempsterCombination.of(2, TWO).masses());
  }

  @Test
  void aHundredSourcesOnSixtyTwoPositionsStayExact() {
    List<SimpleSupport> testimonies = new ArrayList<>();
    for (int i = 0; i < 62; i++) {
      testimonies.add(new SimpleSupport(990, 1L << i));
      testimonies.add(new SimpleSupport(300, 1L << i));
    }
    DempsterCombination weighing = DempsterCombination.of(62, testimonies);

    // Each position holds (1 - q) / q of the frame's mass, with q = 0.01 * 0.70.
    double odds = 0.993 / 0.007;
    assertThat(weighing.belief(61)).isCloseTo(odds / (62 * odds + 1), TINY);
    assertThat(weighing.shares((1L << 62) - 1)).containsOnly(share(1, 62));
  }

  @Test
  void whatOverlapsInTooManyWaysIsRefusedAtOnce() {
    List<SimpleSupport> tangled = new ArrayList<>();
    for (int i = 0; i < 62; i++) {
      tangled.add(new SimpleSupport(500, ((1L << 63) - 1) & ~(1L << i)));
    }

    assertThat(DempsterCombination.tooTangled(62, tangled)).isTrue();
    assertThat(DempsterCombination.tooTangled(62, tangled.subList(0, 12))).isFalse();
    assertThat(DempsterCombination.of(62, tangled.subList(0, 12)).masses())
        .hasSize(DempsterCombination.MOST_SETS);
    assertThatThrownBy(() -> DempsterCombination.of(62, tangled))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void positionsBeyondThoseNamedAreRefused() {
    List<SimpleSupport> beyond = List.of(new SimpleSupport(500, 0b100));

    assertThatThrownBy(() -> DempsterCombination.of(1, beyond))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> DempsterCombination.of(63, List.of()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> DempsterCombination.of(1, List.of()).belief(2))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new SimpleSupport(991, 1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new SimpleSupport(0, 1)).isInstanceOf(IllegalArgumentException.class);
  }

  private static Share share(long numerator, long denominator) {
    return new Share(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
  }
}
