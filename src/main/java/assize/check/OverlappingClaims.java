package assize.check;

import assize.aspect.Expectation;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.evidence.Claim;
import assize.evidence.ClaimKind;
import assize.evidence.Ternary;
import assize.production.Production;
import assize.production.VehicleKind;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Finds claims of one source of which one speaks of some of the other's vehicles and says something
 * else: a change, or an exception, that was meant to take the other's place. As written both hold.
 *
 * <p>A claim that ends before the other does is left alone: for a while either was fitted, as when
 * old stock was used up.
 */
final class OverlappingClaims implements RuleSetWarningRule {
  @Override
  public DiagnosticCode code() {
    return DiagnosticCode.OVERLAPPING_CLAIMS;
  }

  @Override
  public Stream<Diagnostic> in(RuleSet rules) {
    return rules
        .items()
        .filter(item -> item.aspects().stream().anyMatch(OverlappingClaims::isToLookAt))
        .flatMap(item -> in(item, rules));
  }

  private static boolean isToLookAt(AspectRule rule) {
    return rule.claims().stream()
        .anyMatch(a -> rule.claims().stream().anyMatch(b -> isOther(a, b)));
  }

  private static Stream<Diagnostic> in(Item item, RuleSet rules) {
    List<VehicleKind> vehicles =
        Production.of(rules, item).byDays().stream()
            .filter(it -> item.scope().holds(it) != Ternary.NO)
            .toList();
    return item.aspects().stream()
        .flatMap(
            rule ->
                rule.claims().stream()
                    .flatMap(
                        narrow ->
                            rule.claims().stream()
                                .filter(wide -> isOther(narrow, wide))
                                .filter(wide -> liesWithin(narrow, wide, vehicles))
                                .limit(1)
                                .map(wide -> say(item, rule, narrow, wide))));
  }

  private static boolean isOther(Claim a, Claim b) {
    return a.source().isPresent()
        && a.source().equals(b.source())
        && a.manner() == ClaimKind.SAYS
        && b.manner() == ClaimKind.SAYS
        && !keys(a).equals(keys(b));
  }

  private static String words(Claim claim) {
    return claim.values().stream().map(Expectation::key).collect(Collectors.joining(" or "));
  }

  private static Set<String> keys(Claim claim) {
    return claim.values().stream().map(Expectation::key).collect(Collectors.toSet());
  }

  private static boolean liesWithin(Claim narrow, Claim wide, List<VehicleKind> vehicles) {
    List<VehicleKind> few = vehicles.stream().filter(it -> speaks(narrow, it)).toList();
    List<VehicleKind> many = vehicles.stream().filter(it -> speaks(wide, it)).toList();
    boolean within =
        !few.isEmpty() && few.size() < many.size() && few.stream().allMatch(it -> speaks(wide, it));
    return within && !last(many).isAfter(last(few));
  }

  private static boolean speaks(Claim claim, VehicleKind vehicle) {
    return claim.scope().holds(vehicle) != Ternary.NO;
  }

  private static LocalDate last(List<VehicleKind> some) {
    return some.stream().map(it -> it.days().last()).max(LocalDate::compareTo).orElseThrow();
  }

  private static Diagnostic say(Item item, AspectRule rule, Claim narrow, Claim wide) {
    String source = narrow.source().orElse("");
    return Diagnostic.of(
            DiagnosticCode.OVERLAPPING_CLAIMS,
            narrow.at(),
            "of some vehicles \""
                + source
                + "\" says both "
                + words(narrow)
                + " and "
                + words(wide)
                + ", so that there either is right for the "
                + rule.aspect().spoken()
                + " of \""
                + item.id()
                + "\"",
            "if this takes the other's place, end the other where this begins")
        .with(wide.at(), "said of these vehicles too")
        .subjects(WarningSubjects.of(item, narrow));
  }
}
