package assize.report.handbook;

import assize.aspect.Expectation;
import assize.evidence.Claim;
import assize.evidence.Source;
import assize.report.view.AnchorIds;
import assize.report.view.CiteView;
import assize.report.view.ExpectationFormatter;
import assize.report.view.LinkView;
import assize.report.view.VehicleGroupFormatter;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** What every part of the handbook asks of one rule set. */
final class HandbookContext {
  private final RuleSet rules;
  private final ExpectationFormatter words;
  private final VehicleGroupFormatter scopes;

  HandbookContext(RuleSet rules) {
    this.rules = rules;
    this.words = new ExpectationFormatter(rules);
    this.scopes = new VehicleGroupFormatter(rules);
  }

  RuleSet rules() {
    return rules;
  }

  ExpectationFormatter words() {
    return words;
  }

  VehicleGroupFormatter scopes() {
    return scopes;
  }

  static LinkView link(Item item) {
    return new LinkView(AnchorIds.item(item.id()), item.title());
  }

  /** Returns the items that fit, in the order of the handbook. */
  List<LinkView> items(Predicate<Item> fits) {
    return rules.items().filter(fits).map(HandbookContext::link).toList();
  }

  /** Returns the items on which some claim fits. */
  List<LinkView> claimed(Predicate<Claim> fits) {
    return items(item -> claims(item).stream().anyMatch(fits));
  }

  /** Returns the items on which a value is named that fits. */
  List<LinkView> expecting(Predicate<Expectation> fits) {
    return claimed(claim -> claim.values().stream().anyMatch(fits));
  }

  static List<Claim> claims(Item item) {
    return item.aspects().stream().map(AspectRule::claims).flatMap(List::stream).toList();
  }

  CiteView cite(String source, String where) {
    Optional<Source> known = Optional.ofNullable(rules.sources().get(source));
    return new CiteView(
        known.map(it -> AnchorIds.source(it.id())).orElse(""),
        known.map(Source::title).orElse(source),
        known.map(it -> it.grade().name()).orElse(""),
        where,
        "");
  }
}
