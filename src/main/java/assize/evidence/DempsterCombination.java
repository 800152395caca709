package assize.evidence;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The evidence of all independent sources on one aspect, weighed together.
 *
 * <p>The sources are combined by Dempster's rule (Shafer, A Mathematical Theory of Evidence, 1976,
 * chapter 3), exactly; nothing is rounded until a figure is asked for. The order of the sources
 * never matters.
 */
public final class DempsterCombination {
  /** The most positions that can be named for one aspect. */
  public static final int MOST_POSITIONS = 62;

  /** The most sets of positions that can hold mass of their own; beyond it weighing is refused. */
  public static final int MOST_SETS = 4096;

  private static final BigInteger THOUSAND = BigInteger.valueOf(1000);

  private final int positions;
  private final MassFunction masses;

  private DempsterCombination(int positions, MassFunction masses) {
    this.positions = positions;
    this.masses = masses;
  }

  /**
   * An exact part of one, in lowest terms.
   *
   * @param numerator zero to the denominator
   * @param denominator more than zero
   */
  public record Share(BigInteger numerator, BigInteger denominator) {
    public Share {
      BigInteger common = numerator.gcd(denominator);
      numerator = numerator.divide(common);
      denominator = denominator.divide(common);
    }

    /** Returns the nearest double. */
    public double value() {
      return ratio(numerator, denominator);
    }
  }

  /**
   * Weighs the testimonies.
   *
   * @param positions how many positions are named, 0 to {@value #MOST_POSITIONS}
   * @param testimonies one for each independent source; none is no evidence at all
   * @throws IllegalArgumentException if a testimony speaks of a position beyond those, or if {@link
   *     #tooTangled} says that there is too much to weigh
   */
  public static DempsterCombination of(int positions, List<SimpleSupport> testimonies) {
    if (tooTangled(positions, testimonies)) {
      throw new IllegalArgumentException("more than " + MOST_SETS + " sets of positions");
    }
    long frame = frame(positions);
    SortedMap<Long, BigInteger> doubts = new TreeMap<>();
    SortedMap<Long, BigInteger> wholes = new TreeMap<>();
    for (SimpleSupport testimony : testimonies) {
      BigInteger doubt = BigInteger.valueOf(1000 - testimony.weightThousandths());
      doubts.merge(testimony.compatiblePositions(), doubt, BigInteger::multiply);
      wholes.merge(testimony.compatiblePositions(), THOUSAND, BigInteger::multiply);
    }
    MassFunction masses = MassFunction.vacuous(frame);
    for (Map.Entry<Long, BigInteger> entry : doubts.entrySet()) {
      long stands = entry.getKey();
      BigInteger whole = wholes.getOrDefault(stands, BigInteger.ONE);
      masses = masses.combine(MassFunction.simple(stands, frame, entry.getValue(), whole));
    }
    return new DempsterCombination(positions, masses);
  }

  /** Returns whether the sources overlap in so many ways that they are not weighed. */
  public static boolean tooTangled(int positions, List<SimpleSupport> testimonies) {
    long frame = frame(positions);
    NavigableSet<Long> distinct = new TreeSet<>();
    for (SimpleSupport testimony : testimonies) {
      if ((testimony.compatiblePositions() & ~frame) != 0) {
        throw new IllegalArgumentException("no such position: " + testimony);
      }
      distinct.add(testimony.compatiblePositions());
    }
    NavigableSet<Long> sets = new TreeSet<>(List.of(frame));
    for (long stands : distinct) {
      for (long set : List.copyOf(sets)) {
        sets.add(set & stands);
      }
      if (sets.size() > MOST_SETS) {
        return true;
      }
    }
    return false;
  }

  static long frame(int positions) {
    if (positions < 0 || positions > MOST_POSITIONS) {
      throw new IllegalArgumentException("named positions: " + positions);
    }
    return (1L << (positions + 1)) - 1;
  }

  /** Returns how many positions are named; what nobody mentions is one more. */
  public int positions() {
    return positions;
  }

