package assize.record;

import java.util.Arrays;
import java.util.Optional;

/** What a record can keep out of the copy for others. */
public enum Unshared {
  NOTES("notes"),
  JUDGED("judged"),
  PLANT("plant"),
  MARKET("market"),
  NOTE("note"),
  BY("by"),
  ON("on"),
  EVIDENCE("evidence"),
  WHY("why"),
  BECAUSE("because");

  private final String word;

  Unshared(String word) {
    this.word = word;
  }

  /** Returns the name that records use: that of the key which it keeps out. */
  public String word() {
    return word;
  }

  /** Returns what records call by this name. */
  public static Optional<Unshared> of(String word) {
    return Arrays.stream(values()).filter(one -> one.word.equals(word)).findFirst();
  }
}
