package assize.aspect;

import assize.diagnostic.DiagnosticCode;
import assize.schema.DefinedNames;

/** Every name that a rule set defines. */
public final class Vocabulary {
  private static final String OWNER = "this rule set";

  public final DefinedNames finishes;
  public final DefinedNames colors;
  public final DefinedNames materials;
  public final DefinedNames conditions;
  public final DefinedNames sources;
  public final DefinedNames models;
  public final DefinedNames plants;
  public final DefinedNames markets;
  public final DefinedNames equipment;
  public final DefinedNames numbers;
  public final DefinedNames areas;
  public final DefinedNames items;

  /** Begins with no names; where a file could not be read no name can be called unknown. */
  public Vocabulary(boolean complete) {
    finishes = new DefinedNames("finish", OWNER, DiagnosticCode.UNKNOWN_FINISH, complete);
    colors = new DefinedNames("color", OWNER, DiagnosticCode.UNKNOWN_COLOR, complete);
    materials = new DefinedNames("material", OWNER, DiagnosticCode.UNKNOWN_MATERIAL, complete);
    conditions = new DefinedNames("condition", OWNER, DiagnosticCode.UNKNOWN_CONDITION, complete);
    sources = new DefinedNames("source", OWNER, DiagnosticCode.UNKNOWN_SOURCE, complete);
    models = new DefinedNames("model", OWNER, DiagnosticCode.UNKNOWN_MODEL, complete);
    plants = new DefinedNames("plant", OWNER, DiagnosticCode.UNKNOWN_PLANT, complete);
    markets = new DefinedNames("market", OWNER, DiagnosticCode.UNKNOWN_MARKET, complete);
    equipment = new DefinedNames("equipment", OWNER, DiagnosticCode.UNKNOWN_EQUIPMENT, complete);
    numbers =
        new DefinedNames("number table", OWNER, DiagnosticCode.UNKNOWN_NUMBER_TABLE, complete);
    areas = new DefinedNames("area", OWNER, DiagnosticCode.UNKNOWN_AREA, complete);
    items = new DefinedNames("item", OWNER, DiagnosticCode.UNKNOWN_ITEM, complete);
  }
}
