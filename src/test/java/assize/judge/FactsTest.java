package assize.judge;

import static org.assertj.core.api.Assertions.assertThat;

import assize.aspect.Aspect;
import assize.evidence.DisputeState;
import assize.judgment.BuildPeriod;
import assize.judgment.Judgment;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a vehicle may be, where its record does not say. */
class FactsTest {
  private static final String RULES =
      """
      rule_set: bench
      name: Bench
      edition: "1"
      models:
        X1: {name: Dropside, production: 1932-01-01/1934-12-31}
        X2: {name: Box van, production: 1934-01-01/1936-12-31}
      markets: {home: Home, export: Export}
      areas:
        all:
          name: All
          items:
            first: {title: F, points: 1, models: [X1], expect: {present: yes}}
            second: {title: S, points: 1, models: [X2], expect: {present: yes}}
            either: {title: E, points: 1, models: [X1, X2], expect: {present: yes}}
            abroad: {title: A, points: 1, market: [export], expect: {present: yes}}
            anywhere: {title: A, points: 1, market: [home, export], expect: {present: yes}}
      """;

  /** Both were made in 1934; before it only the one, after it only the other. */
  @ParameterizedTest
  @CsvSource({
    "'', 1933, not assessed, not applicable, not assessed",
    "'', 1934, may apply, may apply, not assessed",
    "'', 1935, not applicable, not assessed, not assessed",
    "', model: X1', 1934, not assessed, not applicable, not assessed",
    "', model: X2', 1934, not applicable, not assessed, not assessed"
  })
  void aModelIsOneOfThoseMadeThen(
      String model, String built, String first, String second, String either) {
    Judgment judgment =
        Judging.judge(
            RULES,
            "record: r\nrules: bench\nvehicle: {name: R%s}\nbuilt: %s\n".formatted(model, built));
    assertThat(Judging.item(judgment, "first").verdict().word()).isEqualTo(first);
    assertThat(Judging.item(judgment, "second").verdict().word()).isEqualTo(second);
    assertThat(Judging.item(judgment, "either").verdict().word()).isEqualTo(either);
  }

  @ParameterizedTest
  @CsvSource({
    "'', may apply, not assessed",
    "'market: home', not applicable, not assessed",
    "'market: export', not assessed, not assessed"
  })
  void aMarketIsOneOfTheRuleSets(String market, String abroad, String anywhere) {
    Judgment judgment =
        Judging.judge(RULES, "record: r\nrules: bench\nvehicle: {name: R}\n" + market + "\n");
    assertThat(Judging.item(judgment, "abroad").verdict().word()).isEqualTo(abroad);
    assertThat(Judging.item(judgment, "anywhere").verdict().word()).isEqualTo(anywhere);
  }

  private static String numbered(String each, int count) {
    return IntStream.range(0, count).mapToObj(each::formatted).collect(Collectors.joining(", "));
  }

  private static DisputeState disputeWith(int markets, int models, int plants) {
    String rules =
        """
        rule_set: bench
        name: Bench
        edition: "1"
        models: {%s}
        markets: {%s}
        plants: {%s}
        finishes: {nickel: {name: N}, chrome: {name: C}}
        sources:
          drawing: {kind: drawing, grade: A, title: D}
          photo: {kind: factory photograph, grade: A, title: P}
        areas:
          all:
            name: All
            items:
              thing:
                title: Thing
                points: 1
                claims:
                  - {source: drawing, market: [m0], says: {finish: nickel}}
                  - {source: photo, market: [m1], says: {finish: chrome}}
              other: {title: Other, points: 1, plant: [p0], expect: {finish: nickel}}
        """
            .formatted(
                numbered("X%d: {name: X, production: 1934}", models),
                numbered("m%d: M", markets),
                numbered("p%d: P", plants));
    return Judging.aspect(
            Judging.judge(rules, "record: r\nrules: bench\nvehicle: {name: R}\n"),
            "thing",
            Aspect.FINISH)
        .dispute();
  }

  /**
   * A vehicle went to one market only, so that sources for two never meet; beyond 65,536 ways in
   * which it can be, that is no longer looked at.
   */
  @Test
  void upToSixtyFiveThousandWaysAreLookedAt() {
    assertThat(disputeWith(20, 25, 1)).isEqualTo(DisputeState.AGREED);
    assertThat(disputeWith(100, 10, 1)).isEqualTo(DisputeState.AGREED);
    assertThat(disputeWith(100, 100, 6)).isEqualTo(DisputeState.AGREED);
    assertThat(disputeWith(100, 100, 7)).isEqualTo(DisputeState.DISPUTED);
  }

  private static final String PERHAPS =
      """
      rule_set: bench
      name: Bench
      edition: "1"
      models:
        X1: {name: A, production: 1934-01-01/1935-12-31}
        X2: {name: B, production: 1934-01-01/1935-12-31}
        X3: {name: C, production: 1935-01-01/1935-12-31}
      finishes: {nickel: {name: N}, chrome: {name: C}, brass: {name: B}}
      sources:
        drawing: {kind: drawing, grade: C, title: D}
        photo: {kind: factory photograph, grade: A, title: P}
        guide: {kind: club guide, grade: A, title: G}
      areas:
        all:
          name: All
          items:
            thing:
              title: Thing
              points: 10
              claims:
                - {source: drawing, says: {finish: nickel}}
                - {source: photo, models: [X1], says: {finish: chrome}}
                - {source: guide, models: [X2], says: {finish: brass}}
      """;

  private static Judgment built(String when) {
    return Judging.judge(
        PERHAPS,
        "record: r\nrules: bench\nvehicle: {name: R}\nbuilt: "
            + when
            + "\nobservations: {thing: {finish: nickel}}\n");
  }

  /** In 1934 it was the one or the other; in 1935 it may have been the third. */
  @Test
  void whichModelsArePossibleChangesWithTheDay() {
    Judgment early = built("1934");
    Judgment late = built("1935");
    assertThat(late.score()).isNotEqualTo(early.score());
    assertThat(built("1934/1935").stretches())
        .extracting(BuildPeriod::score)
        .containsExactly(early.score(), late.score());
  }
}
