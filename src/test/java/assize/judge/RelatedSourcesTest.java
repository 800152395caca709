package assize.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import assize.aspect.Aspect;
import assize.judgment.AspectJudgment;
import org.junit.jupiter.api.Test;

/**
 * Sources that go back to one another, or to a third, are one witness. The figures are worked by
 * hand by Dempster's rule: A 0.9, B 0.7, C 0.5, D 0.3.
 */
class RelatedSourcesTest {
  private static AspectJudgment judged(String sources, String claims) {
    String rules =
        """
        rule_set: bench
        name: Bench
        edition: "1"
        models: {X1: {name: X, production: 1934}}
        finishes: {nickel: {name: N}, chrome: {name: C}}
        sources: {%s}
        areas: {g: {name: G, items: {i: {title: I, points: 8, claims: [%s]}}}}
        """
            .formatted(sources, claims);
    return Judging.aspect(
        Judging.judge(
            rules,
            "record: r\nrules: bench\nvehicle: {name: R}\nobservations: {i: {finish: nickel}}\n"),
        "i",
        Aspect.FINISH);
  }

  private static double belief(AspectJudgment aspect, String value) {
    return aspect.positions().stream()
        .filter(it -> it.accepts().get(0).key().equals(value))
        .findFirst()
        .orElseThrow()
        .belief();
  }

  private static String source(String id, String grade, String more) {
    return "%s: {kind: drawing, grade: %s, title: %s%s}".formatted(id, grade, id, more);
  }

  private static String says(String source, String finish) {
    return "{source: %s, says: {finish: %s}}".formatted(source, finish);
  }

  /** Nickel: 0.9 × 0.3 ÷ (1 − 0.9 × 0.7) = 0.72973, whether or not the weaker original speaks. */
  @Test
  void anOriginalThatSpeaksTakesNothingFromWhatCopiesIt() {
    String sources =
        source("a", "A", ", copies: d") + ", " + source("b", "B", "") + ", " + source("d", "D", "");
    String claims = says("a", "nickel") + ", " + says("b", "chrome");
    assertThat(belief(judged(sources, claims), "nickel")).isCloseTo(0.72973, within(5e-6));
    AspectJudgment all = judged(sources, claims + ", " + says("d", "nickel"));
    assertThat(belief(all, "nickel")).isCloseTo(0.72973, within(5e-6));
    assertThat(all.positions().get(0).sources()).containsExactly("a");
    assertThat(all.positions().get(0).repeatingSources()).containsExactly("d");
  }

  /** Nickel by one A; chrome by B and C, 0.85: 0.9 × 0.15 ÷ (1 − 0.9 × 0.85) = 0.574468. */
  @Test
  void copiesOfASilentOriginalAreOneWitness() {
    String sources =
        String.join(
            ", ",
            source("a", "A", ", copies: o"),
            source("a2", "A", ", copies: o"),
            source("b", "B", ""),
            source("c", "C", ""),
            source("o", "D", ""));
    AspectJudgment all =
        judged(
            sources,
            String.join(
                ", ",
                says("a", "nickel"),
                says("a2", "nickel"),
                says("b", "chrome"),
                says("c", "chrome")));
    assertThat(belief(all, "nickel")).isCloseTo(0.574468, within(5e-7));
    assertThat(belief(all, "chrome")).isCloseTo(0.361702, within(5e-7));
  }
}
