package assize.check;

import static org.assertj.core.api.Assertions.assertThat;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import java.util.List;
import org.junit.jupiter.api.Test;

class WarningsTest {
  private static final String HEAD =
      """
      rule_set: small
      name: A small standard
      edition: "1"
      models:
        X1: {name: Dropside, production: 1932-03/1936-08}
      finishes:
        nickel: {name: nickel plate}
        chrome: {name: chromium plate}
      sources:
        guide-1: {kind: club guide, grade: C, title: First}
        guide-2: {kind: club guide, grade: C, title: Second, copies: [guide-1]}
      areas:
        cab:
          name: Cab
          points: 2
          items:
      """;

  @Test
  void aSoundRuleSetLeavesNoDoubt() {
    assertThat(
            warnings(
                """
                horn-button:
                  title: Horn button
                  points: 2
                  claims:
                    - {source: guide-1, built: ../1934-06, says: {finish: nickel}}
                    - {source: guide-2, built: 1934-07/.., says: {finish: chrome}}
                """))
        .isEmpty();
  }

  @Test
  void aSourceThatNobodyCitesAndAnItemWithoutOne() {
    assertThat(
            warnings(
                """
                horn-button: {title: Horn button, points: 2, expect: {finish: nickel}}
                """))
        .extracting(Diagnostic::code)
        .containsExactly(
            DiagnosticCode.UNCITED_SOURCE, DiagnosticCode.UNCITED_SOURCE, DiagnosticCode.NO_SOURCE);
  }

  @Test
  void aCopyThatRepeatsItsOriginal() {
    List<Diagnostic> warnings =
        warnings(
            """
            horn-button:
              title: Horn button
              points: 2
              claims:
                - {source: guide-1, says: {finish: nickel}}
                - {source: guide-2, says: {finish: nickel}}
            """);
    assertThat(warnings)
        .extracting(Diagnostic::code)
        .containsExactly(DiagnosticCode.REDUNDANT_COPY);
    assertThat(warnings.get(0).at().line()).isEqualTo(22);
  }

  @Test
  void aGapBetweenTwoClaimsIsNamedToTheDay() {
    List<Diagnostic> warnings =
        warnings(
            """
            horn-button:
              title: Horn button
              points: 2
              claims:
                - {source: guide-1, built: ../1934-06, says: {finish: nickel}}
                - {source: guide-2, built: 1934-08/.., says: {finish: chrome}}
            """);
    assertThat(warnings)
        .extracting(Diagnostic::code)
        .containsExactly(DiagnosticCode.UNCOVERED_DATES);
    assertThat(warnings.get(0).message()).endsWith("built 1934-07-01 to 1934-07-31");
  }

  @Test
  void whatShouldNotBeThereNeedsNoFinish() {
    assertThat(
            warnings(
                """
                horn-button:
                  title: Horn button
                  points: 2
                  claims:
                    - {source: guide-1, built: ../1934-06, says: {present: yes, finish: nickel}}
                    - {source: guide-2, built: 1934-07/.., says: {present: no}}
                """))
        .isEmpty();
  }

  @Test
  void anItemThatAppliesToNothing() {
    assertThat(
            warnings(
                """
                horn-button:
                  title: Horn button
                  points: 2
                  built: 1938
                  claims:
                    - {source: guide-1, says: {finish: nickel}}
                    - {source: guide-2, says: {finish: chrome}}
                """))
        .extracting(Diagnostic::code)
        .containsExactly(DiagnosticCode.UNREACHABLE_ITEM);
  }

  @Test
  void pointsThatDoNotAddUp() {
    List<Diagnostic> warnings =
        warnings(
            """
            horn-button:
              title: Horn button
              points: 1.5
              claims:
                - {source: guide-1, says: {finish: nickel}}
                - {source: guide-2, says: {finish: chrome}}
            """);
    assertThat(warnings)
        .extracting(Diagnostic::code)
        .containsExactly(DiagnosticCode.AREA_POINTS_MISMATCH);
    assertThat(warnings.get(0).message()).contains("have 1.5 points").contains("says 2");
  }

  private static List<Diagnostic> warnings(String items) {
    RuleSet rules =
        RuleSetReader.parse(List.of(new SourceFile("rules.yaml", HEAD + items.indent(6))))
            .value()
            .orElseThrow();
    return RuleSetWarningRule.all(rules);
  }
}
