package assize.judge;

import assize.date.DateRange;
import assize.judge.PeriodSplitter.Cut;
import assize.judge.ScoreCalculator.StretchScore;
import assize.judge.ScoredItem.Bound;
import assize.judgment.ItemInPeriod;
import assize.judgment.ItemJudgment;
import assize.record.VehicleRecord;
import assize.ruleset.Area;
import assize.ruleset.Item;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Supplier;

/**
 * What items and areas came to in earlier judgments by one rule set, so that they need not be
 * judged again where nothing that they depend on has changed. The least recently used is forgotten
 * first. One thread at a time may ask.
 */
final class Recall {
  private static final int MOST_ITEMS = 16_384;
  private static final int MOST_SCORES = 1_024;

  private final Map<Key, ItemInPeriod> items = recent(MOST_ITEMS);
  private final Map<String, Over> overs = recent(MOST_ITEMS);
  private final Map<Part, List<CauseGroup>> blocks = recent(MOST_SCORES);
  private final Map<List<ScoredArea>, StretchScore> scores = recent(MOST_SCORES);
  private final Map<Item, List<String>> others = new IdentityHashMap<>();

  private final boolean keeps;

  private Recall(boolean keeps) {
    this.keeps = keeps;
  }

  /** Begins to remember. */
  static Recall of() {
    return new Recall(true);
  }

  /** Returns one that remembers nothing, for a vehicle that is judged once. */
  static Recall nothing() {
    return new Recall(false);
  }

  private static <K, V> Map<K, V> recent(int most) {
    return new LinkedHashMap<>(16, 0.75f, true) {
      @Override
      protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
        return size() > most;
      }
    };
  }

  /** One area's items as a score sees them. */
  private record Part(ScoredArea lots, OptionalLong most, Bound bound) {}

  /** An item over all stretches, and what that was made of. */
  private record Over(List<DateRange> days, List<ItemInPeriod> stretches, ItemJudgment item) {
    boolean isOf(List<Cut> cuts, List<ItemInPeriod> others) {
      boolean same = stretches.size() == others.size();
      for (int i = 0; same && i < others.size(); i++) {
        same = stretches.get(i) == others.get(i) && days.get(i).equals(cuts.get(i).days());
      }
      return same;
    }
  }

  /**
   * What an item's judgment depends on: the same conditions' answers, the very same observations
   * and traces, and what else of the vehicle it needs.
   *
   * @param same the same only if they are the very same objects
   */
  private record Key(List<Object> same, List<Object> equal) {
    @Override
    public boolean equals(Object other) {
      if (!(other instanceof Key that)
          || same.size() != that.same.size()
          || !equal.equals(that.equal)) {
        return false;
      }
      for (int i = 0; i < same.size(); i++) {
        if (same.get(i) != that.same.get(i)) {
          return false;
        }
      }
      return true;
    }

    @Override
    public int hashCode() {
      int hash = equal.hashCode();
      for (Object one : same) {
        hash = 31 * hash + System.identityHashCode(one);
      }
      return hash;
    }
  }

  /**
   * Returns an item within a stretch.
   *
   * @param days build days within which no date condition changes
   * @param build all possible build days
   */
  ItemInPeriod item(
      PreparedItem asked,
      VehicleRecord vehicle,
      DateRange days,
      DateRange build,
      Supplier<ItemInPeriod> judge) {
    if (!keeps) {
      return judge.get();
    }
    Key key = key(asked, vehicle, days, build);
    return Optional.ofNullable(items.get(key))
        .orElseGet(
            () -> {
              ItemInPeriod judged = judge.get();
              items.put(key, judged);
              return judged;
            });
  }

  private Key key(PreparedItem asked, VehicleRecord vehicle, DateRange days, DateRange build) {
    List<Object> same = new ArrayList<>();
    same.add(asked);
    same.add(vehicle.traces());
    same.add(observation(vehicle, asked.item().id()));
    others
        .computeIfAbsent(asked.item(), Recall::others)
        .forEach(other -> same.add(observation(vehicle, other)));
    List<Object> equal = new ArrayList<>();
    if (!asked.steady()) {
      equal.add(days);
      equal.add(build);
    }
    if (asked.matters().stream().anyMatch(ApplicableClaims.Unknown.class::isInstance)) {
      equal.add(vehicle.model());
      equal.add(vehicle.numbers());
      equal.add(vehicle.oneOf());
      equal.add(vehicle.built());
      equal.add(vehicle.plant());
      equal.add(vehicle.market());
      equal.add(vehicle.equipment());
    }
    return new Key(same, equal);
  }

  private static Object observation(VehicleRecord vehicle, String item) {
    Object seen = vehicle.observations().get(item);
    return seen == null ? "" : seen;
  }

  /** Returns the items whose findings are compared with those of one. */
  private static List<String> others(Item item) {
    return item.aspects().stream()
        .flatMap(rule -> rule.claims().stream())
        .flatMap(claim -> claim.values().stream())
        .flatMap(value -> value.other().stream())
        .distinct()
        .toList();
  }

  /** Returns an item over all stretches. */
  ItemJudgment over(
      String item, List<Cut> cuts, List<ItemInPeriod> stretches, Supplier<ItemJudgment> judge) {
    if (!keeps) {
      return judge.get();
    }
    return Optional.ofNullable(overs.get(item))
        .filter(it -> it.isOf(cuts, stretches))
        .map(Over::item)
        .orElseGet(
            () -> {
              ItemJudgment judged = judge.get();
              overs.put(item, new Over(cuts.stream().map(Cut::days).toList(), stretches, judged));
              return judged;
            });
  }

  /** Returns what hangs together among the items of an area. */
  List<CauseGroup> blocks(ScoredArea lots, Area area, Bound bound) {
    if (!keeps) {
      return CauseGroup.of(lots, area.maxLoss(), bound);
    }
    return blocks.computeIfAbsent(
        new Part(lots, area.maxLoss(), bound), key -> CauseGroup.of(lots, key.most(), bound));
  }

  /** Returns the score of a stretch. */
  StretchScore score(List<ScoredArea> lots, Supplier<StretchScore> score) {
    if (!keeps) {
      return score.get();
    }
    return Optional.ofNullable(scores.get(lots))
        .orElseGet(
            () -> {
              StretchScore scored = score.get();
              scores.put(lots, scored);
              return scored;
            });
  }
}
