package assize.judge;

import static org.assertj.core.api.Assertions.assertThat;

import assize.aspect.Expectation;
import assize.aspect.Finding;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Which findings are told apart, and which have to be judged by themselves. */
class LikenessTest {
  private static final String RULES =
      """
      rule_set: bench
      name: Bench
      edition: "1"
      colors:
        green: {name: Green, lab: [50, 2.6772, -79.7751], tolerance: 2.1}
        leaf: {name: Leaf, lab: [50, 0, -82.7485]}
        brown: {name: Brown, lab: [60, 20, 20]}
        black: {name: Black}
      finishes: {nickel: {name: N}, chrome: {name: C}}
      areas:
        all:
          name: All
          items:
            other-thing: {title: Other, points: 1, expect: {color: green}}
            thing: {title: Thing, points: 1, expect: {%s}}
      """;

  /** How findings of one item are told apart. */
  private record Told(RuleSet rules, Likeness likeness) {
    int of(String found) {
      return found(found).match(likeness);
    }

    Finding found(String found) {
      VehicleRecord vehicle =
          Judging.vehicle(
              rules,
              "record: r\nrules: bench\nvehicle: {name: R}\nobservations: {thing: {"
                  + found
                  + "}}\n");
      return vehicle.observations().values().stream()
          .flatMap(observation -> observation.findings().values().stream())
          .findFirst()
          .orElseThrow();
    }
  }

  private static Told by(String expected) {
    RuleSet rules = Judging.rules(RULES.formatted(expected));
    List<Expectation> values =
        rules
            .items()
            .filter(item -> item.id().equals("thing"))
            .flatMap(item -> item.aspects().get(0).claims().get(0).values().stream())
            .toList();
    return new Told(rules, new Likeness(rules, values));
  }

  private static final int ITSELF = Likeness.ITSELF;

  @Test
  void wordsAreToldApartUpToSixtyFour() {
    Likeness likeness = by("finish: nickel").likeness();
    List<Integer> kinds = new ArrayList<>();
    for (int i = 0; i < 64; i++) {
      int kind = likeness.word(new Finding.Word("word-" + i));
      assertThat(kind).isNotNegative();
      kinds.add(kind);
    }
    assertThat(kinds).doesNotHaveDuplicates();
    assertThat(likeness.word(new Finding.Word("word-64"))).isEqualTo(ITSELF);
    String own = "word-of-its-own";
    Likeness another = by("finish: nickel").likeness();
    int first = another.word(new Finding.Word("word-0"));
    int second = another.word(new Finding.Word(own));
    assertThat(another.word(new Finding.Word(own))).isEqualTo(second).isNotEqualTo(first);
    for (int i = 0; i < 64; i++) {
      int again = likeness.word(new Finding.Word(new String("word-" + i)));
      assertThat(again).isEqualTo(kinds.get(i));
    }
  }

  @Test
  void piecesAreToldApartUpToSixtyFour() {
    Told pieces = by("count: 6");
    assertThat(pieces.of("count: 0")).isNotEqualTo(pieces.of("count: 1")).isNotNegative();
    assertThat(pieces.of("count: 63")).isNotNegative();
    assertThat(pieces.of("count: 64")).isEqualTo(ITSELF);
  }

  @Test
  void yesIsNotNo() {
    Told present = by("present: yes");
    assertThat(present.of("present: yes")).isNotNegative().isEqualTo(present.of("present: true"));
    assertThat(present.of("present: no")).isNotNegative().isNotEqualTo(present.of("present: yes"));
  }

  @Test
  void threadsAndGlossAreJudgedByThemselves() {
    assertThat(by("size: 1/4-20 UNC").of("size: 1/4-20 UNC")).isEqualTo(ITSELF);
    assertThat(by("gloss: 30 to 50").of("gloss: 41")).isEqualTo(ITSELF);
    assertThat(by("date_code: {pattern: '(?P<year>[0-9])', made: P1Y..P0D}").of("date_code: 4"))
        .isEqualTo(ITSELF);
  }

  @Test
  void numbersAreToldByWhichTheyFit() {
    Told two = by("part_number: {A-11: 1, A-22: 0.5}");
    assertThat(two.of("part_number: A-11")).isNotNegative().isEqualTo(two.of("part_number: a 11"));
    assertThat(
            Set.of(
                two.of("part_number: A-11"),
                two.of("part_number: A-22"),
                two.of("part_number: B-7")))
        .hasSize(3)
        .allMatch(kind -> kind >= 0);
    assertThat(two.of("part_number: B-7")).isEqualTo(two.of("part_number: B-8"));
    Told pattern = by("part_number: 'A1[0-9]'");
    assertThat(pattern.of("part_number: A-11")).isEqualTo(pattern.of("part_number: A-12"));
    assertThat(pattern.of("part_number: A-11")).isNotEqualTo(pattern.of("part_number: A-21"));
    assertThat(by("part_number: [A1, A2, A3, A4, A5, A6]").of("part_number: A6")).isNotNegative();
    assertThat(by("part_number: [A1, A2, A3, A4, A5, A6, A7]").of("part_number: A6"))
        .isEqualTo(ITSELF);
  }

