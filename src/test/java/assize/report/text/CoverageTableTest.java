package assize.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import assize.check.Coverage;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CoverageTableTest {
  private static final String RULES =
      """
      rule_set: small
      name: A small standard
      edition: "1"
      models:
        X1: {name: Dropside, production: 1932/1935}
        X2-long: {name: Box van, production: 1934/1935}
      equipment: {heater: Cab heater}
      finishes: {nickel: {name: nickel}, chrome: {name: chrome}}
      sources:
        drawing: {kind: drawing, grade: A, title: Works drawing 204}
      areas:
        cab:
          name: Cab
          items:
            horn:
              title: Horn button in the middle of the wheel, its rim, and the ring around that
              points: 2
              models: [X1]
              built: 1932/1934
              claims:
                - {source: drawing, built: 1932, says: {finish: nickel}}
                - {source: drawing, built: 1934, equipment: [heater], says: {finish: chrome}}
            key: {title: Key, points: 1, expect: {finish: nickel}, source: drawing}
      """;

  private static List<String> lines(RuleSet rules, boolean whole) {
    return CoverageTable.lines(
        rules, rules.items().map(it -> Coverage.of(it, rules)).toList(), whole);
  }

  private static RuleSet rules() {
    return RuleSetReader.parse(List.of(new SourceFile("rules.yaml", RULES))).value().orElseThrow();
  }

  @Test
  void drawsGapsAndSaysThem() {
    // 1461 days in 29 places, by hand: each year takes 7 of them and a bit, and where two share
    // one the gap is drawn.
    assertThat(lines(rules(), false))
        .contains(
            "Cab: 2 items, 1 with gaps",
            "  Horn button in the middle of the wheel, its rim, and the ring around that",
            "    (horn)",
            "      X1      |#######........-------       | none 1933-01-01 to 1933-12-31",
            " ".repeat(46) + "in part 1934-01-01 to 1934-12-31")
        .endsWith("2 items, 1 with a stretch that no claim covers, or not for every vehicle.")
        .noneMatch(it -> it.contains("Key"));
  }

  @Test
  void drawsAllWhereWanted() {
    assertThat(lines(rules(), true))
        .contains(
            "  Key (key)",
            "      X2-long |#############################| covered",
            "      X2-long |                             | does not apply");
  }

  @ParameterizedTest
  @ValueSource(strings = {"rules/tarrowby-type-l", "rules/quillhurst-q.yaml"})
  void nothingIsWiderThanATerminal(String path) {
    RuleSet demonstration = RuleSetReader.read(Path.of(path)).value().orElseThrow();
    assertThat(lines(demonstration, true))
        .hasSizeGreaterThan(100)
        .allMatch(it -> TerminalEscaper.columns(it) <= 80)
        .allMatch(it -> it.chars().allMatch(c -> c < 0x2E80));
  }
}
