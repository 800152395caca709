package assize.judge;

import assize.judge.CauseGroup.Way;
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
  static Optional<List<Way>> least(List<CauseGroup> blocks) {
    return new RatioBounds(1).best(blocks);
  }

  /** Returns the choice with the greatest ratio; empty where nothing can count. */
  static Optional<List<Way>> greatest(List<CauseGroup> blocks) {
    return new RatioBounds(-1).best(blocks);
  }

  private Optional<List<Way>> best(List<CauseGroup> blocks) {
    List<Way> chosen = new ArrayList<>();
    for (CauseGroup block : blocks) {
      chosen.add(fullest(block));
    }
    if (possible(chosen) == 0) {
      return Optional.empty();
    }
    while (true) {
      long earned = earned(chosen);
      long possible = possible(chosen);
      List<Way> next = new ArrayList<>();
      BigInteger sum = BigInteger.ZERO;
      for (CauseGroup block : blocks) {
        Way way = extreme(block, earned, possible);
        next.add(way);
        sum = sum.add(excess(way, earned, possible));
      }
      if (sum.signum() * sign >= 0) {
        return Optional.of(chosen);
      }
      chosen = next;
    }
  }

  private static Way fullest(CauseGroup block) {
    Way fullest = block.ways().get(0);
    for (Way way : block.ways()) {
      if (way.possible() > fullest.possible()) {
        fullest = way;
      }
    }
    return fullest;
  }

  private Way extreme(CauseGroup block, long earned, long possible) {
    Way extreme = block.ways().get(0);
    BigInteger best = excess(extreme, earned, possible);
    for (Way way : block.ways()) {
      BigInteger excess = excess(way, earned, possible);
      if (excess.compareTo(best) * sign < 0) {
        extreme = way;
        best = excess;
      }
    }
    return extreme;
  }

  /** Returns (earned of the way) − ratio × (possible of the way), times the ratio's denominator. */
  private static BigInteger excess(Way way, long earned, long possible) {
    return BigInteger.valueOf(way.earned())
        .multiply(BigInteger.valueOf(possible))
        .subtract(BigInteger.valueOf(way.possible()).multiply(BigInteger.valueOf(earned)));
  }

  static long earned(List<Way> ways) {
    return ways.stream().mapToLong(Way::earned).sum();
  }

  static long possible(List<Way> ways) {
    return ways.stream().mapToLong(Way::possible).sum();
  }
}
