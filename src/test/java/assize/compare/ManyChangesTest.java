package assize.compare;

import static org.assertj.core.api.Assertions.assertThat;

import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Editions of which nearly everything changed. */
class ManyChangesTest {
  private static RuleSet rules(String models, String more, int items, IntFunction<String> item) {
    String text =
        "rule_set: many\nname: Many\nedition: '1'\nscale: {method: sum, out_of: 10}\nmodels: {"
            + models
            + "}\n"
            + more
            + "areas:\n  a:\n    name: A\n    items:\n"
            + IntStream.range(0, items)
                .mapToObj(i -> "      " + item.apply(i) + "\n")
                .collect(Collectors.joining());
    var read = RuleSetReader.parse(List.of(new SourceFile("many.yaml", text)));
    return read.value().orElseThrow(() -> new AssertionError(read.diagnostics().get(0)));
  }

  private static String item(String id, String title, String expect) {
    return id + ": {title: " + title + ", points: 1, expect: {" + expect + "}}";
  }

  private static RuleSet named(String prefix, int items) {
    return rules(
        "X1: {name: X1, production: 1932/1936}",
        "",
        items,
        i -> item(prefix + i, "Bolt " + i, "present: yes"));
  }

  /** Pairs of neighboring letters, taken away one by one (Dice 1945). */
  private static double dice(String a, String b) {
    List<String> one = pairs(a);
    List<String> other = pairs(b);
    int all = one.size() + other.size();
    long shared = one.stream().filter(other::remove).count();
    return all == 0 ? (a.equals(b) ? 1 : 0) : 2.0 * shared / all;
  }

  private static List<String> pairs(String text) {
    return IntStream.range(1, text.length())
        .mapToObj(i -> text.substring(i - 1, i + 1))
        .collect(Collectors.toCollection(ArrayList::new));
  }

  @Test
  void likenessIsThatOfPairsTakenAwayOneByOne() {
    Random random = new Random(3);
    for (int run = 0; run < 2000; run++) {
      String a = text(random);
      String b = text(random);
      assertThat(RenameCandidate.alike(a, b)).as(a + " " + b).isEqualTo(dice(a, b));
    }
  }

  private static String text(Random random) {
    return random
        .ints(random.nextInt(9), 'a', 'd')
        .mapToObj(Character::toString)
        .collect(Collectors.joining());
  }

  /** All pairs of 4,000 would be 16 million comparisons, each of all that is expected. */
  @Test
  void suggestsNewNamesForTheFirstThousandItems() {
    EditionComparison editions = EditionComparison.between(named("i", 4_000), named("j", 4_000));
    assertThat(editions.renamings()).hasSize(1000);
    assertThat(editions.renamings())
        .allMatch(it -> it.before().substring(1).equals(it.after().substring(1)));
    assertThat(editions.changes()).hasSize(8_000);
  }

  @Test
  void longTitlesAreComparedByTheirBeginnings() {
    String title = "Bolt of the frame, " + "x".repeat(200);
    assertThat(RenameCandidate.alike(title + "one".repeat(20_000), title + "two".repeat(20_000)))
        .isEqualTo(1);
  }

  @Test
  void looksAtEachOfTheThingsThatArePairedOnce() {
    List<Integer> newer = IntStream.range(0, 50_000).boxed().toList();
    List<Integer> older = new ArrayList<>(newer);
    Collections.reverse(older);
    AtomicLong asked = new AtomicLong();
    List<Integer> paired = new ArrayList<>();
    Pairing<Integer> pairing = new Pairing<>(newer);
    List<Integer> alone =
        pairing.pair(
            older,
            it -> {
              asked.incrementAndGet();
              return it / 2 * 2;
            },
            (one, other) -> paired.add(other));
    assertThat(asked).hasValue(100_000);
    assertThat(alone).isEmpty();
    assertThat(pairing.left()).isEmpty();
    // the first newer one that is left, for the older ones in their order
    assertThat(paired).startsWith(49_998, 49_999, 49_996).hasSize(50_000);
  }

  private static String models(int count, int last) {
    return IntStream.range(0, count)
        .mapToObj(i -> "M" + i + ": {name: M" + i + ", production: 1932/" + last + "}")
        .collect(Collectors.joining(", "));
  }

  @Test
  void changesOfAllItemsShareTheirNames() {
    RuleSet older = rules(models(60, 1936), "", 500, i -> item("i" + i, "I", "present: yes"));
    RuleSet newer = rules(models(60, 1937), "", 500, i -> item("i" + i, "I", "present: yes"));
    AffectedItems bearing = new AffectedItems(older, newer);
    assertThat(bearing.all()).isSameAs(bearing.all()).hasSize(500).startsWith("i0", "i1");
    EditionComparison editions = EditionComparison.between(older, newer);
    assertThat(editions.bearing()).isEqualTo(30_000);
    assertThat(editions.isTooMuch()).isFalse();
    assertThat(editions.altering().get("i7")).hasSize(60);
  }

  private static String finishes(int count, String name) {
    return IntStream.range(0, count)
        .mapToObj(
            i ->
                "  f"
                    + i
                    + ": {name: "
                    + name
                    + i
                    + (i > 0 ? ", kind_of: f" + (i - 1) : "")
                    + "}\n")
        .collect(Collectors.joining("", "finishes:\n", ""));
  }

  /** A chain of finishes, each a kind of the one before: each bears on what those before do. */
  @Test
  void goesUpAChainOfAThousandFinishesOnce() {
    IntFunction<String> items = i -> item("i" + i, "I", "finish: f" + 2 * i);
    String model = models(1, 1936);
    RuleSet older = rules(model, finishes(1_000, "F"), 3, items);
    RuleSet newer = rules(model, finishes(1_000, "G"), 3, items);
    AffectedItems bearing = new AffectedItems(older, newer);
    assertThat(bearing.finish("f0")).containsExactly("i0");
    assertThat(bearing.finish("f3")).containsExactly("i0", "i1");
    assertThat(bearing.finish("f999")).containsExactly("i0", "i1", "i2");
    assertThat(bearing.finish("f999")).isSameAs(bearing.finish("f4"));
  }
}
