package assize.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is printed step by step is what is weighed. */
class CombinationStepsTest {
  private static final double CLOSE = 1e-12;

  private static BigFraction of(long numerator, long denominator) {
    return BigFraction.of(numerator, denominator);
  }

  /**
   * A drawing (A) says green, a club guide (C) body color, by hand: 0.9 × 0.5 contradicts itself,
   * and 0.45, 0.05, 0.05 are left.
   */
  @Test
  void twoSourcesThatContradictEachOther() {
    CombinationSteps working =
        CombinationSteps.of(
            2, List.of(new SimpleSupport(900, 0b001), new SimpleSupport(500, 0b010)));

    assertThat(working.masses())
        .containsExactlyInAnyOrderEntriesOf(
            Map.of(0L, of(9, 20), 1L, of(9, 20), 2L, of(1, 20), 7L, of(1, 20)));
    assertThat(working.conflict()).isEqualTo(of(9, 20));
    assertThat(working.agreement()).isEqualTo(of(11, 20));
    assertThat(working.steps().get(1).products())
        .containsExactly(
            new CombinationSteps.Product(1, of(9, 10), of(1, 2), 0),
            new CombinationSteps.Product(1, of(9, 10), of(1, 2), 1),
            new CombinationSteps.Product(7, of(1, 10), of(1, 2), 2),
            new CombinationSteps.Product(7, of(1, 10), of(1, 2), 7));
  }

  /** Two of grade B together: 1 − 0.3 × 0.3, by hand. */
  @Test
  void witnessesThatSayTheSameAreTakenTogether() {
    CombinationSteps working =
        CombinationSteps.of(
            2,
            List.of(
                new SimpleSupport(700, 1), new SimpleSupport(500, 2), new SimpleSupport(700, 1)));

    assertThat(working.groups()).hasSize(2);
    assertThat(working.groups().get(0).members()).containsExactly(0, 2);
    assertThat(working.groups().get(0).weight()).isEqualTo(of(91, 100));
  }

  static List<PublishedCase> published() {
    return PublishedCase.all().stream().filter(it -> it.testimonies().isPresent()).toList();
  }

  /** The cases of dempster.csv, each with its source there. */
  @ParameterizedTest
  @MethodSource("published")
  void givesWhatIsPublished(PublishedCase one) {
    CombinationSteps working =
        CombinationSteps.of(one.frame().size() - 1, one.testimonies().orElse(List.of()));

    assertThat(working.conflict()).isEqualTo(one.conflict());
    Map<Long, BigFraction> normalized = new TreeMap<>();
    working.masses().forEach((set, mass) -> normalized.put(set, mass.divide(working.agreement())));
    normalized.remove(0L);
    normalized.values().removeIf(mass -> mass.signum() == 0);
    assertThat(normalized).isEqualTo(new TreeMap<>(one.exact()));
  }

  static List<Long> seeds() {
    return IntStream.range(0, 60).mapToObj(Long::valueOf).toList();
  }

  /** Seeded: five positions, up to eight sources in any order. */
  @ParameterizedTest
  @MethodSource("seeds")
  void agreesWithTheWeighingWhateverTheOrder(long seed) {
    Random random = new Random(seed);
    int positions = 1 + random.nextInt(5);
    List<SimpleSupport> testimonies = new ArrayList<>();
    for (int i = random.nextInt(9); i > 0; i--) {
      testimonies.add(
          new SimpleSupport(1 + random.nextInt(990), 1 + random.nextInt((1 << positions + 1) - 1)));
    }
    DempsterCombination weighing = DempsterCombination.of(positions, testimonies);
    Collections.shuffle(testimonies, random);
    CombinationSteps working = CombinationSteps.of(positions, testimonies);

    assertThat(working.conflict().doubleValue()).isCloseTo(weighing.conflict(), within(CLOSE));
    weighing
        .masses()
        .forEach(
            (set, mass) ->
                assertThat(
                        working
                            .masses()
                            .getOrDefault(set, BigFraction.ZERO)
                            .divide(working.agreement())
                            .doubleValue())
                    .isCloseTo(mass, within(CLOSE)));
    assertThat(working.masses().values().stream().reduce(BigFraction.ZERO, BigFraction::add))
        .isEqualTo(BigFraction.ONE);
    for (CombinationSteps.Step step : working.steps()) {
      assertThat(
              step.products().stream()
                  .map(CombinationSteps.Product::value)
                  .reduce(BigFraction.ZERO, BigFraction::add))
          .isEqualTo(BigFraction.ONE);
    }
  }
}
