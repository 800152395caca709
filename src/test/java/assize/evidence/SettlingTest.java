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

class SettlingTest {
  private static final List<Integer> GRADES = List.of(900, 700, 500, 300);
  private static final List<Testimony> TWO =
      List.of(new Testimony(900, 0b001), new Testimony(500, 0b010));

  static IntStream seeds() {
    return IntStream.range(0, 40);
  }

  /** Green needs 0.9 of what is left after the conflict; worked by hand. */
  @Test
  void workedByHand() {
    List<Settling> ways = Settling.of(2, TWO, GRADES, 900);

    assertThat(ways).extracting(Settling::position).containsExactly(0, 0, 0, 0, 1, 1, 1, 1);
    assertThat(ways)
        .extracting(Settling::gradeWeightThousandths)
        .containsExactly(900, 700, 500, 300, 900, 700, 500, 300);
    assertThat(ways)
        .extracting(way -> way.further().orElseThrow())
        .containsExactly(1, 1, 1, 2, 2, 4, 6, 11);
  }

  @Test
  void whatIsSettledNeedsNothing() {
    List<Testimony> one = List.of(new Testimony(900, 0b01));

    assertThat(Settling.of(1, one, List.of(300), 900))
        .containsExactly(new Settling(0, 300, OptionalInt.of(0)));
  }

  @Test
  void certaintyIsNeverReached() {
    assertThat(Settling.of(2, TWO, GRADES, 1000))
        .extracting(Settling::further)
        .containsOnly(OptionalInt.empty());
  }

  @Test
  void aWeightOfAThousandthSettlesNothingInNinetyNine() {
    assertThat(Settling.of(1, List.of(), List.of(1), 100))
        .containsExactly(new Settling(0, 1, OptionalInt.empty()));
    // 1 - 0.999^99 is 0.0943; 0.094 is reached, and not by 98, which gives 0.0934.
    assertThat(Settling.of(1, List.of(), List.of(1), 94))
        .containsExactly(new Settling(0, 1, OptionalInt.of(99)));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void addingThatManySourcesSettlesItAndOneLessDoesNot(int seed) {
    Random random = new Random(seed);
    List<Testimony> testimonies = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      testimonies.add(new Testimony(1 + random.nextInt(990), 1 + random.nextInt(15)));
    }
    for (Settling way : Settling.of(3, testimonies, GRADES, 900)) {
      int further = way.further().orElseThrow();
      assertThat(reaches(testimonies, way, further)).isTrue();
      if (further > 0) {
        assertThat(reaches(testimonies, way, further - 1)).isFalse();
      }
    }
  }

  private static boolean reaches(List<Testimony> testimonies, Settling way, int further) {
    List<Testimony> more = new ArrayList<>(testimonies);
    for (int i = 0; i < further; i++) {
      more.add(new Testimony(way.gradeWeightThousandths(), 1L << way.position()));
    }
    return Weighing.of(3, more).beliefAtLeast(way.position(), 900);
  }
}
