package assize.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** It is to be told from Java's own map of the same order by nothing but that it never changes. */
class ImmutableOrderedMapTest {
  @Test
  void isAsJavasOwn() {
    Random random = new Random(3);
    for (int size : List.of(0, 1, 2, 3, 50, 500)) {
      Map<String, Integer> javas = new LinkedHashMap<>();
      while (javas.size() < size) {
        javas.put("item-" + random.nextInt(10_000), random.nextInt(9));
      }
      Map<String, Integer> ours = ImmutableOrderedMap.copyOf(javas);
      assertThat(ours).isEqualTo(javas).hasSameHashCodeAs(javas).hasToString(javas.toString());
      assertThat(javas).isEqualTo(ours);
      assertThat(ours.keySet()).containsExactlyElementsOf(javas.keySet());
      assertThat(List.copyOf(ours.values())).isEqualTo(List.copyOf(javas.values()));
      assertThat(List.copyOf(ours.entrySet())).isEqualTo(List.copyOf(javas.entrySet()));
      List<String> walked = new ArrayList<>();
      ours.forEach((name, value) -> walked.add(name + value));
      List<String> expected = new ArrayList<>();
      javas.forEach((name, value) -> expected.add(name + value));
      assertThat(walked).isEqualTo(expected);
      javas.forEach((name, value) -> assertThat(ours.get(name)).isEqualTo(value));
      assertThat(ours.containsKey("item")).isFalse();
      assertThat(ours.get("item")).isNull();
      assertThat(ours.getOrDefault("item", 7)).isEqualTo(7);
    }
  }

  @Test
  void neverChanges() {
    Map<String, Integer> javas = new LinkedHashMap<>(Map.of("horn", 1));
    Map<String, Integer> ours = ImmutableOrderedMap.copyOf(javas);
    javas.put("lamp", 2);
    assertThat(ours).containsOnlyKeys("horn");
    assertThat(ImmutableOrderedMap.copyOf(ours)).isSameAs(ours);
    assertThatThrownBy(() -> ours.put("lamp", 2)).isInstanceOf(UnsupportedOperationException.class);
    assertThatThrownBy(() -> ours.remove("horn")).isInstanceOf(UnsupportedOperationException.class);
    assertThatThrownBy(() -> ours.values().clear())
        .isInstanceOf(UnsupportedOperationException.class);
  }
}
