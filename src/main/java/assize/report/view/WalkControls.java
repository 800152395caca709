package assize.report.view;

import assize.aspect.Expectation;
import assize.aspect.Finding;
import assize.aspect.Origin;
import assize.measure.Dimension;
import assize.measure.GlossBand;
import assize.measure.Swatch;
import assize.report.view.WalkView.Choice;
import assize.report.view.WalkView.WalkControl;
import assize.report.view.WalkView.WalkControl.Kind;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** How what is found of each aspect is written down. */
final class WalkControls {
  private static final Choice OTHER = new Choice(Finding.OTHER, "none that the rule set names", "");

  private final List<Choice> finishes;
  private final List<Choice> materials;
  private final List<Choice> colors;
  private final List<Choice> origins;
  private final List<Choice> conditions;

  WalkControls(RuleSet rules) {
    finishes =
        withOther(
            rules.finishes().values().stream()
                .map(finish -> new Choice(finish.id(), finish.name(), ""))
                .toList());
    materials = withOther(named(rules.materials()));
    colors =
        withOther(
            rules.colors().values().stream()
                .map(
                    color ->
                        new Choice(
                            color.id(),
                            color.name(),
                            color.lab().map(lab -> Swatch.of(lab).hex()).orElse("")))
                .toList());
    origins =
        Arrays.stream(Origin.values())
            .map(origin -> new Choice(origin.word(), origin.word(), ""))
            .toList();
    conditions =
        rules.conditions().keySet().stream().map(word -> new Choice(word, word, "")).toList();
  }

  private static List<Choice> named(Map<String, String> names) {
    return names.entrySet().stream()
        .map(entry -> new Choice(entry.getKey(), entry.getValue(), ""))
        .toList();
  }

  private static List<Choice> withOther(List<Choice> choices) {
    List<Choice> all = new ArrayList<>(choices);
    all.add(OTHER);
    return all;
  }

  WalkControl of(Item item, AspectRule rule) {
    return switch (rule.aspect()) {
      case FINISH -> words(finishes);
      case MATERIAL -> words(materials);
      case CHOICE -> words(withOther(named(item.choices())));
      case ORIGIN -> words(origins);
      case CONDITION -> words(conditions);
      case COLOR -> new WalkControl(Kind.COLOR, colors, "");
      case GLOSS -> new WalkControl(Kind.GLOSS, List.of(), gloss());
      case SIZE -> new WalkControl(Kind.SIZE, List.of(), size(rule));
      case PART_NUMBER -> new WalkControl(Kind.STAMPED, List.of(), "the number as stamped");
      case DATE_CODE -> new WalkControl(Kind.STAMPED, List.of(), "the code as stamped or cast");
      case COUNT -> new WalkControl(Kind.PIECES, List.of(), "how many there are");
      case PRESENT -> yesNo("there", "not there");
      case WORKS -> yesNo("works", "does not work");
    };
  }

  private static WalkControl words(List<Choice> choices) {
    return new WalkControl(Kind.WORDS, choices, "");
  }

  private static WalkControl yesNo(String yes, String no) {
    return new WalkControl(
        Kind.YES_NO, List.of(new Choice("yes", yes, ""), new Choice("no", no, "")), "");
  }

  private static String gloss() {
    String bands =
        Arrays.stream(GlossBand.values()).map(GlossBand::spoken).collect(Collectors.joining(", "));
    return "gloss units at 60°, as in 41 ± 3, or a band by eye: " + bands;
  }

  /** Says what is measured by what the sources expect, without giving away what that is. */
  private static String size(AspectRule rule) {
    Set<String> kinds = new LinkedHashSet<>();
    rule.claims().stream()
        .flatMap(claim -> claim.values().stream())
        .forEach(
            value -> {
              if (value instanceof Expectation.Size size) {
                kinds.add(example(size.limits().dimension()));
              } else if (value instanceof Expectation.ScrewThread) {
                kinds.add("a thread, as in 1/4-20 UNC, 1/4 BSF, 2 BA or M6");
              }
            });
    return String.join("; or ", kinds);
  }

  private static String example(Dimension dimension) {
    return dimension.spoken()
        + ", as in "
        + switch (dimension) {
          case LENGTH -> "5/64 in, 2.38 mm ± 0.02 mm or 2.4 mm, to 0.1 mm";
          case MASS -> "12 oz, 5 lb or 340 g ± 5 g";
          case ANGLE -> "27° or 27° ± 1°";
          case VOLUME -> "1 imp pt, 12 US gal or 4.5 L";
          case PRESSURE -> "42 psi or 2.9 bar";
          case TORQUE -> "30 lbf ft or 40 N m";
          case POWER -> "6 W or 20 hp";
          case VOLTAGE -> "6.1 V";
          case CURRENT -> "8 A";
          case CHARGE -> "60 Ah";
          case SPEED -> "40 mph or 65 km/h";
        };
  }
}
