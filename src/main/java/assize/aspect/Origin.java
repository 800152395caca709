package assize.aspect;

import java.util.Arrays;
import java.util.Optional;

/** Where a part came from. */
public enum Origin {
  ORIGINAL("original"),
  CORRECT_DONOR_PART("correct donor part"),
  NEW_OLD_STOCK("new old stock"),
  PERIOD_SERVICE_PART("period service part"),
  REPRODUCTION("reproduction"),
  FABRICATED("fabricated"),
  MODERN_SUBSTITUTE("modern substitute"),
  UNKNOWN("unknown");

  private final String word;

  Origin(String word) {
    this.word = word;
  }

  /** Returns the name that rule sets and records use. */
  public String word() {
    return word;
  }

  /** Returns the origin of that name. */
  public static Optional<Origin> of(String word) {
    return Arrays.stream(values()).filter(origin -> origin.word.equals(word)).findFirst();
  }
}
