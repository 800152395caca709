package assize.merge;

import assize.edit.TextChange;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import assize.yaml.Node;
import assize.yaml.YamlTreeBuilder;
import assize.yaml.YamlValue;
import java.util.List;

/** A rule set with an item for each kind of aspect, and records by it. */
public final class Samples {
  static final String RULES_TEXT =
      """
      rule_set: small
      name: A small standard
      edition: "1"
      finishes:
        nickel: {name: nickel plate}
        chrome: {name: chromium plate}
      colors:
        works-green: {name: Works green}
        black: {name: Black}
      materials:
        ash: Ash
      conditions:
        sound: 1
      sources:
        parts-list-4: {kind: parts list, grade: A, title: List of parts}
      models:
        X1: {name: Dropside, production: 1932-03/1936-08}
      areas:
        cab:
          name: Cab
          items:
            horn-button:
              title: Horn button
              points: 2
              expect: {finish: nickel, part_number: A-41207, condition: graded}
              source: parts-list-4
            pinstripe:
              title: Pinstripe
              points: 2
              expect: {size: 3/32 in ± 1/64 in, color: works-green}
              source: parts-list-4
            rear-lamp:
              title: Rear lamp
              points: 2
              choices: {left: Left, right: Right}
              expect: {choice: left, present: yes, works: yes, count: 1}
              source: parts-list-4
            bed:
              title: Bed
              points: 2
              expect: {material: ash, gloss: satin, color: works-green}
              source: parts-list-4
      """;

  /** The rule set. */
  public static final RuleSet RULES = rules();

  private Samples() {}

  private static RuleSet rules() {
    var read = RuleSetReader.parse(List.of(new SourceFile("rules.yaml", RULES_TEXT)));
    return read.value().orElseThrow(() -> new AssertionError(read.diagnostics()));
  }

  /** Returns what a text says. */
  static YamlValue.Group content(String text) {
    Node root = YamlTreeBuilder.read(new SourceFile("record.yaml", text)).value().orElseThrow();
    return YamlValue.of(root).asGroup().orElseThrow();
  }

  static YamlValue.Group group(String... namesAndTexts) {
    YamlValue.Group group = new YamlValue.Group(List.of());
    for (int i = 0; i < namesAndTexts.length; i += 2) {
      group = with(group, List.of(namesAndTexts[i]), YamlValue.text(namesAndTexts[i + 1]));
    }
    return group;
  }

  /** Returns the same with one place changed. */
  static YamlValue.Group with(YamlValue.Group group, List<String> path, YamlValue value) {
    return TextChange.all(group, List.of(new TextChange(path, value)));
  }
}
