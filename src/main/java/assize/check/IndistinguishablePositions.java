package assize.check;

import assize.aspect.ColorChip;
import assize.aspect.Colors;
import assize.aspect.Expectation;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.evidence.Claim;
import assize.measure.CieLab;
import assize.measure.Ciede2000;
import assize.production.Production;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Finds values of one aspect that are written differently but that nothing found on a vehicle can
 * tell apart: they stand as two positions, and as a dispute, where there is one.
 */
final class IndistinguishablePositions implements RuleSetWarningRule {
  /** Colors nearer than this (CIEDE2000) look the same side by side: common practice, no source. */
  private static final double SEEN = 1.0;

  @Override
  public DiagnosticCode code() {
    return DiagnosticCode.INDISTINGUISHABLE_POSITIONS;
  }

  @Override
  public Stream<Diagnostic> in(RuleSet rules) {
    return rules
        .items()
        .flatMap(item -> item.aspects().stream().flatMap(rule -> in(item, rule, rules)));
  }

  /** A value, and the claim that it stands in. */
  private record ClaimedValue(Claim claim, Expectation value) {}

  private static Stream<Diagnostic> in(Item item, AspectRule rule, RuleSet rules) {
    List<ClaimedValue> all =
        rule.claims().stream()
            .flatMap(claim -> claim.values().stream().map(value -> new ClaimedValue(claim, value)))
            .toList();
    List<Diagnostic> found = new ArrayList<>();
    for (int i = 0; i < all.size() && found.isEmpty(); i++) {
      for (int j = 0; j < i && found.isEmpty(); j++) {
        ClaimedValue later = all.get(i);
        ClaimedValue earlier = all.get(j);
        if (areAlike(earlier.value, later.value, rules) && meet(item, earlier, later, rules)) {
          found.add(say(item, rule, earlier, later));
        }
      }
    }
    return found.stream();
  }

  private static boolean areAlike(Expectation a, Expectation b, RuleSet rules) {
    if (a.key().equals(b.key())) {
      return false;
    }
    return a.told().equals(b.told()) || areNear(a, b, rules);
  }

  private static boolean areNear(Expectation a, Expectation b, RuleSet rules) {
    Optional<CieLab> one = lab(a, rules);
    Optional<CieLab> other = lab(b, rules);
    return one.isPresent()
        && other.isPresent()
        && Ciede2000.of(one.get(), other.get()).de00() < SEEN;
  }

  private static Optional<CieLab> lab(Expectation value, RuleSet rules) {
    return value instanceof Colors.Chip chip
        ? Optional.ofNullable(rules.colors().get(chip.chip())).flatMap(ColorChip::lab)
        : Optional.empty();
  }

  private static boolean meet(Item item, ClaimedValue a, ClaimedValue b, RuleSet rules) {
    return Production.within(rules, List.of(item.scope(), a.claim.scope(), b.claim.scope()))
        .findAny()
        .isPresent();
  }

  private static Diagnostic say(
      Item item, AspectRule rule, ClaimedValue earlier, ClaimedValue later) {
    Diagnostic warning =
        Diagnostic.of(
                DiagnosticCode.INDISTINGUISHABLE_POSITIONS,
                later.claim.at(),
                "nothing that is found on a vehicle tells \""
                    + later.value.key()
                    + "\" from \""
                    + earlier.value.key()
                    + "\" for the "
                    + rule.aspect().spoken()
                    + " of \""
                    + item.id()
                    + "\"",
                "write both alike, or they count as two positions")
            .subjects(WarningSubjects.of(item, later.claim));
    return later.claim.at().equals(earlier.claim.at())
        ? warning
        : warning.with(earlier.claim.at(), "the other one");
  }
}
