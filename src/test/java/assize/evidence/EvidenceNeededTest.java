package assize.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class EvidenceNeededTest {
  private static final List<Integer> GRADES = List.of(900, 700, 500, 300);
  private static final List<SimpleSupport> TWO =
      List.of(new SimpleSupport(900, 0b001), new SimpleSupport(500, 0b010));

  static IntStream seeds() {
    return IntStream.range(0, 40);
  }

  /** Green needs 0.9 of what is left after the conflict; worked by hand. */
  @Test
  void workedByHand() {
    List<EvidenceNeeded> ways = EvidenceNeeded.of(2, TWO, GRADES, 900);

    assertThat(ways).extracting(EvidenceNeeded::position).containsExactly(0, 0, 0, 0, 1, 1, 1, 1);
    assertThat(ways)
        .extracting(EvidenceNeeded::gradeWeightThousandths)
        .containsExactly(900, 700, 500, 300, 900, 700, 500, 300);
    assertThat(ways)
        .extracting(way -> way.further().orElseThrow())
        .containsExactly(1, 1, 1, 2, 2, 4, 6, 11);
  }

  @Test
  void whatIsSettledNeedsNothing() {
    List<SimpleSupport> one = List.of(new SimpleSupport(900, 0b01));

    assertThat(EvidenceNeeded.of(1, one, List.of(300), 900))
        .containsExactly(new EvidenceNeeded(0, 300, OptionalInt.of(0)));
  }

  @Test
  void certaintyIsNeverReached() {
    assertThat(EvidenceNeeded.of(2, TWO, GRADES, 1000))
        .extracting(EvidenceNeeded::further)
        .containsOnly(OptionalInt.empty());
  }

  @Test
  void aWeightOfAThousandthSettlesNothingInNinetyNine() {
    assertThat(EvidenceNeeded.of(1, List.of(), List.of(1), 100))
        .containsExactly(new EvidenceNeeded(0, 1, OptionalInt.empty()));
    // 1 - 0.999^99 is 0.0943; 0.094 is reached, and not by 98, which gives 0.0934.
    assertThat(EvidenceNeeded.of(1, List.of(), List.of(1), 94))
        .containsExactly(new EvidenceNeeded(0, 1, OptionalInt.of(99)));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void addingThatManySourcesSettlesItAndOneLessDoesNot(int seed) {
    Random random = new Random(seed);
    List<SimpleSupport> testimonies = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      testimonies.add(new SimpleSupport(1 + random.nextInt(990), 1 + random.nextInt(15)));
    }
    for (EvidenceNeeded way : EvidenceNeeded.of(3, testimonies, GRADES, 900)) {
      int further = way.further().orElseThrow();
      assertThat(reaches(testimonies, way, further)).isTrue();
      if (further > 0) {
        assertThat(reaches(testimonies, way, further - 1)).isFalse();
      }
    }
  }

  private static boolean reaches(List<SimpleSupport> testimonies, EvidenceNeeded way, int further) {
    List<SimpleSupport> more = new ArrayList<>(testimonies);
    for (int i = 0; i < further; i++) {
      more.add(new SimpleSupport(way.gradeWeightThousandths(), 1L << way.position()));
    }
    return DempsterCombination.of(3, more).beliefAtLeast(way.position(), 900);
  }
}
