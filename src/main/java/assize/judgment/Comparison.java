package assize.judgment;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What was found, held against what is expected.
 *
 * @param verdict meets, partly, departs, open or not shown
 * @param credit 0 to 1; of something not shown, 0
 * @param why the values compared, in words
 */
public record Comparison(Verdict verdict, BigFraction credit, Why why) {

  /** The values compared; worded only when somebody reads it. */
  @FunctionalInterface
  public interface Why {
    /** Returns one sentence without its full stop. */
    String words();
  }
}
