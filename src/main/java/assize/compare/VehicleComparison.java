package assize.compare;

import assize.aspect.Verdict;
import assize.judgment.ItemJudgment;
import assize.judgment.Judgment;
import assize.judgment.ScoreRange;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What two editions come to for one vehicle.
 *
 * @param items those whose verdict or points differ, in the order of the newer edition
 */
public record VehicleComparison(Judgment before, Judgment after, List<ItemDifference> items) {
  public VehicleComparison {
    items = List.copyOf(items);
  }

  /**
   * One item that fares differently.
   *
   * @param before empty where the older edition has no such item
   * @param after empty where the newer has none
   * @param because the changes that bear on it
   */
  public record ItemDifference(
      Optional<ItemJudgment> before, Optional<ItemJudgment> after, List<Change> because) {
    public ItemDifference {
      because = List.copyOf(because);
    }

    /** Returns the item's name. */
    public String id() {
      return after.or(() -> before).orElseThrow().item().id();
    }

    /** Says whether it applies, or may apply, only by the newer edition. */
    public boolean newlyApplies() {
      return !applies(before) && applies(after);
    }

    /** Says whether it applied, or may have, only by the older edition. */
    public boolean noLongerApplies() {
      return applies(before) && !applies(after);
    }
  }

  private static boolean applies(Optional<ItemJudgment> one) {
    return one.filter(it -> it.verdict() != Verdict.NOT_APPLICABLE).isPresent();
  }

  /**
   * Compares two judgments of one vehicle.
   *
   * @param editions the two editions that it was judged by
   */
  public static VehicleComparison of(EditionComparison editions, Judgment before, Judgment after) {
    Map<String, ItemJudgment> olds = new LinkedHashMap<>();
    before.items().forEach(one -> olds.put(one.item().id(), one));
    Causes causes = new Causes(editions.altering(), before, after);
    List<ItemDifference> items = new ArrayList<>();
    for (ItemJudgment now : after.items()) {
      Optional<ItemJudgment> old = Optional.ofNullable(olds.remove(now.item().id()));
      if (old.map(it -> differs(it, now)).orElseGet(() -> applies(Optional.of(now)))) {
        items.add(new ItemDifference(old, Optional.of(now), causes.of(old, Optional.of(now))));
      }
    }
    for (ItemJudgment old : olds.values()) {
      if (applies(Optional.of(old))) {
        items.add(
            new ItemDifference(
                Optional.of(old), Optional.empty(), causes.of(Optional.of(old), Optional.empty())));
      }
    }
    return new VehicleComparison(before, after, items);
  }

  private static boolean differs(ItemJudgment old, ItemJudgment now) {
    ScoreRange was = old.earned();
    return old.verdict() != now.verdict()
        || !was.equals(now.earned())
        || old.possible() != now.possible();
  }

  /** Finds out what made items fare differently. */
  private record Causes(Map<String, List<Change>> altering, Judgment before, Judgment after) {
    List<Change> of(Optional<ItemJudgment> old, Optional<ItemJudgment> now) {
      List<ItemJudgment> both = Stream.of(old, now).flatMap(Optional::stream).toList();
      List<Change> bearing =
          altering.getOrDefault(now.or(() -> old).orElseThrow().item().id(), List.of());
      List<Change> likely = bearing.stream().filter(change -> counts(change, both)).toList();
      return likely.isEmpty() ? bearing : likely;
    }

    /** Says whether a change that bears on every item can have made this one fare differently. */
    private boolean counts(Change change, List<ItemJudgment> both) {
      return switch (change.effect()) {
        case NOT_ASSESSED -> both.stream().anyMatch(Causes::isNotShown);
        case DEPARTURES -> both.stream().anyMatch(this::isDeparture);
        case BUILD_DATES -> !before.build().days().equals(after.build().days());
        case NONE, ANY -> true;
      };
    }

    private static boolean isNotShown(ItemJudgment judged) {
      return judged.stretches().stream()
          .flatMap(stretch -> stretch.aspects().stream())
          .anyMatch(aspect -> aspect.verdict() == Verdict.NOT_ASSESSED);
    }

    private boolean isDeparture(ItemJudgment judged) {
      return Stream.of(before, after)
          .flatMap(it -> Stream.ofNullable(it.vehicle().observations().get(judged.item().id())))
          .anyMatch(observation -> observation.departure().isPresent());
    }
  }
}
