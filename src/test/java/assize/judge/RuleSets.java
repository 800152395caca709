package assize.judge;

import assize.ruleset.Area;
import assize.ruleset.Defined;
import assize.ruleset.RuleSet;
import assize.ruleset.Scale;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Bare rule sets, for tests of arithmetic alone. */
final class RuleSets {
  private RuleSets() {}

  static RuleSet bare(Scale scale, List<Area> areas) {
    return new RuleSet(
        "bare",
        "Bare",
        "1",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        scale,
        List.of(),
        Map.of(),
        Map.of(),
        Map.of(),
        Map.of(),
        Map.of(),
        Map.of(),
        Map.of(),
        Map.of(),
        Map.of(),
        Map.of(),
        Map.of(),
        areas,
        List.of(),
        List.of(),
        Defined.NOWHERE);
  }

  static Area area(String id, long points, java.util.OptionalLong most) {
    return Area.of(id, id, points, most, List.of());
  }

  static Scale scale(Scale.Method method, long outOf) {
    return Scale.usual().with(Scale.METHOD, method).with(Scale.OUT_OF, outOf);
  }
}
