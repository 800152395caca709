package assize.editions;

import assize.aspect.Aspect;
import assize.editions.Change.Kind;
import assize.ruleset.Area;
import assize.ruleset.AspectRule;
import assize.ruleset.Caution;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What changed of the items. */
final class ItemChanges {
  private final RuleSet before;
  private final RuleSet after;

  ItemChanges(RuleSet before, RuleSet after) {
    this.before = before;
    this.after = after;
  }

  void into(List<Change> changes) {
    Differences differences = new Differences(changes, Part.ITEM, false);
    differences.each(
        byId(before),
        byId(after),
        id -> id,
        Item::title,
        Set::of,
        (of, both) -> item(of, both.before(), both.after()));
    for (Area area : after.areas()) {
      order(new Differences(changes, Part.AREA), area);
    }
  }

  /** Items that stay in their area may stand there in another order. */
  private void order(Differences differences, Area area) {
    List<String> now = area.items().stream().map(Item::id).toList();
    List<String> old =
        before.areas().stream()
            .filter(one -> one.id().equals(area.id()))
            .flatMap(one -> one.items().stream())
            .map(Item::id)
            .filter(now::contains)
            .toList();
    List<String> kept = now.stream().filter(old::contains).toList();
    if (!old.equals(kept)) {
      differences
          .of(area.id(), area.name(), new java.util.LinkedHashSet<>(kept))
          .words("order of its items", false, String.join(", ", old), String.join(", ", kept));
    }
  }

  private static Map<String, Item> byId(RuleSet rules) {
    Map<String, Item> byId = new LinkedHashMap<>();
    rules.items().forEach(item -> byId.put(item.id(), item));
    return byId;
  }

  private void item(Differences.Of of, Item old, Item now) {
    if (!old.area().equals(now.area())) {
      of.note(
          Kind.MOVED,
          "area",
          true,
          Optional.of(new Value.Words(area(before, old.area()))),
          Optional.of(new Value.Words(area(after, now.area()))));
    }
    of.words("title", false, old.title(), now.title());
    of.check(
        "points", true, StandardChanges.points(old.points()), StandardChanges.points(now.points()));
    of.check(
        "for which vehicles",
        true,
        Optional.of(new Value.Where(old.scope())),
        Optional.of(new Value.Where(now.scope())));
    of.words("what to look at", false, old.look(), now.look());
    of.words("notes", false, old.notes(), now.notes());
    of.words("cautions", false, cautions(old), cautions(now));
    of.words("cause", true, old.cause(), now.cause());
    choices(of, old, now);
    aspects(of, old, now);
  }

  private static String area(RuleSet rules, String id) {
    return rules.areas().stream()
        .filter(area -> area.id().equals(id))
        .map(Area::name)
        .findFirst()
        .orElse(id);
  }

  private static Optional<String> cautions(Item item) {
    return item.cautions().isEmpty()
        ? Optional.empty()
        : Optional.of(
            item.cautions().stream().map(Caution::word).collect(Collectors.joining(", ")));
  }

  private static void choices(Differences.Of of, Item old, Item now) {
    now.choices()
        .forEach(
            (word, meaning) ->
                of.words(
                    "word “" + word + "”",
                    false,
                    Optional.ofNullable(old.choices().get(word)),
                    Optional.of(meaning)));
    old.choices()
        .forEach(
            (word, meaning) -> {
              if (!now.choices().containsKey(word)) {
                of.words("word “" + word + "”", true, Optional.of(meaning), Optional.empty());
              }
            });
  }

  private static void aspects(Differences.Of of, Item old, Item now) {
    Map<Aspect, AspectRule> was = byAspect(old);
    Map<Aspect, AspectRule> is = byAspect(now);
    is.forEach(
        (aspect, rule) -> {
          AspectRule other = was.get(aspect);
          of.check(
              "points of the " + aspect.spoken(),
              true,
              Optional.ofNullable(other).map(it -> new Value.Points(it.possible())),
              StandardChanges.points(rule.possible()));
          ClaimChanges.into(
              of, old, now, aspect, other == null ? List.of() : other.claims(), rule.claims());
        });
    was.forEach(
        (aspect, rule) -> {
          if (!is.containsKey(aspect)) {
            of.check(
                "points of the " + aspect.spoken(),
                true,
                StandardChanges.points(rule.possible()),
                Optional.empty());
            ClaimChanges.into(of, old, now, aspect, rule.claims(), List.of());
          }
        });
    List<Aspect> order = was.keySet().stream().filter(is::containsKey).toList();
    List<Aspect> newOrder = is.keySet().stream().filter(was::containsKey).toList();
    if (!order.equals(newOrder)) {
      of.words("order of what is looked at", false, spoken(order), spoken(newOrder));
    }
  }

  private static String spoken(List<Aspect> aspects) {
    return aspects.stream().map(Aspect::spoken).collect(Collectors.joining(", "));
  }

  private static Map<Aspect, AspectRule> byAspect(Item item) {
    Map<Aspect, AspectRule> byAspect = new LinkedHashMap<>();
    item.aspects().forEach(rule -> byAspect.put(rule.aspect(), rule));
    return byAspect;
  }
}
