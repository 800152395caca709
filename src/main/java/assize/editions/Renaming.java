package assize.editions;

import assize.evidence.Source;
import assize.ruleset.AspectRule;
import assize.ruleset.ColorChip;
import assize.ruleset.Finish;
import assize.ruleset.Item;
import assize.ruleset.Model;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleBiFunction;

/**
 * A name that only the older edition has, and one that only the newer has, which are so alike that
 * perhaps one became the other. It is never taken for granted: both stay as they are.
 *
 * @param likeness above one half, at most 1
 */
public record Renaming(Part part, String before, String after, String name, double likeness) {
  private static final double LIKE = 0.6;

  /** Returns what may have been renamed, the likeliest first within each part. */
  static List<Renaming> among(RuleSet before, RuleSet after) {
    List<Renaming> all = new ArrayList<>();
    all.addAll(pairs(Part.ITEM, items(before), items(after), Renaming::alike, Item::title));
    all.addAll(
        pairs(
            Part.SOURCE,
            before.sources(),
            after.sources(),
            (a, b) -> alike(a.title(), b.title()) * (a.kind() == b.kind() ? 1 : 0.8),
            Source::title));
    all.addAll(
        pairs(
            Part.COLOR,
            before.colors(),
            after.colors(),
            (a, b) ->
                a.lab().isPresent() && a.lab().equals(b.lab()) ? 1 : alike(a.name(), b.name()),
            ColorChip::name));
    all.addAll(
        pairs(
            Part.FINISH,
            before.finishes(),
            after.finishes(),
            (a, b) -> alike(a.name(), b.name()),
            Finish::name));
    all.addAll(
        pairs(
            Part.MODEL,
            before.models(),
            after.models(),
            (a, b) -> alike(a.name(), b.name()),
            Model::name));
    return all;
  }

  private static Map<String, Item> items(RuleSet rules) {
    Map<String, Item> items = new LinkedHashMap<>();
    rules.items().forEach(item -> items.put(item.id(), item));
    return items;
  }

  private static <T> List<Renaming> pairs(
      Part part,
      Map<String, T> before,
      Map<String, T> after,
      ToDoubleBiFunction<T, T> likeness,
      java.util.function.Function<T, String> name) {
    List<Renaming> pairs = new ArrayList<>();
    before.forEach(
        (old, thing) -> {
          if (!after.containsKey(old)) {
            after.forEach(
                (id, other) -> {
                  if (!before.containsKey(id)) {
                    double like =
                        0.85 * likeness.applyAsDouble(thing, other) + 0.15 * alike(old, id);
                    if (like >= LIKE) {
                      pairs.add(new Renaming(part, old, id, name.apply(other), like));
                    }
                  }
                });
          }
        });
    pairs.sort(
        Comparator.comparingDouble(Renaming::likeness)
            .reversed()
            .thenComparing(Renaming::before)
            .thenComparing(Renaming::after));
    Set<String> taken = new HashSet<>();
    List<Renaming> best = new ArrayList<>();
    for (Renaming one : pairs) {
      if (!taken.contains("<" + one.before()) && !taken.contains(">" + one.after())) {
        taken.add("<" + one.before());
        taken.add(">" + one.after());
        best.add(one);
      }
    }
    return best;
  }

  private static double alike(Item a, Item b) {
    double title = alike(a.title(), b.title());
    double same =
        (a.area().equals(b.area()) ? 0.2 : 0)
            + (a.points() == b.points() ? 0.2 : 0)
            + (aspects(a).equals(aspects(b)) ? 0.3 : 0)
            + (expected(a).equals(expected(b)) ? 0.3 : 0);
    return Math.max(0.6 * title + 0.4 * same, expected(a).equals(expected(b)) ? 0.9 * same : 0);
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

  /** Returns how many pairs of neighboring letters two texts share, 0 to 1 (Dice 1945). */
  static double alike(String a, String b) {
    List<String> one = pairs(a);
    List<String> other = new ArrayList<>(pairs(b));
    int all = one.size() + other.size();
    int shared = 0;
    for (String pair : one) {
      if (other.remove(pair)) {
        shared++;
      }
    }
    return all == 0 ? (a.equals(b) ? 1 : 0) : 2.0 * shared / all;
  }

  private static List<String> pairs(String text) {
    String folded = text.toLowerCase(Locale.ROOT);
    List<String> pairs = new ArrayList<>();
    for (int i = 0; i + 2 <= folded.length(); i++) {
      pairs.add(folded.substring(i, i + 2));
    }
    return pairs;
  }
}
