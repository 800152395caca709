package assize.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class IndependenceTest {
  private static final Map<String, Set<String>> CHAIN =
      Map.of("guide", Set.of("article"), "article", Set.of("drawing"));

  @Test
  void aCopyThatRepeatsAddsNothing() {
    assertThat(Independence.witnesses(CHAIN, stands("guide", 1, "article", 1, "drawing", 1)))
        .containsExactly("drawing");
  }

  @Test
  void aCopyThatDiffersCounts() {
    assertThat(Independence.witnesses(CHAIN, stands("guide", 1, "article", 2, "drawing", 2)))
        .containsExactly("guide", "drawing");
  }

  @Test
  void copyingCarriesOverSourcesThatDoNotSpeakOrDiffer() {
    assertThat(Independence.witnesses(CHAIN, stands("guide", 1, "drawing", 1)))
        .containsExactly("drawing");
    assertThat(Independence.witnesses(CHAIN, stands("guide", 1, "article", 2, "drawing", 1)))
        .containsExactly("article", "drawing");
  }

  @Test
  void whereTheOriginalIsSilentItsCopyStandsForIt() {
    assertThat(Independence.witnesses(CHAIN, stands("guide", 1, "article", 1)))
        .containsExactly("article");
  }

  @Test
  void sourcesThatSayTheSameWithoutCopyingBothCount() {
    assertThat(Independence.witnesses(Map.of(), stands("photo", 1, "drawing", 1)))
        .containsExactly("photo", "drawing");
  }

  @Test
  void theWayToTheWitnessIsTraced() {
    Map<String, Long> stands = stands("guide", 1, "article", 1, "drawing", 1);

    assertThat(Independence.trace("guide", CHAIN, stands))
        .containsExactly("guide", "article", "drawing");
    assertThat(Independence.trace("drawing", CHAIN, stands)).containsExactly("drawing");
    assertThat(Independence.trace("guide", CHAIN, stands("guide", 1, "drawing", 1)))
        .containsExactly("guide", "article", "drawing");
    assertThatThrownBy(() -> Independence.trace("letter", CHAIN, stands))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void theShortestWayIsTraced() {
    Map<String, Set<String>> copies =
        Map.of("guide", Set.of("article", "drawing"), "article", Set.of("drawing"));

    assertThat(Independence.trace("guide", copies, stands("guide", 1, "article", 1, "drawing", 1)))
        .containsExactly("guide", "drawing");
  }

  @Test
  void copiedSourcesAreNamedNearestFirst() {
    assertThat(Independence.copied("guide", CHAIN)).containsExactly("article", "drawing");
    assertThat(Independence.copied("drawing", CHAIN)).isEmpty();
  }

  @Test
  void noSourceCopiesItselfEvenInACircle() {
    Map<String, Set<String>> circle = Map.of("a", Set.of("b"), "b", Set.of("a"));

    assertThat(Independence.copied("a", circle)).containsExactly("b");
    assertThat(Independence.witnesses(circle, stands("a", 1))).containsExactly("a");
  }

  @Test
  void aCircleIsFound() {
    Map<String, Set<String>> circle =
        Map.of(
            "a", Set.of("b"),
            "b", Set.of("c", "d"),
            "d", Set.of("e"),
            "e", Set.of("b"));

    assertThat(Independence.circle(circle)).contains(List.of("b", "d", "e"));
    assertThat(Independence.circle(Map.of("a", Set.of("a")))).contains(List.of("a"));
  }

  @Test
  void whereWaysOnlyMeetThereIsNoCircle() {
    assertThat(Independence.circle(CHAIN)).isEmpty();
    assertThat(
            Independence.circle(Map.of("a", Set.of("b", "c"), "b", Set.of("d"), "c", Set.of("d"))))
        .isEmpty();
  }

  @Test
  void aVeryLongChainIsFollowedToItsEnd() {
    int length = 50_000;
    Map<Integer, Set<Integer>> copies = new HashMap<>();
    for (int i = 0; i < length; i++) {
      copies.put(i, Set.of(i + 1));
    }
    assertThat(Independence.circle(copies)).isEmpty();
    assertThat(Independence.trace(0, copies, Map.of(0, 1L, length, 1L))).hasSize(length + 1);
    copies.put(length, Set.of(0));
    assertThat(Independence.circle(copies).orElseThrow()).hasSize(length + 1);
  }

  private static Map<String, Long> stands(Object... pairs) {
    Map<String, Long> stands = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      stands.put((String) pairs[i], ((Integer) pairs[i + 1]).longValue());
    }
    return stands;
  }
}
