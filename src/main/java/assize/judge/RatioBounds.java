package assize.judge;

import assize.judge.CauseGroup.Choice;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The least or greatest ratio of points earned to points possible over every choice of a way from
 * each block, exact.
 *
 * <p>Source: W. Dinkelbach, On nonlinear fractional programming, Management Science 13 (1967): the
 * ratio is the least where the least of earned − ratio × possible is zero; each round solves that
 * block by block. Where every item that may apply stands alone this is the choice by sorted ratios.
 */
final class RatioBounds {
  private final int sign;

  private RatioBounds(int sign) {
    this.sign = sign;
  }

  /** Returns the choice with the least ratio; empty where nothing can count. */
  static Optional<List<Choice>> least(List<CauseGroup> blocks) {
    return new RatioBounds(1).best(blocks);
  }

  /** Returns the choice with the greatest ratio; empty where nothing can count. */
  static Optional<List<Choice>> greatest(List<CauseGroup> blocks) {
    return new RatioBounds(-1).best(blocks);
  }

  private Optional<List<Choice>> best(List<CauseGroup> blocks) {
    List<Choice> chosen = new ArrayList<>();
    for (CauseGroup block : blocks) {
      chosen.add(fullest(block));
    }
    if (possible(chosen) == 0) {
      return Optional.empty();
    }
    while (true) {
      long earned = earned(chosen);
      long possible = possible(chosen);
      List<Choice> next = new ArrayList<>();
      BigInteger sum = BigInteger.ZERO;
      for (CauseGroup block : blocks) {
        Choice way = extreme(block, earned, possible);
        next.add(way);
        sum = sum.add(excess(way, earned, possible));
      }
      if (sum.signum() * sign >= 0) {
        return Optional.of(chosen);
      }
      chosen = next;
    }
  }

  private static Choice fullest(CauseGroup block) {
    Choice fullest = block.ways().get(0);
    for (Choice way : block.ways()) {
      if (way.possible() > fullest.possible()) {
        fullest = way;
      }
    }
    return fullest;
  }

  private Choice extreme(CauseGroup block, long earned, long possible) {
    Choice extreme = block.ways().get(0);
    BigInteger best = excess(extreme, earned, possible);
    for (Choice way : block.ways()) {
      BigInteger excess = excess(way, earned, possible);
      if (excess.compareTo(best) * sign < 0) {
        extreme = way;
        best = excess;
      }
    }
    return extreme;
  }

  /** Returns (earned of the way) − ratio × (possible of the way), times the ratio's denominator. */
  private static BigInteger excess(Choice way, long earned, long possible) {
    return BigInteger.valueOf(way.earned())
        .multiply(BigInteger.valueOf(possible))
        .subtract(BigInteger.valueOf(way.possible()).multiply(BigInteger.valueOf(earned)));
  }

  static long earned(List<Choice> ways) {
    return ways.stream().mapToLong(Choice::earned).sum();
  }

  static long possible(List<Choice> ways) {
    return ways.stream().mapToLong(Choice::possible).sum();
  }
}
