package assize.aspect;

import assize.diagnostic.Code;
import assize.schema.Names;

/** Every name that a rule set defines. */
public final class Vocabulary {
  private static final String OWNER = "this rule set";

  public final Names finishes;
  public final Names colors;
  public final Names materials;
  public final Names conditions;
  public final Names sources;
  public final Names models;
  public final Names plants;
  public final Names markets;
  public final Names equipment;
  public final Names numbers;
  public final Names areas;
  public final Names items;

  /** Begins with no names; where a file could not be read no name can be called unknown. */
  public Vocabulary(boolean complete) {
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
}
