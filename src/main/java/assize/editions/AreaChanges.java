package assize.editions;

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
  private final Bearing bearing;

  AreaChanges(RuleSet before, RuleSet after, Bearing bearing) {
    this.before = before;
    this.after = after;
    this.bearing = bearing;
  }

  void into(List<Change> changes) {
    boolean weighed =
        before.scale().method() == Scale.Method.AREAS
            || after.scale().method() == Scale.Method.AREAS;
    new Differences(changes, Part.AREA)
        .each(
            byId(before),
            byId(after),
            id -> id,
            Area::name,
            this::items,
            (of, both) -> {
              of.words("name", false, both.before().name(), both.after().name());
              of.check(
                  "points",
                  weighed,
                  StandardChanges.points(both.before().points()),
                  StandardChanges.points(both.after().points()));
              of.check(
                  "most that it loses",
                  true,
                  StandardChanges.points(both.before().most()),
                  StandardChanges.points(both.after().most()));
            });
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
