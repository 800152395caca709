package assize.report.text;

import assize.check.Coverage;
import assize.check.Coverage.Reach;
import assize.check.Coverage.Stretch;
import assize.ruleset.RuleSet;
import assize.text.Json;
import java.util.List;

/** Writes which stretches of production claims cover, one object a line for each item. */
public final class CoverageJson {
  private CoverageJson() {}

  /** Returns one line for each item. */
  public static List<String> lines(RuleSet rules, List<Coverage> items) {
    return items.stream()
        .map(
            item ->
                Json.object()
                    .text("rule_set", rules.id())
                    .text("area", item.item().area())
                    .text("item", item.item().id())
                    .objects("aspects", "", item.aspects(), CoverageJson::aspect)
                    .toString())
        .toList();
  }

  private static void aspect(Json json, Coverage.OfAspect aspect) {
    json.text("aspect", aspect.aspect().word())
        .objects(
            "models",
            "",
            aspect.stretches().entrySet(),
            (model, stretches) ->
                model
                    .text("model", stretches.getKey())
                    .objects(
                        "stretches",
                        "",
                        stretches.getValue().stream()
                            .filter(it -> it.reach() != Reach.NONE_NEEDED)
                            .toList(),
                        CoverageJson::stretch));
  }

  private static void stretch(Json json, Stretch stretch) {
    json.text("first", stretch.days().first().toString())
        .text("last", stretch.days().last().toString())
        .text("claims", word(stretch.reach()));
  }

  private static String word(Reach reach) {
    return switch (reach) {
      case NONE_NEEDED -> "not needed";
      case COVERED -> "all";
      case IN_PART -> "some";
      case UNCOVERED -> "none";
    };
  }
}
