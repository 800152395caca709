package assize.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Where the items of a rule set stand. */
class BenchTest {
  private static String area(String id, int from, int to) {
    return "  %s:\n    name: %s\n    items:\n".formatted(id, id)
        + IntStream.range(from, to)
            .mapToObj(
                i ->
                    "      i%d: {title: I, points: 1, %sexpect: {present: yes}}\n"
                        .formatted(i, i == 7 ? "cause: c, " : ""))
            .collect(Collectors.joining());
  }

  private final Bench bench =
      new Bench(
          Judging.rules(
              "rule_set: bench\nname: Bench\nedition: \"1\"\nareas:\n"
                  + area("first", 0, 6)
                  + area("second", 6, 12)));

  @Test
  void anItemIsFoundFromWhereverItIsLookedFor() {
    assertThat(bench.items()).isEqualTo(12);
    for (int from = 0; from <= 12; from++) {
      for (int i = 0; i < 12; i++) {
        assertThat(bench.item(i).id()).isEqualTo("i" + i);
        // the rule set's own text, and the same letters in a text of their own
        assertThat(bench.placeFrom(from, bench.item(i).id())).isEqualTo(i);
        assertThat(bench.placeFrom(from, new String("i" + i))).isEqualTo(i);
      }
      assertThat(bench.placeFrom(from, "i12")).isNegative();
    }
  }

  @Test
  void knowsAreasAndWhoSharesItsLoss() {
    assertThat(IntStream.range(0, 12).map(bench::area))
        .containsExactly(0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1);
    assertThat(IntStream.range(0, 12).filter(i -> !bench.isAlone(i))).containsExactly(7);
    assertThat(bench.lots()).hasSize(2).doesNotHaveDuplicates();
  }
}
