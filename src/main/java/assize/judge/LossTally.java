package assize.judge;

import assize.judge.CauseGroup.Choice;
import assize.judge.ScoredItem.Bound;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;

/** Points lost, added up item by item: a cause counts once, by the dearest of its items. */
final class LossTally {
  private final Bound bound;
  private final Map<String, Long> dearest = new LinkedHashMap<>();
  private final Map<String, Long> spared = new LinkedHashMap<>();
  private long possible;
  private long lost;

  LossTally(Bound bound) {
    this.bound = bound;
  }

  /** Begins with what is already added up. */
  LossTally(Bound bound, ScoredArea lots) {
    this(bound);
    possible = lots.possible();
    lost = lots.lost(bound);
  }

  LossTally copy() {
    LossTally copy = new LossTally(bound);
    copy.dearest.putAll(dearest);
    copy.spared.putAll(spared);
    copy.possible = possible;
    copy.lost = lost;
    return copy;
  }

  void add(ScoredItem lot) {
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
  Choice way(OptionalLong most, List<String> out) {
    Map<String, Long> all = new LinkedHashMap<>(spared);
    long counted = lost;
    if (most.isPresent() && lost > most.getAsLong()) {
      all.put(CauseGroup.LIMIT, lost - most.getAsLong());
      counted = most.getAsLong();
    }
    return new Choice(possible - counted, possible, out, all);
  }
}
