package assize.ruleset;

import assize.evidence.Grade;
import java.util.Map;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How points become a score.
 *
 * @param outOf the full score, in thousandths of a point
 * @param notShown the likely credit of what was not shown, 0 to 1
 * @param settledAt the belief at which a dispute counts as settled, in thousandths
 * @param grades the weight of a source of each grade, in thousandths, 1 to 990
 * @param tooEarly the credit of a part that was made earlier than its window, 0 to 1
 * @param allow reasons for a departure, and the credit that each keeps, 0 to 1
 */
public record Scale(
    Method method,
    long outOf,
    BigFraction notShown,
    int settledAt,
    Map<Grade, Integer> grades,
    BigFraction tooEarly,
    Map<String, BigFraction> allow) {
  /** The plausibility, in thousandths, below which a position is no longer judged. */
  public static final int LIVE_AT = 100;

  public Scale {
    grades = Map.copyOf(grades);
    allow = Map.copyOf(allow);
  }

  /** How areas and items add up. */
  public enum Method {
    /** Points earned over points possible (XCCDF's flat model). */
    SUM("sum"),
    /** Each area's own share, weighed by its points (XCCDF's default model on two levels). */
    AREAS("areas"),
    /** Points lost are taken from the full score, never below zero. */
    DEDUCTIONS("deductions");

    private final String word;

    Method(String word) {
      this.word = word;
    }

    /** Returns the name that rule sets use. */
    public String word() {
      return word;
    }
  }

  /** Returns the scale of a rule set that says nothing of it. */
  public static Scale usual() {
    return new Scale(
        Method.SUM,
        100_000,
        BigFraction.ZERO,
        900,
        Map.of(Grade.A, 900, Grade.B, 700, Grade.C, 500, Grade.D, 300),
        BigFraction.of(1, 2),
        Map.of());
  }
}
