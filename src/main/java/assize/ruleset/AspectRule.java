package assize.ruleset;

import assize.aspect.Aspect;
import assize.evidence.Claim;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What is held of one aspect of an item.
 *
 * @param possible its part of the item's points, in thousandths
 * @param claims what sources say, in the order written; at least one
 */
public record AspectRule(Aspect aspect, long possible, List<Claim> claims) {
  public AspectRule {
    claims = List.copyOf(claims);
  }

  /**
   * Shares an item's points among its aspects in whole thousandths that add up exactly: each part
   * is the difference of two running sums, rounded half-even.
   *
   * @param points in thousandths
   * @param worth the weight of each aspect, at least one above zero
   */
  public static List<Long> share(long points, List<BigFraction> worth) {
    if (worth.size() == 1) {
      return List.of(points);
    }
    BigFraction total = worth.stream().reduce(BigFraction.ZERO, BigFraction::add);
    List<Long> parts = new ArrayList<>();
    BigFraction sum = BigFraction.ZERO;
    long given = 0;
    for (BigFraction one : worth) {
      sum = sum.add(one);
      long upTo = roundHalfEven(sum.divide(total).multiply(BigInteger.valueOf(points)));
      parts.add(upTo - given);
      given = upTo;
    }
    return parts;
  }

  private static long roundHalfEven(BigFraction exact) {
    return exact.bigDecimalValue(0, java.math.RoundingMode.HALF_EVEN).longValueExact();
  }
}
