package assize.ruleset;

import assize.text.Span;
import java.util.List;
import java.util.OptionalLong;

/**
 * A group of items.
 *
 * @param points what its items should add up to, in thousandths of a point; its weight
 * @param most the most points it loses, in thousandths
 */
public record Area(
    String id, String name, long points, OptionalLong most, List<Item> items, Span at) {
  public Area {
    items = List.copyOf(items);
  }
}