  /** Returns Dempster's K, zero to less than one: how much of the evidence contradicts itself. */
  public double conflict() {
    return ratio(masses.conflict(), masses.whole());
  }

  /** Returns how much of the evidence says that just this position is right, zero to one. */
  public double belief(int position) {
    return normalized(masses.belief(bit(position)));
  }

  /** Returns how much of the evidence does not speak against this position, zero to one. */
  public double plausibility(int position) {
    return normalized(masses.plausibility(bit(position)));
  }

  /** Returns whether the belief in this position reaches so many thousandths, exactly. */
  public boolean beliefAtLeast(int position, int thousandths) {
    return reaches(masses.belief(bit(position)), thousandths);
  }

  /** Returns whether the plausibility of this position reaches so many thousandths, exactly. */
  public boolean plausibilityAtLeast(int position, int thousandths) {
    return reaches(masses.plausibility(bit(position)), thousandths);
  }

  /** Returns the mass that stays with all positions together, for want of evidence. */
  public double unassigned() {
    return normalized(masses.of(frame(positions)));
  }

  /** Returns the mass of each set of positions that has any, sets in rising order of their bits. */
  public Map<Long, Double> masses() {
    SortedMap<Long, Double> found = new TreeMap<>();
    masses.numerators().forEach((set, mass) -> found.put(set, normalized(mass)));
    found.remove(0L);
    return Collections.unmodifiableMap(found);
  }

  /**
   * Returns how likely each named position is among the live ones; they add up to one exactly.
   *
   * <p>The mass of a set is shared equally among all its members (the pignistic probability, Smets
   * and Kennes, The Transferable Belief Model, 1994); what falls to positions that are not live,
   * and to what nobody mentions, is then left out and the rest scaled to one.
   *
   * @param live bit {@code i} for position {@code i}; other bits do not count
   * @return a share for each named position, zero for one that is not live
   */
  public List<Share> shares(long live) {
    BigInteger common = BigInteger.ONE;
    for (long set : masses.numerators().keySet()) {
      BigInteger size = BigInteger.valueOf(Math.max(1, Long.bitCount(set)));
      common = common.multiply(size.divide(common.gcd(size)));
    }
    List<BigInteger> bets = new ArrayList<>();
    BigInteger sum = BigInteger.ZERO;
    for (int position = 0; position < positions; position++) {
      BigInteger bet = (live & bit(position)) == 0 ? BigInteger.ZERO : bet(bit(position), common);
      bets.add(bet);
      sum = sum.add(bet);
    }
    List<Share> shares = new ArrayList<>();
    for (BigInteger bet : bets) {
      // Without a live position there is nothing to scale: all are zero.
      shares.add(new Share(bet, sum.max(BigInteger.ONE)));
    }
    return List.copyOf(shares);
  }

  private BigInteger bet(long bit, BigInteger common) {
    BigInteger bet = BigInteger.ZERO;
    for (Map.Entry<Long, BigInteger> entry : masses.numerators().entrySet()) {
      if ((entry.getKey() & bit) != 0) {
        BigInteger size = BigInteger.valueOf(Long.bitCount(entry.getKey()));
        bet = bet.add(entry.getValue().multiply(common.divide(size)));
      }
    }
    return bet;
  }

  MassFunction exact() {
    return masses;
  }

  private long bit(int position) {
    if (position < 0 || position > positions) {
      throw new IllegalArgumentException("no such position: " + position);
    }
    return 1L << position;
  }

  private double normalized(BigInteger mass) {
    return ratio(mass, masses.agreement());
  }

  private boolean reaches(BigInteger mass, int thousandths) {
    BigInteger least = masses.agreement().multiply(BigInteger.valueOf(thousandths));
    return mass.multiply(THOUSAND).compareTo(least) >= 0;
  }

  private static double ratio(BigInteger numerator, BigInteger denominator) {
    return new BigDecimal(numerator)
        .divide(new BigDecimal(denominator), MathContext.DECIMAL128)
        .doubleValue();
  }
}
