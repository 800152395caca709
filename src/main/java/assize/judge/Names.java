package assize.judge;

import assize.aspect.Aspect;
import assize.aspect.Finding;
import assize.aspect.Origin;
import assize.ruleset.Finish;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** The rule set's names for its words. */
record Names(RuleSet rules) {
  String word(String item, Aspect aspect, String id) {
    if (id.equals(Finding.OTHER)) {
      return "something else";
    }
    return switch (aspect) {
      case FINISH -> Optional.ofNullable(rules.finishes().get(id)).map(Finish::name).orElse(id);
      case MATERIAL -> rules.materials().getOrDefault(id, id);
      case CHOICE ->
          rules
              .items()
              .filter(it -> it.id().equals(item))
              .flatMap(it -> Optional.ofNullable(it.choices().get(id)).stream())
              .findFirst()
              .orElse(id);
      default -> id;
    };
  }

  String color(String id) {
    return id.equals(Finding.OTHER)
        ? "none of the rule set's colors"
        : Optional.ofNullable(rules.colors().get(id)).map(chip -> chip.name()).orElse(id);
  }

  String item(String id) {
    return rules
        .items()
        .filter(item -> item.id().equals(id))
        .map(Item::title)
        .findFirst()
        .orElse(id);
  }

  /**
   * Returns the rule set's credit for an origin or a condition; a word it does not list earns 0.
   */
  BigFraction credit(Aspect aspect, String word) {
    Optional<BigFraction> credit =
        aspect == Aspect.ORIGIN
            ? Origin.of(word).map(origin -> rules.origins().get(origin))
            : Optional.ofNullable(rules.conditions().get(word));
    return credit.orElse(BigFraction.ZERO);
  }
}
