package assize.compare;

import assize.aspect.ColorChip;
import assize.aspect.Finish;
import assize.evidence.Source;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import assize.ruleset.Model;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * A name that only the older edition has, and one that only the newer has, which are so alike that
 * perhaps one became the other. It is never taken for granted: both stay as they are.
 *
 * @param likeness above one half, at most 1
 */
public record RenameCandidate(
    RuleSetPart part, String before, String after, String name, double likeness) {
  private static final double LIKE = 0.6;
  private static final double OF_THING = 0.85;
  private static final double OF_NAME = 0.15;

  /**
   * So many of one kind are compared, each that went with each that came; a whole standard has some
   * hundred items.
   */
  private static final int COMPARED = 1000;

  /** Returns what may have been renamed, the likeliest first within each part. */
  static List<RenameCandidate> among(RuleSet before, RuleSet after) {
    List<RenameCandidate> all = new ArrayList<>();
    all.addAll(
        new Kind<>(RuleSetPart.ITEM, Item::title, new Traits(), RenameCandidate::alike)
            .pairs(items(before), items(after)));
    all.addAll(
        new Kind<>(
                RuleSetPart.SOURCE,
                Source::title,
                Source::kind,
                (titles, a, b) -> titles * (a == b ? 1 : 0.8))
            .pairs(before.sources(), after.sources()));
    all.addAll(
        new Kind<>(
                RuleSetPart.COLOR,
                ColorChip::name,
                ColorChip::lab,
                (names, a, b) -> a.isPresent() && a.equals(b) ? 1 : names)
            .pairs(before.colors(), after.colors()));
    all.addAll(
        Kind.byName(RuleSetPart.FINISH, Finish::name).pairs(before.finishes(), after.finishes()));
    all.addAll(Kind.byName(RuleSetPart.MODEL, Model::name).pairs(before.models(), after.models()));
    return all;
  }

  private static Map<String, Item> items(RuleSet rules) {
    Map<String, Item> items = new LinkedHashMap<>();
    rules.items().forEach(item -> items.put(item.id(), item));
    return items;
  }

  /** Says how much alike two things are, 0 to 1, if their names are so much alike. */
  private interface Likeness<S> {
    double of(double names, S one, S other);
  }

  /**
   * Things of one kind.
   *
   * @param name what a thing is called
   * @param traits what else of it is compared
   */
  private record Kind<T, S>(
      RuleSetPart part, Function<T, String> name, Function<T, S> traits, Likeness<S> likeness) {
    static <T> Kind<T, Optional<T>> byName(RuleSetPart part, Function<T, String> name) {
      return new Kind<>(part, name, thing -> Optional.empty(), (names, a, b) -> names);
    }

    /** A thing that only one edition has. */
    private record Alone<S>(String id, String name, Letters ofId, Letters ofName, S traits) {}

    List<RenameCandidate> pairs(Map<String, T> before, Map<String, T> after) {
      List<Alone<S>> come = alone(after, before.keySet());
      List<RenameCandidate> pairs = new ArrayList<>();
      for (Alone<S> old : alone(before, after.keySet())) {
        come.forEach(now -> compare(old, now).ifPresent(pairs::add));
      }
      return best(pairs);
    }

    private List<Alone<S>> alone(Map<String, T> things, Set<String> others) {
      return things.entrySet().stream()
          .filter(it -> !others.contains(it.getKey()))
          .limit(COMPARED)
          .map(it -> alone(it.getKey(), it.getValue()))
          .toList();
    }

    private Alone<S> alone(String id, T thing) {
      String called = name.apply(thing);
      return new Alone<>(id, called, new Letters(id), new Letters(called), traits.apply(thing));
    }

    private Optional<RenameCandidate> compare(Alone<S> old, Alone<S> now) {
      double thing =
          OF_THING * likeness.of(old.ofName().like(now.ofName()), old.traits(), now.traits());
      if (thing + OF_NAME < LIKE) {
        return Optional.empty();
      }
      double like = thing + OF_NAME * old.ofId().like(now.ofId());
      return like >= LIKE
          ? Optional.of(new RenameCandidate(part, old.id(), now.id(), now.name(), like))
          : Optional.empty();
    }
  }

  /** Returns the likeliest of all pairs, each name once. */
  private static List<RenameCandidate> best(List<RenameCandidate> pairs) {
    pairs.sort(
        Comparator.comparingDouble(RenameCandidate::likeness)
            .reversed()
            .thenComparing(RenameCandidate::before)
            .thenComparing(RenameCandidate::after));
    Set<String> gone = new HashSet<>();
    Set<String> come = new HashSet<>();
    List<RenameCandidate> best = new ArrayList<>();
    for (RenameCandidate one : pairs) {
      if (!gone.contains(one.before()) && !come.contains(one.after())) {
        gone.add(one.before());
        come.add(one.after());
        best.add(one);
      }
    }
    return best;
  }

  /**
   * What of an item is compared beside its title; what is looked at and what is expected have a
   * number for each way they can be.
   */
  private record ItemTraits(String area, long points, int aspects, int expected) {}

  /** Numbers what items look at and expect, so that long lists are compared once. */
  private static final class Traits implements Function<Item, ItemTraits> {
    private final Map<List<?>, Integer> numbers = new HashMap<>();

    @Override
    public ItemTraits apply(Item item) {
      return new ItemTraits(
          item.area(), item.points(), number(aspects(item)), number(expected(item)));
    }

    private int number(List<?> list) {
      Integer known = numbers.putIfAbsent(list, numbers.size());
      return known == null ? numbers.size() - 1 : known;
    }
  }

  private static double alike(double title, ItemTraits a, ItemTraits b) {
    boolean isExpected = a.expected() == b.expected();
    double same =
        (a.area().equals(b.area()) ? 0.2 : 0)
            + (a.points() == b.points() ? 0.2 : 0)
            + (a.aspects() == b.aspects() ? 0.3 : 0)
            + (isExpected ? 0.3 : 0);
    return Math.max(0.6 * title + 0.4 * same, isExpected ? 0.9 * same : 0);
  }

  private static List<?> aspects(Item item) {
    return item.aspects().stream().map(AspectRule::aspect).toList();
  }

  private static List<?> expected(Item item) {
    return item.aspects().stream()
        .flatMap(rule -> rule.claims().stream())
        .map(claim -> List.of(claim.source(), claim.values()))
        .toList();
  }

  /** Returns how many pairs of neighboring letters two texts share, 0 to 1. */
  static double alike(String a, String b) {
    return new Letters(a).like(new Letters(b));
  }
}
