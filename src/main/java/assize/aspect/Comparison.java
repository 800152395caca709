package assize.aspect;

import assize.measure.Conformity;
import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What was found, held against what is expected.
 *
 * @param verdict meets, partly, departs, open or not shown
 * @param credit 0 to 1; of something not shown, 0
 * @param reason the values compared
 */
public record Comparison(Verdict verdict, BigFraction credit, Reason reason) {
  private static final Comparison UNLIKE =
      notAssessed(new Reason.Said("what was found can't be compared with what is expected"));

  /** Compares by a credit. */
  public static Comparison earns(BigFraction credit, Reason reason) {
    Verdict verdict =
        credit.signum() == 0
            ? Verdict.INCORRECT
            : credit.compareTo(BigFraction.ONE) >= 0 ? Verdict.CORRECT : Verdict.PARTLY_CORRECT;
    return new Comparison(verdict, credit, reason);
  }

  public static Comparison correct(Reason reason) {
    return earns(BigFraction.ONE, reason);
  }

  public static Comparison incorrect(Reason reason) {
    return earns(BigFraction.ZERO, reason);
  }

  public static Comparison notAssessed(Reason reason) {
    return new Comparison(Verdict.NOT_ASSESSED, BigFraction.ZERO, reason);
  }

  /** Only one kind of finding can be compared; the reader has refused the others. */
  static Comparison unlike() {
    return UNLIKE;
  }

  /** Judges by a probability of conformity (JCGM 106:2012, 7.4 and 8). */
  static Comparison probably(double probability, Reason reason) {
    if (Conformity.meets(probability)) {
      return correct(reason);
    }
    return Conformity.departs(probability)
        ? incorrect(reason)
        : new Comparison(Verdict.UNDECIDED, credit(probability), reason);
  }

  /** Returns a probability as a credit of four decimals, as it is printed. */
  private static BigFraction credit(double probability) {
    return BigFraction.of(
        BigInteger.valueOf(Conformity.tenThousandths(probability)), BigInteger.valueOf(10_000));
  }
}