  @Test
  void sizesAreToldByWhichTheyMeet() {
    Told two = by("size: [1 mm to 3 mm, 2 mm to 4 mm]");
    assertThat(
            Set.of(
                two.of("size: 1 mm"),
                two.of("size: 2 mm"),
                two.of("size: 4 mm"),
                two.of("size: 5 mm")))
        .hasSize(4)
        .allMatch(kind -> kind >= 0);
    assertThat(two.of("size: 2.5 mm")).isEqualTo(two.of("size: 3 mm"));
    // near the limit of one of two: which credit that gives the other decides as well
    assertThat(two.of("size: 3 mm ± 0.1 mm")).isEqualTo(ITSELF);
    String seven = "size: [1 mm, 2 mm, 3 mm, 4 mm, 5 mm, 6 mm%s]";
    assertThat(by(seven.formatted("")).of("size: 6 mm")).isNotNegative();
    assertThat(by(seven.formatted(", 7 mm")).of("size: 6 mm")).isEqualTo(ITSELF);
  }

  /** Φ(0) = 0.5, Φ(−1) = 0.1587, from memory; u is half of what stands behind ±. */
  @Test
  void whatIsOpenIsToldByItsCredit() {
    Told one = by("size: at most 2 mm");
    assertThat(Likeness.openCredit(one.of("size: 2 mm ± 0.1 mm"))).isEqualTo(5_000);
    assertThat(Likeness.openCredit(one.of("size: 2.05 mm ± 0.1 mm"))).isEqualTo(1_587);
    assertThat(one.of("size: 1 mm ± 0.1 mm")).isEqualTo(one.of("size: 1 mm")).isNotNegative();
    assertThat(one.of("size: 3 mm ± 0.1 mm")).isEqualTo(one.of("size: 3 mm")).isNotNegative();
    assertThat(Likeness.openCredit(ITSELF)).isNegative();
    assertThat(Likeness.openCredit(0)).isNegative();
    // Φ(z) = 0.50005 lies between two credits: z = 1.25331e-4, by Φ(z) ≈ 0.5 + z/√(2π)
    assertThat(one.of("size: 1.99987466858 mm ± 2 mm")).isEqualTo(ITSELF);
  }

  @Test
  void whatMeasuresSomethingElseIsJudgedByItself() {
    Finding heavy = by("size: at most 2 kg").found("size: 1 kg");
    assertThat(heavy.match(by("size: at most 2 mm").likeness())).isEqualTo(ITSELF);
  }

  /** ΔE00 2.0425 between green and leaf is pair 1 of Sharma, Wu and Dalal 2005, table 1. */
  @Test
  void colorsAreToldByWhichTheyMeet() {
    Told two = by("color: [green, brown]");
    int leaf = two.of("color: {lab: [50, 0, -82.7485]}");
    int brown = two.of("color: {lab: [60, 20, 20]}");
    int neither = two.of("color: {lab: [10, 0, 0]}");
    assertThat(Set.of(leaf, brown, neither)).hasSize(3).allMatch(kind -> kind >= 0);
    assertThat(two.of("color: {chip: black, lab: [60, 20, 20]}")).isEqualTo(brown);
    // by eye, as words; none of them is what an instrument gives
    int byEye = two.of("color: green");
    assertThat(byEye).isNotNegative().isNotIn(leaf, brown, neither);
    assertThat(two.of("color: black")).isNotNegative().isNotIn(leaf, brown, neither, byEye);
    assertThat(two.of("color: {lab: [50, 0, -82.7485], uncertainty: 1}")).isEqualTo(ITSELF);
    int open = by("color: green").of("color: {lab: [50, 0, -82.7485], uncertainty: 1}");
    // Φ((2.1 − 2.04246) / 1) = Φ(0.05754) = 0.5229
    assertThat(Likeness.openCredit(open)).isEqualTo(5_229);
  }

  @Test
  void aColorWithoutAReadingIsJudgedByItself() {
    assertThat(by("color: black").of("color: {lab: [20, 0, 0]}")).isEqualTo(ITSELF);
    assertThat(by("color: black").of("color: black")).isNotNegative();
    assertThat(by("color: [green, black]").of("color: {lab: [20, 0, 0]}")).isEqualTo(ITSELF);
    Told same = by("color: {same_as: other-thing}");
    assertThat(same.of("color: green")).isEqualTo(ITSELF);
    assertThat(same.of("color: {lab: [20, 0, 0]}")).isEqualTo(ITSELF);
  }
}
