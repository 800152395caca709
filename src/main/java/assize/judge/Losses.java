package assize.judge;

import assize.judge.Block.Way;
import assize.judge.Lot.Bound;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;

/** Points lost, added up item by item: a cause counts once, by the dearest of its items. */
final class Losses {
  private final Bound bound;
  private final Map<String, Long> dearest = new LinkedHashMap<>();
  private final Map<String, Long> spared = new LinkedHashMap<>();
  private long possible;
  private long lost;

  Losses(Bound bound) {
    this.bound = bound;
  }

  /** Begins with what is already added up. */
  Losses(Bound bound, Lots lots) {
    this(bound);
    possible = lots.possible();
    lost = lots.lost(bound);
  }

  Losses copy() {
    Losses copy = new Losses(bound);
    copy.dearest.putAll(dearest);
    copy.spared.putAll(spared);
    copy.possible = possible;
    copy.lost = lost;
    return copy;
  }

  void add(Lot lot) {
    possible += lot.possible();
    long one = lot.lost(bound);
    if (lot.cause().isEmpty()) {
      lost += one;
      return;
    }
    String cause = lot.cause().get();
    long before = dearest.getOrDefault(cause, 0L);
    dearest.put(cause, Math.max(before, one));
    lost += Math.max(before, one) - before;
    spared.merge(cause, Math.min(before, one), Long::sum);
  }

  /** Returns what it comes to, never more than the limit lost. */
  Way way(OptionalLong most, List<String> out) {
    Map<String, Long> all = new LinkedHashMap<>(spared);
    long counted = lost;
    if (most.isPresent() && lost > most.getAsLong()) {
      all.put(Block.LIMIT, lost - most.getAsLong());
      counted = most.getAsLong();
    }
    return new Way(possible - counted, possible, out, all);
  }
}
