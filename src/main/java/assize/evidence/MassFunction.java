package assize.evidence;

import java.math.BigInteger;
import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.LongPredicate;

/**
 * A mass for each set of positions, not normalized: the empty set holds the conflict.
 *
 * @param numerators the mass of each set that has any, in parts of {@code whole}
 * @param whole the sum of all numerators, more than zero
 */
record MassFunction(SortedMap<Long, BigInteger> numerators, BigInteger whole) {
  private static final long EMPTY = 0;

  MassFunction {
    numerators = Collections.unmodifiableSortedMap(new TreeMap<>(numerators));
    BigInteger sum = numerators.values().stream().reduce(BigInteger.ZERO, BigInteger::add);
    if (!sum.equals(whole) || whole.signum() <= 0) {
      throw new IllegalArgumentException("masses add up to " + sum + ", not " + whole);
    }
  }

  /** Returns the masses of knowing nothing. */
  static MassFunction vacuous(long frame) {
    return new MassFunction(new TreeMap<>(Map.of(frame, BigInteger.ONE)), BigInteger.ONE);
  }

  /** Returns the masses that leave {@code doubt} on the frame and give the rest to one set. */
  static MassFunction simple(long set, long frame, BigInteger doubt, BigInteger whole) {
    SortedMap<Long, BigInteger> numerators = new TreeMap<>();
    numerators.put(set, whole.subtract(doubt));
    numerators.merge(frame, doubt, BigInteger::add);
    return new MassFunction(numerators, whole);
  }

  /** Combines two independent bodies of evidence by Dempster's rule, before normalizing. */
  MassFunction combine(MassFunction other) {
    SortedMap<Long, BigInteger> product = new TreeMap<>();
    numerators.forEach(
        (a, x) ->
            other.numerators.forEach(
                (b, y) -> product.merge(a & b, x.multiply(y), BigInteger::add)));
    return new MassFunction(product, whole.multiply(other.whole));
  }

  BigInteger conflict() {
    return of(EMPTY);
  }

  /** Returns what is left for the sets that are not empty, the divisor of Dempster's rule. */
  BigInteger agreement() {
    return whole.subtract(conflict());
  }

  BigInteger of(long set) {
    return numerators.getOrDefault(set, BigInteger.ZERO);
  }

  /** Returns the mass of all sets within this one, the empty set left out. */
  BigInteger belief(long set) {
    return sum(focal -> focal != EMPTY && (focal & ~set) == EMPTY);
  }

  /** Returns the mass of all sets that have something in common with this one. */
  BigInteger plausibility(long set) {
    return sum(focal -> (focal & set) != EMPTY);
  }

  private BigInteger sum(LongPredicate counts) {
    BigInteger sum = BigInteger.ZERO;
    for (Map.Entry<Long, BigInteger> entry : numerators.entrySet()) {
      if (counts.test(entry.getKey())) {
        sum = sum.add(entry.getValue());
      }
    }
    return sum;
  }
}
