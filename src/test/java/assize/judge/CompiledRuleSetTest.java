package assize.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Where the items of a rule set stand. */
class CompiledRuleSetTest {
  private static String area(String id, int from, int to) {
    return "  %s:\n    name: %s\n    items:\n".formatted(id, id)
        + IntStream.range(from, to)
            .mapToObj(
                i -> "      i%d: {title: I, points: 1, expect: {present: yes}}\n".formatted(i))
            .collect(Collectors.joining());
  }

  private final CompiledRuleSet bench =
      new CompiledRuleSet(
          Judging.rules(
              "rule_set: bench\nname: Bench\nedition: \"1\"\nareas:\n"
                  + area("first", 0, 6)
                  + area("second", 6, 12)));

  @Test
  void knowsTheAreaOfEachItem() {
    assertThat(bench.items()).isEqualTo(12);
    assertThat(IntStream.range(0, 12).map(bench::area))
        .containsExactly(0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1);
    assertThat(IntStream.range(0, 12).mapToObj(i -> bench.item(i).id()))
        .startsWith("i0", "i1")
        .endsWith("i11");
    assertThat(bench.lots()).hasSize(2);
  }
}
