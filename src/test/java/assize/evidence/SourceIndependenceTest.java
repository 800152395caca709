package assize.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
            SourceIndependence.of(CHAIN).witnesses(stands("guide", 1, "article", 1, "drawing", 1)))
        .containsExactly("drawing");
  }

  @Test
  void aCopyThatDiffersCounts() {
    assertThat(
            SourceIndependence.of(CHAIN).witnesses(stands("guide", 1, "article", 2, "drawing", 2)))
        .containsExactly("guide", "drawing");
  }

  @Test
  void copyingCarriesOverSourcesThatDoNotSpeakOrDiffer() {
    assertThat(SourceIndependence.of(CHAIN).witnesses(stands("guide", 1, "drawing", 1)))
        .containsExactly("drawing");
    assertThat(
            SourceIndependence.of(CHAIN).witnesses(stands("guide", 1, "article", 2, "drawing", 1)))
        .containsExactly("article", "drawing");
  }

  @Test
  void whereTheOriginalIsSilentItsCopyStandsForIt() {
    assertThat(SourceIndependence.of(CHAIN).witnesses(stands("guide", 1, "article", 1)))
        .containsExactly("article");
  }

  @Test
  void sourcesThatSayTheSameWithoutCopyingBothCount() {
    assertThat(
            SourceIndependence.of(Map.<String, Set<String>>of())
                .witnesses(stands("photo", 1, "drawing", 1)))
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
    assertThat(SourceIndependence.of(circle).witnesses(stands("a", 1))).containsExactly("a");
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
      Set<Integer> witnesses = independence.witnesses(stands);
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
    return independence.trace(source, stands, independence.witnesses(stands));
  }

  private static Map<String, Long> stands(Object... pairs) {
    Map<String, Long> stands = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      stands.put((String) pairs[i], ((Integer) pairs[i + 1]).longValue());
    }
    return stands;
  }
}
