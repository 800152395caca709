package assize.judge;

import assize.judge.ScoredItem.Bound;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.function.ToLongFunction;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Items of one area whose points hang together, and every way in which those that may apply can be
 * in or out. One item that may apply and shares its loss with no other makes a block of two ways.
 *
 * @param ways at least one; all equally probable
 */
record CauseGroup(List<Choice> ways) {
  /**
   * The most items that may apply in one block of which every combination is looked at; any further
   * one counts as applying.
   */
  static final int MOST_MAYBES = 12;

  /** What is spared because the area has lost all that it may lose. */
  static final String LIMIT = "";

  /**
   * One way.
   *
   * @param out items that may apply and are left out
   * @param creditedBack points that are not lost, by cause, the area's limit last
   */
  record Choice(long earned, long possible, List<String> out, Map<String, Long> creditedBack) {
    long lost() {
      return possible - earned;
    }
  }

  /** Returns the blocks of one area for one figure of the range. */
  static List<CauseGroup> of(ScoredArea lots, OptionalLong most, Bound bound) {
    LossTally plain = new LossTally(bound, lots);
    if (most.isPresent()) {
      return List.of(block(plain, lots.others(), most));
    }
    List<CauseGroup> blocks = new ArrayList<>();
    Map<String, List<ScoredItem>> byCause = new LinkedHashMap<>();
    for (ScoredItem lot : lots.others()) {
      if (lot.cause().isPresent()) {
        byCause.computeIfAbsent(lot.cause().get(), cause -> new ArrayList<>()).add(lot);
      } else {
        blocks.add(block(new LossTally(bound), List.of(lot), most));
      }
    }
    blocks.add(block(plain, List.of(), most));
    byCause.values().forEach(group -> blocks.add(block(new LossTally(bound), group, most)));
    return blocks;
  }

  /** Returns the ways of some items, besides what is lost whichever is taken. */
  private static CauseGroup block(LossTally plain, List<ScoredItem> lots, OptionalLong most) {
    List<ScoredItem> maybes = lots.stream().filter(ScoredItem::maybe).limit(MOST_MAYBES).toList();
    lots.stream().filter(lot -> !maybes.contains(lot)).forEach(plain::add);
    List<Choice> ways = new ArrayList<>();
    for (int in = 0; in < 1 << maybes.size(); in++) {
      LossTally losses = plain.copy();
      List<String> out = new ArrayList<>();
      for (int i = 0; i < maybes.size(); i++) {
        if ((in & (1 << i)) == 0) {
          out.add(maybes.get(i).item());
        } else {
          losses.add(maybes.get(i));
        }
      }
      ways.add(losses.way(most, out));
    }
    return new CauseGroup(ways);
  }

  /** Returns the mean of a figure over the ways. */
  BigFraction mean(ToLongFunction<Choice> figure) {
    long sum = ways.stream().mapToLong(figure).sum();
    return BigFraction.of(BigInteger.valueOf(sum), BigInteger.valueOf(ways.size()));
  }
}
