package assize.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import assize.evidence.DempsterCombination.Share;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DempsterCombinationPropertiesTest {
  /** Random testimonies, the same in every run. */
  record Draw(int seed, int positions, List<SimpleSupport> testimonies) {
    static Draw of(int seed) {
      Random random = new Random(seed);
      int positions = 1 + random.nextInt(5);
      List<SimpleSupport> testimonies = new ArrayList<>();
      int sources = random.nextInt(8);
      for (int i = 0; i < sources; i++) {
        long stands = 1 + random.nextInt((1 << (positions + 1)) - 1);
        testimonies.add(new SimpleSupport(1 + random.nextInt(990), stands));
      }
      return new Draw(seed, positions, testimonies);
    }

    DempsterCombination weighing() {
      return DempsterCombination.of(positions, testimonies);
    }
  }

  static List<Draw> draws() {
    return IntStream.range(0, 120).mapToObj(Draw::of).toList();
  }

  @ParameterizedTest
  @MethodSource("draws")
  void theOrderOfSourcesNeverMatters(Draw draw) {
    List<SimpleSupport> shuffled = new ArrayList<>(draw.testimonies());
    Collections.shuffle(shuffled, new Random(draw.seed()));
    DempsterCombination one = draw.weighing();
    DempsterCombination other = DempsterCombination.of(draw.positions(), shuffled);

    assertThat(other.exact()).isEqualTo(one.exact());
    assertThat(other.masses()).isEqualTo(one.masses());
    assertThat(other.conflict()).isEqualTo(one.conflict());
    assertThat(other.shares(-1)).isEqualTo(one.shares(-1));
  }

  /** Each source is right or worth nothing: the masses are those of all the ways that can be. */
  @ParameterizedTest
  @MethodSource("draws")
  void massesAreThoseOfEveryChoiceOfReliableSources(Draw draw) {
    int sources = draw.testimonies().size();
    Map<Long, BigFraction> ways = new TreeMap<>();
    for (int reliable = 0; reliable < 1 << sources; reliable++) {
      long standing = (1L << (draw.positions() + 1)) - 1;
      BigFraction chance = BigFraction.ONE;
      for (int i = 0; i < sources; i++) {
        SimpleSupport testimony = draw.testimonies().get(i);
        boolean counts = (reliable >> i & 1) == 1;
        int thousandths =
            counts ? testimony.weightThousandths() : 1000 - testimony.weightThousandths();
        chance = chance.multiply(BigFraction.of(thousandths, 1000));
        standing &= counts ? testimony.compatiblePositions() : -1;
      }
      ways.merge(standing, chance, BigFraction::add);
    }
    BigFraction conflict = ways.getOrDefault(0L, BigFraction.ZERO);
    ways.remove(0L);

    DempsterCombination weighing = draw.weighing();
    assertThat(weighing.conflict()).isCloseTo(conflict.doubleValue(), within(1e-15));
    assertThat(weighing.masses().keySet()).isEqualTo(ways.keySet());
    ways.forEach(
        (set, mass) ->
            assertThat(BigFraction.of(weighing.exact().of(set), weighing.exact().agreement()))
                .isEqualByComparingTo(mass.divide(BigFraction.ONE.subtract(conflict))));
  }

  @ParameterizedTest
  @MethodSource("draws")
  void beliefNeverExceedsPlausibility(Draw draw) {
    DempsterCombination weighing = draw.weighing();
    for (int i = 0; i <= draw.positions(); i++) {
      assertThat(weighing.belief(i)).isBetween(0.0, weighing.plausibility(i));
      assertThat(weighing.plausibility(i)).isLessThanOrEqualTo(1);
    }
  }

  @ParameterizedTest
  @MethodSource("draws")
  void sharesAddUpToOneExactlyAndLieWithinTheBounds(Draw draw) {
    DempsterCombination weighing = draw.weighing();
    BigFraction sum = BigFraction.ZERO;
    for (Share share : weighing.shares(-1)) {
      sum = sum.add(BigFraction.of(share.numerator(), share.denominator()));
    }

    assertThat(sum).isEqualByComparingTo(BigFraction.ONE);
    List<Share> shares = weighing.shares(-1);
    for (int i = 0; i < draw.positions(); i++) {
      // Leaving out what nobody mentions can raise a share above its plausibility, never sink it.
      assertThat(shares.get(i).value()).isGreaterThanOrEqualTo(weighing.belief(i) - 1e-12);
    }
  }

  @ParameterizedTest
  @MethodSource("draws")
  void aSupportingSourceNeverLowersTheBelief(Draw draw) {
    for (int i = 0; i < draw.positions(); i++) {
      List<SimpleSupport> more = new ArrayList<>(draw.testimonies());
      more.add(new SimpleSupport(1 + draw.seed() * 7, 1L << i));
      MassFunction before = draw.weighing().exact();
      MassFunction after = DempsterCombination.of(draw.positions(), more).exact();

      assertThat(BigFraction.of(after.belief(1L << i), after.agreement()))
          .isGreaterThanOrEqualTo(BigFraction.of(before.belief(1L << i), before.agreement()));
    }
  }

  /**
   * Where every source says one position: q is the product of the doubts for it, Q of all; the
   * position has (1 - q) Q / q of the sum that adds Q (Shafer 1976, worked).
   */
  @ParameterizedTest
  @MethodSource("draws")
  void singlePositionsFollowTheClosedForm(Draw draw) {
    Random random = new Random(draw.seed());
    List<SimpleSupport> says = new ArrayList<>();
    BigFraction[] doubts = new BigFraction[draw.positions()];
    Arrays.fill(doubts, BigFraction.ONE);
    BigFraction all = BigFraction.ONE;
    for (int source = 0; source < 9; source++) {
      int position = random.nextInt(draw.positions());
      int weight = 1 + random.nextInt(990);
      says.add(new SimpleSupport(weight, 1L << position));
      doubts[position] = doubts[position].multiply(BigFraction.of(1000 - weight, 1000));
      all = all.multiply(BigFraction.of(1000 - weight, 1000));
    }
    BigFraction sum = all;
    List<BigFraction> parts = new ArrayList<>();
    for (BigFraction doubt : doubts) {
      BigFraction part = BigFraction.ONE.subtract(doubt).multiply(all).divide(doubt);
      parts.add(part);
      sum = sum.add(part);
    }

    MassFunction masses = DempsterCombination.of(draw.positions(), says).exact();
    assertThat(BigFraction.of(masses.conflict(), masses.whole()))
        .isEqualByComparingTo(BigFraction.ONE.subtract(sum));
    for (int i = 0; i < draw.positions(); i++) {
      assertThat(BigFraction.of(masses.belief(1L << i), masses.agreement()))
          .isEqualByComparingTo(parts.get(i).divide(sum));
      assertThat(BigFraction.of(masses.plausibility(1L << i), masses.agreement()))
          .isEqualByComparingTo(parts.get(i).add(all).divide(sum));
    }
  }
}
