package assize.judge;

import assize.ruleset.Area;
import assize.ruleset.RuleSet;
import assize.ruleset.Scale;
import java.util.List;

/** Bare rule sets, for tests of arithmetic alone. */
final class RuleSets {
  private RuleSets() {}

  static RuleSet bare(Scale scale, List<Area> areas) {
    return RuleSet.of("bare", "Bare", "1")
        .with(RuleSet.SCALE, scale)
        .with(RuleSet.AREAS, List.copyOf(areas));
  }

  static Area area(String id, long points, java.util.OptionalLong most) {
    return Area.of(id, id, points, most, List.of());
  }

  static Scale scale(Scale.Method method, long outOf) {
    return Scale.usual().with(Scale.METHOD, method).with(Scale.OUT_OF, outOf);
  }
}
