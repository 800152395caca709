package assize.judge;

import static org.assertj.core.api.Assertions.assertThat;

import assize.judgment.ScoreRange;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Claims that speak of the vehicle or not, as a fact has it that the record does not state. */
class UnknownFactsTest {
  /** As many facts are unknown as are looked at; a further claim on one of them changes nothing. */
  @Test
  void aFactIsOneWhereverItsClaimsStand() {
    String late = "{source: s7, equipment: [e1], says: {finish: chrome}}";
    List<String> claims = new ArrayList<>(List.of("{source: s0, says: {finish: nickel}}"));
    for (int i = 1; i <= CompiledRuleSet.MOST_UNKNOWN; i++) {
      claims.add("{source: s%d, equipment: [e%d], says: {finish: nickel}}".formatted(i, i));
    }
    List<String> first = new ArrayList<>(claims);
    first.add(1, late);
    claims.add(late);
    assertThat(earned(claims)).isEqualTo(earned(first));
  }

  private static ScoreRange earned(List<String> claims) {
    StringBuilder yaml =
        new StringBuilder(
            """
            rule_set: bench
            name: Bench
            edition: "1"
            models: {B1: {name: Bench, production: 1934}}
            finishes: {nickel: {name: Nickel}, chrome: {name: Chrome}}
            equipment: {e1: E, e2: E, e3: E, e4: E, e5: E, e6: E, e7: E}
            sources:
            """);
    for (int i = 0; i < 8; i++) {
      yaml.append("  s%d: {kind: drawing, grade: C, title: S}\n".formatted(i));
    }
    yaml.append("areas:\n  a:\n    name: A\n    items:\n      i:\n        title: I\n");
    yaml.append("        points: 10\n        claims:\n");
    claims.forEach(claim -> yaml.append("          - ").append(claim).append('\n'));
    return Judging.item(
            Judging.judge(
                yaml.toString(),
                """
                record: r
                rules: bench
                vehicle: {name: R, model: B1}
                observations: {i: {finish: nickel}}
                """),
            "i")
        .earned();
  }

  /** What is one too many counts as speaking. */
  @Test
  void oneFactTooManyIsTakenToHold() {
    List<String> claims = new ArrayList<>(List.of("{source: s0, says: {finish: nickel}}"));
    for (int i = 1; i <= CompiledRuleSet.MOST_UNKNOWN; i++) {
      claims.add("{source: s%d, equipment: [e%d], says: {finish: nickel}}".formatted(i, i));
    }
    String more = "{source: s7, %ssays: {finish: chrome}}";
    assertThat(earned(with(claims, more.formatted("equipment: [e7], "))))
        .isEqualTo(earned(with(claims, more.formatted(""))));
    claims.remove(1);
    assertThat(earned(with(claims, more.formatted("equipment: [e7], "))))
        .isNotEqualTo(earned(with(claims, more.formatted(""))));
  }

  private static List<String> with(List<String> claims, String more) {
    List<String> all = new ArrayList<>(claims);
    all.add(more);
    return all;
  }
}
