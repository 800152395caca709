package assize.ruleset;

import assize.aspect.Vocabulary;
import java.util.Optional;

/** The names that a rule set defines. */
public final class Vocabularies {
  private Vocabularies() {}

  /** Returns the names of a rule set that was read. */
  public static Vocabulary of(RuleSet rules) {
    Vocabulary names = new Vocabulary(true);
    names.finishes.define(rules.finishes().keySet());
    names.colors.define(rules.colors().keySet());
    names.materials.define(rules.materials().keySet());
    names.conditions.define(rules.conditions().keySet());
    rules.sources().values().forEach(it -> names.sources.define(it.id(), Optional.of(it.at())));
    names.models.define(rules.models().keySet());
    names.plants.define(rules.plants().keySet());
    names.markets.define(rules.markets().keySet());
    names.equipment.define(rules.equipment().keySet());
    names.numbers.define(rules.numberTables().keySet());
    rules.areas().forEach(it -> names.areas.define(it.id(), Optional.of(it.at())));
    rules.items().forEach(it -> names.items.define(it.id(), Optional.of(it.at())));
    return names;
  }
}
