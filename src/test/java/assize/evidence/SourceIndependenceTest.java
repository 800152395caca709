package assize.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SourceIndependenceTest {
  private static final Map<String, Set<String>> CHAIN =
      Map.of("guide", Set.of("article"), "article", Set.of("drawing"));

  @Test
  void aCopyThatRepeatsAddsNothing() {
    assertThat(
            SourceIndependence.of(CHAIN)
                .witnesses(stands("guide", 1, "article", 1, "drawing", 1), Map.of()))
        .containsExactly("drawing");
  }

  @Test
  void aCopyThatDiffersCounts() {
    assertThat(
            SourceIndependence.of(CHAIN)
                .witnesses(stands("guide", 1, "article", 2, "drawing", 2), Map.of()))
        .containsExactly("guide", "drawing");
  }

  @Test
  void copyingCarriesOverSourcesThatDoNotSpeakOrDiffer() {
    assertThat(SourceIndependence.of(CHAIN).witnesses(stands("guide", 1, "drawing", 1), Map.of()))
        .containsExactly("drawing");
    assertThat(
            SourceIndependence.of(CHAIN)
                .witnesses(stands("guide", 1, "article", 2, "drawing", 1), Map.of()))
        .containsExactly("article", "drawing");
  }

  @Test
  void whereTheOriginalIsSilentItsCopyStandsForIt() {
    assertThat(SourceIndependence.of(CHAIN).witnesses(stands("guide", 1, "article", 1), Map.of()))
        .containsExactly("article");
  }

  /** Worked case: a drawing of grade A that goes back to a memory of grade D that speaks too. */
  @Test
  void theWeightiestOfRelativesCounts() {
    Map<String, Long> stands = stands("guide", 1, "article", 1, "drawing", 1);
    assertThat(
            SourceIndependence.of(CHAIN)
                .witnesses(stands, Map.of("guide", 500, "article", 900, "drawing", 300)))
        .containsExactly("article");
    Set<String> witnesses = Set.of("article");
    assertThat(SourceIndependence.of(CHAIN).trace("drawing", stands, witnesses))
        .containsExactly("drawing", "article");
    assertThat(SourceIndependence.of(CHAIN).trace("guide", stands, witnesses))
        .containsExactly("guide", "article");
  }

  @Test
  void twoThatCopyASilentThirdAreOneWitness() {
    Map<String, Set<String>> copies =
        Map.of("guide", Set.of("drawing"), "article", Set.of("drawing"));
    Map<String, Long> stands = stands("guide", 1, "article", 1);
    assertThat(
            SourceIndependence.of(copies).witnesses(stands, Map.of("guide", 900, "article", 900)))
        .hasSize(1);
    assertThat(SourceIndependence.of(copies).trace("guide", stands, Set.of("article")))
        .containsExactly("guide", "drawing", "article");
    assertThat(SourceIndependence.of(copies).witnesses(stands("guide", 1, "article", 2), Map.of()))
        .containsExactly("guide", "article");
  }

  /** A copy of two strangers makes them no relatives: both together leave less doubt than it. */
  @Test
  void aCopyOfTwoStrangersMakesThemNoRelatives() {
    Map<String, Set<String>> copies = Map.of("guide", Set.of("photo", "drawing"));
    Map<String, Long> stands = stands("guide", 1, "photo", 1, "drawing", 1);
    SourceIndependence<String> independence = SourceIndependence.of(copies);
    assertThat(independence.witnesses(stands, Map.of("guide", 900, "photo", 700, "drawing", 700)))
        .containsExactly("photo", "drawing");
    assertThat(independence.witnesses(stands, Map.of("guide", 900, "photo", 500, "drawing", 500)))
        .containsExactly("guide");
  }

  /** Against every choice tried one by one; and a source more never leaves more doubt. */
  @Test
  void theLeastDoubtIsLeft() {
    for (int seed = 0; seed < 300; seed++) {
      Random random = new Random(seed);
      int count = 1 + random.nextInt(7);
      Map<Integer, Set<Integer>> copies = new HashMap<>();
      Map<Integer, Long> stands = new LinkedHashMap<>();
      Map<Integer, Integer> weights = new HashMap<>();
      for (int i = 0; i < count; i++) {
        int source = i;
        copies.put(
            i,
            IntStream.range(0, i)
                .filter(it -> random.nextInt(4) == 0)
                .boxed()
                .collect(Collectors.toSet()));
        weights.put(i, 100 * (1 + random.nextInt(9)));
        if (random.nextInt(5) > 0) {
          stands.put(source, 1L);
        }
      }
      double least = doubt(copies, stands, weights);
      double best = 1;
      List<Integer> speaking = List.copyOf(stands.keySet());
      for (int choice = 0; choice < 1 << speaking.size(); choice++) {
        double doubt = 1;
        Set<Integer> taken = new HashSet<>();
        boolean related = false;
        for (int i = 0; i < speaking.size(); i++) {
          if ((choice >> i & 1) == 1) {
            int one = speaking.get(i);
            related |= taken.stream().anyMatch(it -> meet(copies, it, one));
            taken.add(one);
            doubt *= 1 - weights.getOrDefault(one, 1) / 1000.0;
          }
        }
        best = related ? best : Math.min(best, doubt);
      }
      assertThat(least).as("seed " + seed).isCloseTo(best, within(1e-12));
      for (int gone : speaking) {
        Map<Integer, Long> fewer = new LinkedHashMap<>(stands);
        fewer.remove(gone);
        assertThat(doubt(copies, fewer, weights)).isGreaterThanOrEqualTo(least - 1e-12);
      }
    }
  }

  private static double doubt(
      Map<Integer, Set<Integer>> copies, Map<Integer, Long> stands, Map<Integer, Integer> weights) {
    return SourceIndependence.of(copies).witnesses(stands, weights).stream()
        .mapToDouble(it -> 1 - weights.getOrDefault(it, 1) / 1000.0)
        .reduce(1, (a, b) -> a * b);
  }

  private static boolean meet(Map<Integer, Set<Integer>> copies, int one, int other) {
    Set<Integer> up = up(copies, one);
    return up(copies, other).stream().anyMatch(up::contains);
  }

  private static Set<Integer> up(Map<Integer, Set<Integer>> copies, int source) {
    Set<Integer> all = new HashSet<>(Set.of(source));
    copies.getOrDefault(source, Set.of()).forEach(it -> all.addAll(up(copies, it)));
    return all;
  }

  @Test
  void sourcesThatSayTheSameWithoutCopyingBothCount() {
    assertThat(
            SourceIndependence.of(Map.<String, Set<String>>of())
                .witnesses(stands("photo", 1, "drawing", 1), Map.of()))
        .containsExactly("photo", "drawing");
  }

  @Test
  void theWayToTheWitnessIsTraced() {
    Map<String, Long> stands = stands("guide", 1, "article", 1, "drawing", 1);

    assertThat(trace("guide", CHAIN, stands)).containsExactly("guide", "article", "drawing");
    assertThat(trace("drawing", CHAIN, stands)).containsExactly("drawing");
    assertThat(trace("guide", CHAIN, stands("guide", 1, "drawing", 1)))
        .containsExactly("guide", "article", "drawing");
    assertThatThrownBy(() -> trace("letter", CHAIN, stands))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void theShortestWayIsTraced() {
    Map<String, Set<String>> copies =
        Map.of("guide", Set.of("article", "drawing"), "article", Set.of("drawing"));

    assertThat(trace("guide", copies, stands("guide", 1, "article", 1, "drawing", 1)))
        .containsExactly("guide", "drawing");
  }

  @Test
  void copiedSourcesAreNamedNearestFirst() {
    assertThat(SourceIndependence.of(CHAIN).copied("guide")).containsExactly("article", "drawing");
    assertThat(SourceIndependence.of(CHAIN).copied("drawing")).isEmpty();
  }

  @Test
  void noSourceCopiesItselfEvenInACircle() {
    Map<String, Set<String>> circle = Map.of("a", Set.of("b"), "b", Set.of("a"));

    assertThat(SourceIndependence.of(circle).copied("a")).containsExactly("b");
    assertThat(SourceIndependence.of(circle).witnesses(stands("a", 1), Map.of()))
        .containsExactly("a");
  }

  @Test
  void aCircleIsFound() {
    Map<String, Set<String>> circle =
        Map.of(
            "a", Set.of("b"),
            "b", Set.of("c", "d"),
            "d", Set.of("e"),
            "e", Set.of("b"));

    assertThat(SourceIndependence.circle(circle)).contains(List.of("b", "d", "e"));
    assertThat(SourceIndependence.circle(Map.of("a", Set.of("a")))).contains(List.of("a"));
  }

  @Test
  void whereWaysOnlyMeetThereIsNoCircle() {
    assertThat(SourceIndependence.circle(CHAIN)).isEmpty();
    assertThat(
            SourceIndependence.circle(
                Map.of("a", Set.of("b", "c"), "b", Set.of("d"), "c", Set.of("d"))))
        .isEmpty();
  }

  @Test
  void aVeryLongChainIsFollowedToItsEnd() {
    int length = 50_000;
    Map<Integer, Set<Integer>> copies = new HashMap<>();
    for (int i = 0; i < length; i++) {
      copies.put(i, Set.of(i + 1));
    }
    assertThat(SourceIndependence.circle(copies)).isEmpty();
    assertThat(trace(0, copies, Map.of(0, 1L, length, 1L))).hasSize(length + 1);
    copies.put(length, Set.of(0));
    assertThat(SourceIndependence.circle(copies).orElseThrow()).hasSize(length + 1);
  }

  /** Rows of sources that each copy the whole row before: every way through them is as short. */
  @Test
  void aNetOfCopiesIsFollowedOnceFromEachSource() {
    int wide = 25;
    Map<Integer, Set<Integer>> copies = new HashMap<>();
    Map<Integer, Long> stands = new LinkedHashMap<>();
    for (int i = 0; i < wide * wide; i++) {
      stands.put(i, 1L);
      if (i >= wide) {
        int row = (i / wide - 1) * wide;
        copies.put(i, IntStream.range(row, row + wide).boxed().collect(Collectors.toSet()));
      }
    }
    Looked looked = new Looked(copies);
    SourceIndependence<Integer> independence = SourceIndependence.of(looked);
    for (int i = 0; i < 100; i++) {
      Set<Integer> witnesses = independence.witnesses(stands, Map.of());
      assertThat(witnesses).hasSize(wide);
      assertThat(stands.keySet())
          .allMatch(it -> independence.trace(it, stands, witnesses).size() == it / wide + 1);
    }
    int all = wide * wide;
    assertThat(looked.asked).isLessThanOrEqualTo(all * (all + 1));
  }

  /** Counts how often it is asked what a source copies. */
  private static final class Looked extends HashMap<Integer, Set<Integer>> {
    private static final long serialVersionUID = 1;
    private int asked;

    Looked(Map<Integer, Set<Integer>> copies) {
      super(copies);
    }

    @Override
    public Set<Integer> getOrDefault(Object source, Set<Integer> none) {
      asked++;
      return super.getOrDefault(source, none);
    }
  }

  private static <S extends Comparable<? super S>> List<S> trace(
      S source, Map<S, Set<S>> copies, Map<S, Long> stands) {
    SourceIndependence<S> independence = SourceIndependence.of(copies);
    return independence.trace(source, stands, independence.witnesses(stands, Map.of()));
  }

  private static Map<String, Long> stands(Object... pairs) {
    Map<String, Long> stands = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      stands.put((String) pairs[i], ((Integer) pairs[i + 1]).longValue());
    }
    return stands;
  }
}
