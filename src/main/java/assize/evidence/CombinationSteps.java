package assize.evidence;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * How the sources on one aspect are combined, step by step, so that each figure can be checked by
 * hand (Dempster's rule: Shafer, A Mathematical Theory of Evidence, 1976, chapter 3).
 *
 * @param groups the witnesses, those that leave the same standing together, in the order in which
 *     they are taken
 * @param steps one for each group
 * @param masses the mass of each set after the last step, before normalizing; that of the empty set
 *     is the conflict
 */
public record CombinationSteps(
    List<Group> groups, List<Step> steps, SortedMap<Long, BigFraction> masses) {
  private static final long EMPTY = 0;

  public CombinationSteps {
    groups = List.copyOf(groups);
    steps = List.copyOf(steps);
    masses = Collections.unmodifiableSortedMap(new TreeMap<>(masses));
  }

  /**
   * Witnesses that leave the same standing.
   *
   * @param members their places among the testimonies
   * @param doubt what all of them together leave to all positions, 0 to 1
   */
  public record Group(long compatiblePositions, List<Integer> members, BigFraction doubt) {
    public Group {
      members = List.copyOf(members);
    }

    /** Returns the mass that they give to what they leave standing, 0 to 1. */
    public BigFraction weight() {
      return BigFraction.ONE.subtract(doubt);
    }
  }

  /** One group taken in: the masses before it, and what each of them becomes. */
  public record Step(Group group, List<Product> products) {
    public Step {
      products = List.copyOf(products);
    }
  }

  /**
   * A mass times the group's weight, or times its doubt.
   *
   * @param from the set that had the mass
   * @param mass what it had
   * @param factor the group's weight or doubt
   * @param to the set that gets the product; the empty set for what contradicts itself
   */
  public record Product(long from, BigFraction mass, BigFraction factor, long to) {
    /** Returns the product. */
    public BigFraction value() {
      return mass.multiply(factor);
    }
  }

  /**
   * Combines testimonies in their order.
   *
   * @param positions how many positions are named
   */
  public static CombinationSteps of(int positions, List<SimpleSupport> testimonies) {
    long frame = DempsterCombination.frame(positions);
    List<Group> groups = groups(testimonies);
    SortedMap<Long, BigFraction> masses = new TreeMap<>(Map.of(frame, BigFraction.ONE));
    List<Step> steps = new ArrayList<>();
    for (Group group : groups) {
      List<Product> products = new ArrayList<>();
      masses.forEach(
          (set, mass) -> {
            boolean moves = set != EMPTY && (set & group.compatiblePositions()) != set;
            if (moves) {
              products.add(
                  new Product(set, mass, group.weight(), set & group.compatiblePositions()));
              products.add(new Product(set, mass, group.doubt(), set));
            } else {
              products.add(new Product(set, mass, BigFraction.ONE, set));
            }
          });
      masses = new TreeMap<>();
      for (Product product : products) {
        masses.merge(product.to(), product.value(), BigFraction::add);
      }
      steps.add(new Step(group, products));
    }
    return new CombinationSteps(groups, steps, masses);
  }

  private static List<Group> groups(List<SimpleSupport> testimonies) {
    Map<Long, List<Integer>> members = new LinkedHashMap<>();
    for (int i = 0; i < testimonies.size(); i++) {
      members
          .computeIfAbsent(testimonies.get(i).compatiblePositions(), it -> new ArrayList<>())
          .add(i);
    }
    List<Group> groups = new ArrayList<>();
    members.forEach(
        (stands, who) -> {
          BigFraction doubt =
              who.stream()
                  .map(i -> BigFraction.of(1000 - testimonies.get(i).weightThousandths(), 1000))
                  .reduce(BigFraction.ONE, BigFraction::multiply);
          groups.add(new Group(stands, who, doubt));
        });
    return groups;
  }

  /** Returns the conflict K. */
  public BigFraction conflict() {
    return masses.getOrDefault(EMPTY, BigFraction.ZERO);
  }

  /** Returns what is left for the sets that are not empty, by which their masses are divided. */
  public BigFraction agreement() {
    return BigFraction.ONE.subtract(conflict());
  }
}
