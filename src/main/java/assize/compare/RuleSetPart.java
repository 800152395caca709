package assize.compare;

/** What part of a rule set a change concerns. */
public enum RuleSetPart {
  STANDARD("standard"),
  SCORING("scoring"),
  AWARD("award"),
  MODEL("model"),
  PLANT("plant"),
  MARKET("market"),
  EQUIPMENT("equipment"),
  NUMBERS("number table"),
  SOURCE("source"),
  COLOR("color"),
  FINISH("finish"),
  MATERIAL("material"),
  ORIGIN("origin"),
  CONDITION("condition"),
  AREA("area"),
  ITEM("item");

  private final String word;

  RuleSetPart(String word) {
    this.word = word;
  }

  /** Returns the name that reports use. */
  public String word() {
    return word;
  }
}
