package assize.evidence;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Independent testimonies combined by Dempster's rule (Shafer 1976, chapter 3), exact.
 *
 * <p>Masses are whole numbers over a common denominator of 1000 to the number of testimonies;
 * nothing is rounded until a figure is asked for.
 */
public final class Weighing {
  private static final BigInteger THOUSAND = BigInteger.valueOf(1000);

  private final int positions;
  private final TreeMap<Long, BigInteger> masses;
  private final BigInteger denominator;
  private final BigInteger conflict;

  private Weighing(
      int positions,
      TreeMap<Long, BigInteger> masses,
      BigInteger denominator,
      BigInteger conflict) {
    this.positions = positions;
    this.masses = masses;
    this.denominator = denominator;
    this.conflict = conflict;
  }

  /** A part of one, exact. */
  public record Share(BigInteger numerator, BigInteger denominator) {
    /** Returns the nearest double. */
    public double value() {
      return ratio(numerator, denominator);
    }
  }

  /**
   * Combines testimonies.
   *
   * @param positions how many positions are named, 0 to 62
   * @param testimonies in any order
   */
  public static Weighing of(int positions, List<Testimony> testimonies) {
    if (positions < 0 || positions > 62) {
      throw new IllegalArgumentException("positions: " + positions);
    }
    long frame = (1L << (positions + 1)) - 1;
    Map<Long, BigInteger> masses = new HashMap<>();
    masses.put(frame, BigInteger.ONE);
    for (Testimony testimony : testimonies) {
      BigInteger weight = BigInteger.valueOf(testimony.weightThousandths());
      BigInteger rest = THOUSAND.subtract(weight);
      Map<Long, BigInteger> next = new HashMap<>();
      masses.forEach(
          (set, mass) -> {
            next.merge(set & testimony.stands(), mass.multiply(weight), BigInteger::add);
            next.merge(set, mass.multiply(rest), BigInteger::add);
          });
      masses = next;
    }
    TreeMap<Long, BigInteger> sorted = new TreeMap<>(masses);
    BigInteger conflict = sorted.containsKey(0L) ? sorted.remove(0L) : BigInteger.ZERO;
    return new Weighing(positions, sorted, THOUSAND.pow(testimonies.size()), conflict);
  }

  /** Returns the mass K that contradicts itself, before it is divided away. */
  public double conflict() {
    return ratio(conflict, denominator);
  }

  /** Returns the mass that is certain to be for one position, 0 to 1. */
  public double belief(int position) {
    return ratio(beliefMass(position), whole());
  }

  /** Returns the mass that is not against one position, 0 to 1. */
  public double plausibility(int position) {
    return ratio(plausibilityMass(position), whole());
  }

  /** Says whether the belief reaches a threshold, in thousandths. */
  public boolean beliefAtLeast(int position, int thousandths) {
    return atLeast(beliefMass(position), thousandths);
  }

  /** Says whether the plausibility reaches a threshold, in thousandths. */
  public boolean plausibilityAtLeast(int position, int thousandths) {
    return atLeast(plausibilityMass(position), thousandths);
  }

  private boolean atLeast(BigInteger mass, int thousandths) {
    return mass.multiply(THOUSAND).compareTo(whole().multiply(BigInteger.valueOf(thousandths)))
        >= 0;
  }

  /** Returns the mass that is left to every position and to what nobody mentions. */
  public double unassigned() {
    long frame = (1L << (positions + 1)) - 1;
    return ratio(masses.getOrDefault(frame, BigInteger.ZERO), whole());
  }

  /** Returns the mass of each set of positions that has any, sets in rising order of their bits. */
  public Map<Long, Double> masses() {
    Map<Long, Double> found = new TreeMap<>();
    masses.forEach((set, mass) -> found.put(set, ratio(mass, whole())));
    return found;
  }

  /**
   * Returns the pignistic probabilities (Smets 1990) of the positions in {@code live}, scaled so
   * that they add up to one; of the others, zero. Each set's mass is shared equally among its
   * members.
   *
   * @return one for each named position
   */
  public List<Share> shares(long live) {
    long named = live & ((1L << positions) - 1);
    BigInteger unit = BigInteger.ONE;
    for (int size = 2; size <= positions + 1; size++) {
      BigInteger one = BigInteger.valueOf(size);
      unit = unit.divide(unit.gcd(one)).multiply(one);
    }
    BigInteger[] parts = new BigInteger[positions];
    BigInteger sum = BigInteger.ZERO;
    for (int i = 0; i < positions; i++) {
      parts[i] = BigInteger.ZERO;
      if ((named & (1L << i)) == 0) {
        continue;
      }
      for (Map.Entry<Long, BigInteger> set : masses.entrySet()) {
        if ((set.getKey() & (1L << i)) != 0) {
          BigInteger size = BigInteger.valueOf(Long.bitCount(set.getKey()));
          parts[i] = parts[i].add(set.getValue().multiply(unit).divide(size));
        }
      }
      sum = sum.add(parts[i]);
    }
    List<Share> shares = new ArrayList<>();
    for (BigInteger part : parts) {
      shares.add(
          sum.signum() == 0 ? new Share(BigInteger.ZERO, BigInteger.ONE) : new Share(part, sum));
    }
    return shares;
  }

  private BigInteger beliefMass(int position) {
    return masses.getOrDefault(1L << position, BigInteger.ZERO);
  }

  private BigInteger plausibilityMass(int position) {
    return masses.entrySet().stream()
        .filter(set -> (set.getKey() & (1L << position)) != 0)
        .map(Map.Entry::getValue)
        .reduce(BigInteger.ZERO, BigInteger::add);
  }

  private BigInteger whole() {
    return denominator.subtract(conflict);
  }

  private static double ratio(BigInteger numerator, BigInteger denominator) {
    return new BigDecimal(numerator)
        .divide(new BigDecimal(denominator), MathContext.DECIMAL64)
        .doubleValue();
  }
}
