package assize.ruleset;

import assize.aspect.Expectation;
import assize.diagnostic.DiagnosticCode;
import assize.evidence.Claim;
import assize.evidence.ClaimKind;
import assize.yaml.DiagnosticCollector;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Finds aspects of which sources say more different things than can be weighed: the work grows with
 * every set of values that a source leaves standing.
 */
public final class ClaimComplexityCheck implements RuleSetCheck {
  /** The most different values that the claims on one aspect may name. */
  static final int MOST_VALUES = 40;

  /** The most claims on one aspect that may leave open or rule out. */
  static final int MOST_UNSURE = 8;

  /** The most different things that the claims on one aspect may hold to be right. */
  static final int MOST_POSITIONS = 50;

  /** The most traces on one item. */
  public static final int MOST_TRACES = 3;

  @Override
  public void check(RuleSet rules, DiagnosticCollector problems) {
    for (Item item : rules.items().toList()) {
      for (AspectRule rule : item.aspects()) {
        if (isSimple(rule)) {
          continue;
        }
        long values =
            rule.claims().stream()
                .flatMap(claim -> claim.values().stream())
                .map(Expectation::key)
                .distinct()
                .count();
        List<Claim> unsure =
            rule.claims().stream().filter(claim -> claim.manner() != ClaimKind.SAYS).toList();
        String what = "the claims on the " + rule.aspect().spoken() + " of \"" + item.id() + "\" ";
        if (values > MOST_VALUES) {
          problems.add(
              DiagnosticCode.TOO_MANY_CLAIMS,
              rule.claims().get(rule.claims().size() - 1).at(),
              what + "name " + values + " values; at most " + MOST_VALUES + " can be weighed",
              "leave out what no source holds to be right");
        }
        long positions = positions(rule);
        if (positions > MOST_POSITIONS) {
          problems.add(
              DiagnosticCode.TOO_MANY_CLAIMS,
              rule.claims().get(rule.claims().size() - 1).at(),
              what
                  + "hold "
                  + positions
                  + " different things to be right; at most "
                  + MOST_POSITIONS
                  + " can be weighed",
              "leave out what no source holds to be right");
        }
        if (unsure.size() > MOST_UNSURE) {
          problems.add(
              DiagnosticCode.TOO_MANY_CLAIMS,
              unsure.get(MOST_UNSURE).at(),
              what
                  + "leave open or rule out "
                  + unsure.size()
                  + " times; at most "
                  + MOST_UNSURE
                  + " can be weighed",
              "keep the strongest of them");
        }
      }
    }
  }

  /** Says whether there are too few values and claims for any of the bounds. */
  private static boolean isSimple(AspectRule rule) {
    int values = 0;
    for (Claim claim : rule.claims()) {
      values += claim.values().size();
    }
    return values <= MOST_VALUES && rule.claims().size() <= MOST_UNSURE;
  }

  /** Counts what can be held at one time; what one source says in several claims is one thing. */
  private static long positions(AspectRule rule) {
    Map<String, List<Claim>> bySource =
        rule.claims().stream()
            .filter(it -> it.manner() == ClaimKind.SAYS && it.source().isPresent())
            .collect(Collectors.groupingBy(it -> it.source().orElseThrow()));
    long several = bySource.values().stream().filter(it -> it.size() > 1).count();
    long once =
        bySource.values().stream()
            .filter(it -> it.size() == 1)
            .map(it -> Set.copyOf(it.get(0).values()))
            .distinct()
            .count();
    long open =
        rule.claims().stream()
            .filter(it -> it.manner() == ClaimKind.LEAVES_OPEN)
            .flatMap(it -> it.values().stream())
            .map(Expectation::key)
            .distinct()
            .count();
    return several + once + open;
  }
}
