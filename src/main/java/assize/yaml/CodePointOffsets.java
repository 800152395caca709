package assize.yaml;

import assize.text.Ascii;

/** Turns places counted in code points, as the YAML library counts, into UTF-16 units. */
public final class CodePointOffsets {
  private final String text;
  private final boolean same;
  private int lastPoint;
  private int lastUnit;

  public CodePointOffsets(String text) {
    this.text = text;
    this.same = !hasPairs(text);
  }

  private static boolean hasPairs(String text) {
    return Ascii.hasBesides(text, Character::isSupplementaryCodePoint);
  }

  /** Returns the unit at which a code point begins; quick where places are asked for in order. */
  public int unit(long point) {
    int wanted = (int) Math.max(0, point);
    if (same) {
      return Math.min(wanted, text.length());
    }
    while (lastPoint < wanted && lastUnit < text.length()) {
      lastUnit += Character.charCount(text.codePointAt(lastUnit));
      lastPoint++;
    }
    while (lastPoint > wanted && lastUnit > 0) {
      lastUnit -= Character.charCount(text.codePointBefore(lastUnit));
      lastPoint--;
    }
    return lastUnit;
  }
}
