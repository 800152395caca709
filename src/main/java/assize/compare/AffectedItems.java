package assize.compare;

import assize.aspect.Aspect;
import assize.aspect.Colors;
import assize.aspect.Expectation;
import assize.aspect.Finish;
import assize.evidence.Claim;
import assize.evidence.Grade;
import assize.evidence.Scope;
import assize.evidence.Source;
import assize.production.ScopeAttributes;
import assize.production.VehicleAttribute;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which items a change bears on, in either edition: those of the newer in their order, then those
 * of the older. Whatever bears on the same items gets the same set.
 */
final class AffectedItems {
  private final RuleSet before;
  private final RuleSet after;
  private final Map<String, Integer> places = new HashMap<>();
  private final Map<List<?>, Set<String>> items = new HashMap<>();
  private final Map<Set<String>, Set<String>> sets = new HashMap<>();
  private final Map<String, Set<String>> kindsBefore = new HashMap<>();
  private final Map<String, Set<String>> kindsAfter = new HashMap<>();

  /** How many more names may be put together; beyond, {@link EditionComparison#isTooMuch} holds. */
  private long left = EditionComparison.MOST_BEARING;

  /** By what items are found; a name or the like stands behind it. */
  private enum By {
    ALL,
    AREA,
    SOURCE,
    GRADE,
    WEIGHED,
    CHIP,
    SAME_COLOR,
    WORD,
    ASPECT,
    ATTRIBUTE,
    DATED
  }

  AffectedItems(RuleSet before, RuleSet after) {
    this.before = before;
    this.after = after;
    both().flatMap(RuleSet::items).forEach(this::note);
    items.replaceAll((by, found) -> shared(found));
  }

  /** Returns the one set that has these names. */
  private Set<String> shared(Set<String> names) {
    return sets.computeIfAbsent(names, Collections::unmodifiableSet);
  }

  private Stream<RuleSet> both() {
    return Stream.of(after, before);
  }

  private void note(Item item) {
    places.putIfAbsent(item.id(), places.size());
    note(item, By.ALL, "");
    note(item, By.AREA, item.area());
    note(item, item.scope());
    for (AspectRule rule : item.aspects()) {
      note(item, By.ASPECT, rule.aspect());
      if (rule.claims().size() > 1) {
        note(item, By.WEIGHED, "");
      }
      if (rule.aspect().kind().isDated()) {
        note(item, By.DATED, "");
      }
      rule.claims().forEach(it -> note(item, rule.aspect(), it));
    }
  }

  private void note(Item item, Scope scope) {
    ScopeAttributes.of(scope).attributes().forEach(it -> note(item, By.ATTRIBUTE, it));
    if (scope.buildDays().findAny().isPresent()) {
      note(item, By.DATED, "");
    }
  }

  private void note(Item item, Aspect aspect, Claim claim) {
    note(item, claim.scope());
    claim.source().ifPresent(it -> note(item, By.SOURCE, it));
    claim.source().stream()
        .flatMap(id -> both().flatMap(rules -> Stream.ofNullable(rules.sources().get(id))))
        .map(Source::grade)
        .forEach(it -> note(item, By.GRADE, it));
    for (Expectation value : claim.values()) {
      if (value instanceof Colors.Chip chip) {
        note(item, By.CHIP, chip.chip());
      } else if (value instanceof Colors.Same) {
        note(item, By.SAME_COLOR, "");
      }
      if (aspect == Aspect.FINISH || aspect == Aspect.MATERIAL) {
        items.computeIfAbsent(word(aspect, value.key()), it -> newSet()).add(item.id());
      }
    }
  }

  private void note(Item item, By by, Object what) {
    items.computeIfAbsent(List.of(by, what), it -> newSet()).add(item.id());
  }

  private static Set<String> newSet() {
    return new LinkedHashSet<>(4);
  }

  private static List<?> word(Aspect aspect, String name) {
    return List.of(By.WORD, aspect, name);
  }

  private Set<String> found(By by, Object what) {
    return found(List.of(by, what));
  }

  private Set<String> found(List<?> by) {
    return items.getOrDefault(by, Set.of());
  }

  /** Returns the items of two sets in their order. */
  private Set<String> union(Set<String> one, Set<String> other) {
    if (one.equals(other) || other.isEmpty()) {
      return one;
    }
    return one.isEmpty()
        ? other
        : together(
            one,
            other,
            all -> all.sorted(Comparator.comparingInt(it -> places.getOrDefault(it, 0))));
  }

  private Set<String> together(
      Set<String> one, Set<String> other, UnaryOperator<Stream<String>> order) {
    left -= one.size() + other.size();
    return left < 0
        ? Set.of()
        : shared(
            order
                .apply(Stream.concat(one.stream(), other.stream()))
                .collect(Collectors.toCollection(LinkedHashSet::new)));
  }

  Set<String> all() {
    return found(By.ALL, "");
  }

  /** Returns items that cite a source. */
  Set<String> source(String id) {
    return found(By.SOURCE, id);
  }

  Set<String> grade(Grade grade) {
    return found(By.GRADE, grade);
  }

  /** Returns items on which sources can differ. */
  Set<String> weighed() {
    return found(By.WEIGHED, "");
  }

  Set<String> color(String id) {
    return union(found(By.CHIP, id), found(By.SAME_COLOR, ""));
  }

  /** Returns items that expect a word, or one in whose place it may stand. */
  Set<String> finish(String id) {
    return union(kinds(after, kindsAfter, id), kinds(before, kindsBefore, id));
  }

  /**
   * Returns items that expect a finish or one that it is a kind of, by one edition; a finish that
   * no item names bears on what the one behind it does.
   */
  private Set<String> kinds(RuleSet rules, Map<String, Set<String>> known, String id) {
    Deque<String> unknown = new ArrayDeque<>();
    Optional<String> at = Optional.of(id);
    while (at.filter(it -> !known.containsKey(it)).isPresent()
        && unknown.size() <= rules.finishes().size()) {
      unknown.push(at.get());
      at = Optional.ofNullable(rules.finishes().get(at.get())).flatMap(Finish::kindOf);
    }
    Set<String> kinds = at.map(it -> known.getOrDefault(it, Set.of())).orElse(Set.of());
    for (String one : unknown) {
      kinds = union(found(word(Aspect.FINISH, one)), kinds);
      known.put(one, kinds);
    }
    return kinds;
  }

  Set<String> material(String id) {
    return found(word(Aspect.MATERIAL, id));
  }

  /** Returns items that grade an aspect by the rule set's own credits. */
  Set<String> graded(Aspect aspect) {
    return found(By.ASPECT, aspect);
  }

  /** Returns items that ask for an attribute of vehicles. */
  Set<String> asking(VehicleAttribute attribute) {
    return found(By.ATTRIBUTE, attribute);
  }

  /**
   * Returns items whose answer depends on when a vehicle was built, then those that ask its number.
   */
  Set<String> numbered(String table) {
    Set<String> dated = found(By.DATED, "");
    Set<String> asking = found(By.ATTRIBUTE, new VehicleAttribute.OfNumber(table));
    return dated.containsAll(asking) ? dated : together(dated, asking, all -> all);
  }

  Set<String> inArea(String id) {
    return found(By.AREA, id);
  }
}
