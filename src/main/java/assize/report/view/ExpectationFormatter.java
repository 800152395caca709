package assize.report.view;

import assize.aspect.Aspect;
import assize.aspect.Colors;
import assize.aspect.Expectation;
import assize.aspect.Place;
import assize.measure.Swatch;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** What is expected, in the rule set's own words. */
public final class ExpectationFormatter {
  private final RuleSet rules;

  public ExpectationFormatter(RuleSet rules) {
    this.rules = rules;
  }

  /** Returns several values, each of which is right. */
  public String any(Item item, Aspect aspect, List<Expectation> values) {
    return values.stream()
        .map(value -> one(item, aspect, value))
        .collect(Collectors.joining(" or "));
  }

  /** Returns one value, and its credit where that is not the whole. */
  public String one(Item item, Aspect aspect, Expectation value) {
    String words = value.words(new Place(rules, item.id(), aspect));
    return value.credit().equals(BigFraction.ONE)
        ? words
        : words + " (earns " + NumberFormatter.number(value.credit()) + ")";
  }

  /** Returns what a word of the rule set means. */
  String word(Item item, Aspect aspect, String id) {
    return aspect.kind().meanings(new Place(rules, item.id(), aspect)).getOrDefault(id, id);
  }

  /** Returns the colors among some values, as a screen can show them. */
  public List<String> swatches(List<Expectation> values) {
    return rules.colors().values().stream()
        .filter(
            color ->
                values.stream()
                    .anyMatch(
                        value ->
                            value instanceof Colors.Chip chip && chip.chip().equals(color.id())))
        .flatMap(color -> color.lab().stream())
        .map(lab -> Swatch.of(lab).hex())
        .toList();
  }
}
