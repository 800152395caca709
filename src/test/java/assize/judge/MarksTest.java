package assize.judge;

import static org.assertj.core.api.Assertions.assertThat;

import assize.aspect.Aspect;
import assize.aspect.Finding;
import assize.judge.Frame.Voice;
import assize.judgment.ScoreRange;
import assize.judgment.Verdict;
import assize.measure.Measured;
import assize.ruleset.AspectRule;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What comes of findings, each kind judged once. */
class MarksTest {
  private final List<Ground> judged = new ArrayList<>();

  private static Marks marks(String expected) {
    RuleSet rules =
        Judging.rules(
            """
            rule_set: bench
            name: Bench
            edition: "1"
            sources:
              guide: {kind: club guide, grade: C, title: G}
              photo: {kind: works photograph, grade: C, title: P}
            finishes: {nickel: {name: N}, chrome: {name: C}}
            areas: {all: {name: All, items: {thing: {title: Thing, points: 10, %s}}}}
            """
                .formatted(expected));
    AspectRule rule = rules.items().findFirst().orElseThrow().aspects().get(0);
    Ground ground =
        Grounds.of(rules).weigh(rule, rule.claims().stream().map(Voice::of).toList()).orElseThrow();
    return new Marks(rules, ground);
  }

  private Slip judge(Ground ground) {
    judged.add(ground);
    long earned = judged.size();
    return Slip.of(Verdict.PARTLY, 10_000, new ScoreRange(earned, earned, earned));
  }

  private static Finding size(String text) {
    return new Finding.Size(Measured.parse(text).toOptional().orElseThrow());
  }

  @Test
  void whatIsAlikeIsJudgedOnce() {
    Marks marks = marks("expect: {finish: nickel}");
    Slip nickel = marks.of(new Finding.Word("nickel"), this::judge);
    Slip chrome = marks.of(new Finding.Word("chrome"), this::judge);
    Slip nothing = marks.ofNothing(this::judge);
    Slip third = marks.of(new Finding.Word("third"), this::judge);
    Slip fourth = marks.of(new Finding.Word("fourth"), this::judge);
    assertThat(judged).hasSize(5).containsOnly(marks.ground());
    assertThat(List.of(nickel, chrome, nothing, third, fourth)).doesNotHaveDuplicates();
    assertThat(marks.of(new Finding.Word("nickel"), this::judge)).isSameAs(nickel);
    assertThat(marks.of(new Finding.Word("chrome"), this::judge)).isSameAs(chrome);
    assertThat(marks.ofNothing(this::judge)).isSameAs(nothing);
    assertThat(marks.of(new Finding.Word("third"), this::judge)).isSameAs(third);
    assertThat(marks.of(new Finding.Word("fourth"), this::judge)).isSameAs(fourth);
    assertThat(judged).hasSize(5);
  }

  @Test
  void whatIsLikeNoOtherIsJudgedEachTime() {
    Marks marks = marks("expect: {size: [at most 2 mm, 1 mm to 3 mm]}");
    Slip first = marks.of(size("2 mm ± 0.1 mm"), this::judge);
    assertThat(marks.of(size("2 mm ± 0.1 mm"), this::judge)).isNotEqualTo(first);
    assertThat(judged).hasSize(2);
  }

  /** 10 points at Φ(0) = one half and at Φ(−1) = 0.1587, of any table of it, from memory. */
  @Test
  void whatIsOpenEarnsItsCredit() {
    Marks marks = marks("expect: {size: at most 2 mm}");
    assertThat(marks.of(size("2 mm ± 0.1 mm"), this::judge))
        .isEqualTo(Slip.of(Verdict.OPEN, 10_000, new ScoreRange(0, 5_000, 10_000)));
    assertThat(marks.of(size("2.05 mm ± 0.1 mm"), this::judge))
        .isEqualTo(Slip.of(Verdict.OPEN, 10_000, new ScoreRange(0, 1_587, 10_000)));
    assertThat(judged).isEmpty();
  }

  /** A position that nobody is judged by does not tell findings apart. */
  @Test
  void isOfTheAspectAndItsGround() {
    Marks marks =
        marks("claims: [{source: guide, says: {size: 1 mm}}, {source: photo, says: {size: 2 mm}}]");
    assertThat(marks.aspect()).isEqualTo(Aspect.SIZE);
    assertThat(marks.ground().held()).hasSize(2);
    Slip one = marks.of(size("1 mm"), this::judge);
    Slip two = marks.of(size("2 mm"), this::judge);
    assertThat(marks.of(size("3 mm"), this::judge)).isNotEqualTo(one).isNotEqualTo(two);
    assertThat(marks.of(size("4 mm"), this::judge)).isSameAs(marks.of(size("3 mm"), this::judge));
    assertThat(judged).hasSize(3);
  }
}
