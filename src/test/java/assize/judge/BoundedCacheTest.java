package assize.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class BoundedCacheTest {
  private final BoundedCache<String, String> kept = new BoundedCache<>(2);
  private final List<String> worked = new ArrayList<>();

  private String get(String key) {
    return kept.get(
        key,
        asked -> {
          worked.add(asked);
          return asked + asked;
        });
  }

  @Test
  void whatIsKeptIsWorkedOutOnce() {
    assertThat(get("a")).isEqualTo("aa").isSameAs(get("a"));
    assertThat(get("b")).isEqualTo("bb").isSameAs(get("b"));
    assertThat(worked).containsExactly("a", "b");
  }

  @Test
  void whatComesAfterIsWorkedOutEachTime() {
    get("a");
    get("b");
    assertThat(get("c")).isEqualTo("cc");
    assertThat(get("c")).isEqualTo("cc");
    assertThat(get("a")).isEqualTo("aa");
    assertThat(worked).containsExactly("a", "b", "c", "c");
  }

  /** Two that work at once: the one that was there first is everybody's. */
  @Test
  void theFirstThatIsKeptIsEverybodys() {
    String slow =
        kept.get(
            "a",
            asked -> {
              get("a");
              return "late";
            });
    assertThat(slow).isEqualTo("aa").isSameAs(get("a"));
  }
}
