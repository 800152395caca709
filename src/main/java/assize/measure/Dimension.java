package assize.measure;

/** What kind of thing is measured; each has one base unit in which values are kept. */
public enum Dimension {
  /** Base unit: millimeter. */
  LENGTH("a length", true),
  /** Base unit: gram. */
  MASS("a mass", false),
  /** Base unit: degree. */
  ANGLE("an angle", true),
  /** Base unit: liter. */
  VOLUME("a volume", false),
  /** Base unit: pascal. */
  PRESSURE("a pressure", true),
  /** Base unit: newton meter. */
  TORQUE("a torque", false),
  /** Base unit: watt. */
  POWER("a power", false),
  /** Base unit: volt. */
  VOLTAGE("a voltage", true),
  /** Base unit: ampere. */
  CURRENT("a current", true),
  /** Base unit: ampere hour. */
  CHARGE("a battery's charge", false),
  /** Base unit: kilometer per hour. */
  SPEED("a speed", false);

  private final String spoken;
  private final boolean signed;

  Dimension(String spoken, boolean signed) {
    this.spoken = spoken;
    this.signed = signed;
  }

  /** Returns the word with its article: {@code a length}. */
  public String spoken() {
    return spoken;
  }

  /** Returns whether a value below zero makes sense: a toe-out, a negative camber, a vacuum. */
  public boolean signed() {
    return signed;
  }
}
