package assize.editions;

import assize.aspect.Aspect;
import assize.aspect.Expectation;
import assize.evidence.Claim;
import assize.evidence.Grade;
import assize.evidence.Scope;
import assize.evidence.Source;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import assize.standing.Asking;
import assize.standing.Question;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which items a change bears on, in either edition. */
final class Bearing {
  private final RuleSet before;
  private final RuleSet after;

  Bearing(RuleSet before, RuleSet after) {
    this.before = before;
    this.after = after;
  }

  private Stream<RuleSet> both() {
    return Stream.of(after, before);
  }

  Set<String> items(Predicate<Item> fits) {
    return both()
        .flatMap(RuleSet::items)
        .filter(fits)
        .map(Item::id)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  Set<String> all() {
    return items(item -> true);
  }

  private static Stream<Claim> claims(Item item) {
    return item.aspects().stream().map(AspectRule::claims).flatMap(List::stream);
  }

  private Set<String> claimed(Predicate<Claim> fits) {
    return items(item -> claims(item).anyMatch(fits));
  }

  /** Returns items that cite a source, or one that copies it, which it then counts beside. */
  Set<String> source(String id) {
    return claimed(claim -> claim.source().equals(Optional.of(id)));
  }

  Set<String> grade(Grade grade) {
    return claimed(
        claim ->
            claim.source().stream()
                .anyMatch(
                    id ->
                        both()
                            .flatMap(rules -> Stream.ofNullable(rules.sources().get(id)))
                            .map(Source::grade)
                            .anyMatch(grade::equals)));
  }

  /** Returns items on which sources can differ. */
  Set<String> weighed() {
    return items(item -> item.aspects().stream().anyMatch(rule -> rule.claims().size() > 1));
  }

  Set<String> color(String id) {
    return claimed(
        claim ->
            claim.values().stream()
                .anyMatch(
                    value ->
                        value instanceof Expectation.Chip chip && chip.chip().equals(id)
                            || value instanceof Expectation.SameColor));
  }

  /** Returns items that expect a word, or one in whose place it may stand. */
  Set<String> finish(String id) {
    Set<String> names = new LinkedHashSet<>(Set.of(id));
    both()
        .forEach(
            rules ->
                rules.finishes().keySet().stream()
                    .filter(other -> rules.isKindOf(id, other))
                    .forEach(names::add));
    return worded(Aspect.FINISH, names);
  }

  Set<String> material(String id) {
    return worded(Aspect.MATERIAL, Set.of(id));
  }

  private Set<String> worded(Aspect aspect, Set<String> names) {
    return items(
        item ->
            item.aspects().stream()
                .filter(rule -> rule.aspect() == aspect)
                .flatMap(rule -> rule.claims().stream())
                .flatMap(claim -> claim.values().stream())
                .anyMatch(value -> names.contains(value.key())));
  }

  /** Returns items that grade an aspect by the rule set's own credits. */
  Set<String> graded(Aspect aspect) {
    return items(item -> item.aspects().stream().anyMatch(rule -> rule.aspect() == aspect));
  }

  /** Returns items that ask a question of vehicles. */
  Set<String> asking(Predicate<Question> fits) {
    return items(item -> scopes(item).anyMatch(it -> Asking.by(it).stream().anyMatch(fits)));
  }

  /** Returns items whose answer depends on when a vehicle was built. */
  Set<String> dated() {
    return items(
        item ->
            scopes(item).anyMatch(scope -> scope.buildDays().findAny().isPresent())
                || item.aspects().stream().anyMatch(rule -> rule.aspect() == Aspect.DATE_CODE));
  }

  Set<String> inArea(String id) {
    return items(item -> item.area().equals(id));
  }

  private static Stream<Scope> scopes(Item item) {
    return Stream.concat(Stream.of(item.scope()), claims(item).map(Claim::scope));
  }
}
