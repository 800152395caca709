package assize.check;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.production.Production;
import assize.ruleset.Area;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds items of one area that bear the same title and apply to the same vehicle. */
final class SameTitle implements RuleSetWarningRule {
  @Override
  public DiagnosticCode code() {
    return DiagnosticCode.DUPLICATE_TITLE;
  }

  @Override
  public Stream<Diagnostic> in(RuleSet rules) {
    return rules.areas().stream().flatMap(area -> in(area, rules));
  }

  private static Stream<Diagnostic> in(Area area, RuleSet rules) {
    Map<String, Item> seen = new HashMap<>();
    return area.items().stream()
        .flatMap(
            item -> {
              Optional<Item> other = Optional.ofNullable(seen.putIfAbsent(title(item), item));
              return other.filter(it -> meet(it, item, rules)).map(it -> say(it, item)).stream();
            });
  }

  private static String title(Item item) {
    return item.title().toLowerCase(Locale.ROOT).replaceAll("[\\s\\p{P}]+", " ").strip();
  }

  private static boolean meet(Item a, Item b, RuleSet rules) {
    return Production.within(rules, List.of(a.scope(), b.scope())).findAny().isPresent();
  }

  private static Diagnostic say(Item first, Item second) {
    return Diagnostic.of(
            DiagnosticCode.DUPLICATE_TITLE,
            second.at(),
            "items \""
                + first.id()
                + "\" and \""
                + second.id()
                + "\" have one title: "
                + second.title(),
            "say in the titles what tells them apart, as in left and right")
        .with(first.at(), "the other one")
        .subjects(second.id(), first.id());
  }
}
