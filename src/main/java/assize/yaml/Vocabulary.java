package assize.yaml;

import assize.diagnostic.Code;
import assize.ruleset.RuleSet;
import java.util.Optional;

/** Every name that a rule set defines. */
final class Vocabulary {
  private static final String OWNER = "this rule set";

  final Names finishes;
  final Names colors;
  final Names materials;
  final Names conditions;
  final Names sources;
  final Names models;
  final Names plants;
  final Names markets;
  final Names equipment;
  final Names numbers;
  final Names areas;
  final Names items;

  /** Begins with no names; where a file could not be read no name can be called unknown. */
  Vocabulary(boolean complete) {
    finishes = new Names("finish", OWNER, Code.UNKNOWN_FINISH, complete);
    colors = new Names("color", OWNER, Code.UNKNOWN_COLOR, complete);
    materials = new Names("material", OWNER, Code.UNKNOWN_MATERIAL, complete);
    conditions = new Names("condition", OWNER, Code.UNKNOWN_CONDITION, complete);
    sources = new Names("source", OWNER, Code.UNKNOWN_SOURCE, complete);
    models = new Names("model", OWNER, Code.UNKNOWN_MODEL, complete);
    plants = new Names("plant", OWNER, Code.UNKNOWN_PLANT, complete);
    markets = new Names("market", OWNER, Code.UNKNOWN_MARKET, complete);
    equipment = new Names("equipment", OWNER, Code.UNKNOWN_EQUIPMENT, complete);
    numbers = new Names("number table", OWNER, Code.UNKNOWN_NUMBER_TABLE, complete);
    areas = new Names("area", OWNER, Code.UNKNOWN_AREA, complete);
    items = new Names("item", OWNER, Code.UNKNOWN_ITEM, complete);
  }

  /** Returns the names of a rule set that was read. */
  static Vocabulary of(RuleSet rules) {
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
    names.numbers.define(rules.numbers().keySet());
    rules.areas().forEach(it -> names.areas.define(it.id(), Optional.of(it.at())));
    rules.items().forEach(it -> names.items.define(it.id(), Optional.of(it.at())));
    return names;
  }
}
