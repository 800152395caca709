package assize.aspect;

import java.util.Arrays;
import java.util.Optional;

/** Where a part came from. */
public enum Origin {
  ORIGINAL("original"),
  RIGHT_FROM_ANOTHER("correct donor part"),
  OLD_STOCK("new old stock"),
  PERIOD_SERVICE_PART("period service part"),
  REPRODUCTION("reproduction"),
  MADE_FOR_IT("fabricated"),
  MODERN_SUBSTITUTE("modern substitute"),
  NOT_KNOWN("unknown");

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
