package assize.compare;

import assize.aspect.Aspect;
import assize.compare.Change.Kind;
import assize.ruleset.Area;
import assize.ruleset.AspectRule;
import assize.ruleset.Hazard;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What changed of the items. */
final class ItemChanges {
  private static final List<Property<Item>> PROPERTIES =
      List.of(
          Property.wording(Item.TITLE, "title"),
          Property.altering(Item.POINTS, "points", Property::points),
          Property.altering(
              Item.SCOPE, "for which vehicles", it -> Optional.of(new ChangedValue.Where(it))),
          Property.note(Item.LOOK, "what to look at"),
          Property.note(Item.NOTES, "notes"),
          Property.wording(Item.HAZARDS, "hazards", ItemChanges::hazards),
          Property.altering(Item.CAUSE, "cause", it -> it.map(ChangedValue.Words::new)));

  private final RuleSet after;
  private final Map<String, Area> areasBefore;
  private final Map<String, Area> areasAfter;
  private final Map<String, Item> itemsBefore;

  ItemChanges(RuleSet before, RuleSet after) {
    this.after = after;
    this.areasBefore = byId(before.areas(), Area::id);
    this.areasAfter = byId(after.areas(), Area::id);
    this.itemsBefore = byId(before);
  }

  private static <T> Map<String, T> byId(List<T> all, Function<T, String> id) {
    Map<String, T> byId = new LinkedHashMap<>();
    all.forEach(one -> byId.putIfAbsent(id.apply(one), one));
    return byId;
  }

  void into(List<Change> changes) {
    ChangeCollector differences = new ChangeCollector(changes, RuleSetPart.ITEM).unordered();
    differences.each(
        itemsBefore,
        byId(after),
        id -> id,
        Item::title,
        Set::of,
        (of, both) -> item(of, both.before(), both.after()));
    for (Area area : after.areas()) {
      order(new ChangeCollector(changes, RuleSetPart.AREA), area);
    }
  }

  /** Items that stay in their area may stand there in another order. */
  private void order(ChangeCollector differences, Area area) {
    Set<String> now = ids(Optional.of(area));
    Set<String> was = ids(Optional.ofNullable(areasBefore.get(area.id())));
    List<String> old = was.stream().filter(now::contains).toList();
    List<String> kept = now.stream().filter(was::contains).toList();
    if (!old.equals(kept)) {
      differences
          .of(area.id(), area.name(), new LinkedHashSet<>(kept))
          .words("order of its items", false, String.join(", ", old), String.join(", ", kept));
    }
  }

  private static Set<String> ids(Optional<Area> area) {
    return area.stream()
        .flatMap(it -> it.items().stream())
        .map(Item::id)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private static Map<String, Item> byId(RuleSet rules) {
    return byId(rules.items().toList(), Item::id);
  }

  private void item(ChangeCollector.Of of, Item old, Item now) {
    if (!old.area().equals(now.area())) {
      of.note(
          Kind.MOVED,
          "area",
          true,
          Optional.of(new ChangedValue.Words(area(areasBefore, old.area()))),
          Optional.of(new ChangedValue.Words(area(areasAfter, now.area()))));
    }
    Property.compare(PROPERTIES, of, old, now);
    choices(of, old, now);
    aspects(of, old, now);
  }

  private static String area(Map<String, Area> areas, String id) {
    return Optional.ofNullable(areas.get(id)).map(Area::name).orElse(id);
  }

  private static Optional<ChangedValue> hazards(List<Hazard> hazards) {
    return hazards.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new ChangedValue.Words(
                hazards.stream().map(Hazard::word).collect(Collectors.joining(", "))));
  }

  private static void choices(ChangeCollector.Of of, Item old, Item now) {
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

  private static void aspects(ChangeCollector.Of of, Item old, Item now) {
    Map<Aspect, AspectRule> was = byAspect(old);
    Map<Aspect, AspectRule> is = byAspect(now);
    is.forEach(
        (aspect, rule) -> {
          AspectRule other = was.get(aspect);
          of.check(
              "points of the " + aspect.spoken(),
              true,
              Optional.ofNullable(other).map(it -> new ChangedValue.Points(it.possible())),
              Property.points(rule.possible()));
          ClaimChanges.into(
              of, old, now, aspect, other == null ? List.of() : other.claims(), rule.claims());
        });
    was.forEach(
        (aspect, rule) -> {
          if (!is.containsKey(aspect)) {
            of.check(
                "points of the " + aspect.spoken(),
                true,
                Property.points(rule.possible()),
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
