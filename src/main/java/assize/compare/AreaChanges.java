package assize.compare;

import assize.ruleset.Area;
import assize.ruleset.RuleSet;
import assize.ruleset.Scale;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What changed of the areas themselves. */
final class AreaChanges {
  private final RuleSet before;
  private final RuleSet after;
  private final AffectedItems bearing;

  AreaChanges(RuleSet before, RuleSet after, AffectedItems bearing) {
    this.before = before;
    this.after = after;
    this.bearing = bearing;
  }

  void into(List<Change> changes) {
    boolean weighed =
        before.scale().method() == Scale.Method.AREAS
            || after.scale().method() == Scale.Method.AREAS;
    List<Property<Area>> properties =
        List.of(
            new Property<>("name", false, it -> Property.words().apply(it.name())),
            new Property<>("points", weighed, it -> Property.points(it.points())),
            Property.altering(Area.MAX_LOSS, "most that it loses", Property::points));
    new ChangeCollector(changes, RuleSetPart.AREA)
        .each(
            byId(before),
            byId(after),
            id -> id,
            Area::name,
            this::items,
            (of, both) -> Property.compare(properties, of, both.before(), both.after()));
  }

  private Set<String> items(String area) {
    return bearing.inArea(area);
  }

  private static Map<String, Area> byId(RuleSet rules) {
    Map<String, Area> byId = new LinkedHashMap<>();
    rules.areas().forEach(area -> byId.put(area.id(), area));
    return byId;
  }
}
