package assize.report.view;

import static org.assertj.core.api.Assertions.assertThat;

import assize.judge.Judge;
import assize.record.RecordReader;
import assize.report.vehicle.ReportViewFactory;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** How lost points are worded. */
class LossesViewFactoryTest {
  private static final String RULES =
      """
      rule_set: small
      name: Small
      edition: "1"
      models: {X1: {name: Dropside, production: 1932/1936}}
      sources:
        drawing: {kind: drawing, grade: A, title: Drawing}
        list: {kind: parts list, grade: A, title: List}
      finishes:
        nickel: {name: nickel plate}
        chrome: {name: chromium plate}
        enamel: {name: stove enamel}
      origins: {original: 1, reproduction: 0.7}
      areas:
        cab:
          name: Cab
          items:
            thing:
              title: Thing
              points: 4
              claims:
                - {source: drawing, says: {%s}}
                - {source: list, says: {%s}}
      """;
  private static final String RECORD =
      """
      record: one
      rules: small
      vehicle: {name: One, model: X1}
      built: 1934-06
      observations:
        thing: {%s}
      """;

  private static List<String> why(String drawing, String list, String found) {
    RuleSet rules =
        RuleSetReader.parse(List.of(new SourceFile("rules.yaml", RULES.formatted(drawing, list))))
            .value()
            .orElseThrow();
    return RecordReader.parse(new SourceFile("record.yaml", RECORD.formatted(found)), rules)
        .value()
        .map(vehicle -> ReportViewFactory.of(Judge.judge(rules, vehicle, Optional.empty())))
        .orElseThrow()
        .costs()
        .lines()
        .stream()
        .flatMap(line -> line.why().stream())
        .toList();
  }

  @Test
  void whatWasFoundIsSaidOnceHoweverManyPositionsAreLostBy() {
    assertThat(why("finish: nickel", "finish: chrome", "finish: enamel"))
        .containsExactly(
            "finish, found: stove enamel; expected: nickel plate, or chromium plate (disputed)");
  }

  @Test
  void aPositionThatIsMetIsNotExpected() {
    assertThat(why("finish: nickel", "finish: chrome", "finish: nickel"))
        .containsExactly("finish, found: nickel plate; expected: chromium plate (disputed)");
  }

  @Test
  void whatIsAgreedIsNotCalledDisputed() {
    assertThat(why("finish: nickel", "finish: nickel", "finish: enamel"))
        .containsExactly("finish, found: stove enamel; expected: nickel plate");
  }

  @Test
  void whatIsGradedSaysWhatItEarns() {
    assertThat(why("origin: graded", "origin: graded", "origin: reproduction"))
        .containsExactly("origin, found: reproduction; it earns 0.7");
  }

  @Test
  void aPatternThatIsPlainTextIsSaidAsANumber() {
    assertThat(why("part_number: LE-2014", "part_number: LE-2014", "part_number: LE-2099").get(0))
        .endsWith("; expected: LE-2014");
    assertThat(
            why("part_number: 'LE-20[1-3]4'", "part_number: 'LE-20[1-3]4'", "part_number: LE-2099")
                .get(0))
        .endsWith("; expected: a number of the pattern LE-20[1-3]4");
  }

  @Test
  void glossIsSaidInUnits() {
    assertThat(why("gloss: 30 to 50", "gloss: satin", "gloss: 70"))
        .containsExactly(
            "gloss, found: 70 gloss units, too glossy: over-restored; expected: 30 to 50 gloss"
                + " units, or satin (20 to 35 gloss units) (disputed)");
  }
}
