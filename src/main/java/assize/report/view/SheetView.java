package assize.report.view;

import assize.aspect.Control;
import assize.yaml.Node;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A walk-round sheet: what there is to look at on one vehicle, and the record that answers go into.
 *
 * @param key under which a browser keeps answers: one for each state of a rule set and each record
 * @param file how the record is called where it is saved
 * @param text the record's text
 * @param marked whether a byte order mark stands before it
 * @param tree where everything in it stands
 * @param by who looks, as the record says; empty where it does not
 * @param on when
 * @param reasons for departures that the standard allows
 * @param bands of gloss
 * @param order every item of the rule set, by its name
 * @param named words that some source speaks of, by item and aspect
 */
public record SheetView(
    WalkView walk,
    String key,
    String file,
    String text,
    boolean marked,
    Node.Mapping tree,
    String by,
    String on,
    List<String> reasons,
    List<String> bands,
    List<String> order,
    Map<String, Map<String, Set<String>>> named) {
  /** So many choices or fewer all stand on paper, and at once on a screen. */
  private static final int FEW = 9;

  public SheetView {
    reasons = List.copyOf(reasons);
    bands = List.copyOf(bands);
    order = List.copyOf(order);
    named = Map.copyOf(named);
  }

  /** Returns the choices that have a box on paper: all of a few, else those that are named. */
  public List<Control.Choice> boxes(WalkView.WalkItem item, WalkView.WalkAspect aspect) {
    List<Control.Choice> all = aspect.control().choices();
    return all.size() <= FEW
        ? all
        : all.stream().filter(it -> spokenOf(item, aspect).contains(it.id())).toList();
  }

  /** Says whether what was found has a box on paper. */
  public boolean hasBox(WalkView.WalkItem item, WalkView.WalkAspect aspect) {
    return boxes(item, aspect).stream().anyMatch(it -> it.id().equals(aspect.found().typed()));
  }

  /** Returns the words of an aspect that some source speaks of. */
  public Set<String> spokenOf(WalkView.WalkItem item, WalkView.WalkAspect aspect) {
    return named.getOrDefault(item.id(), Map.of()).getOrDefault(aspect.word(), Set.of());
  }

  /** Says whether a gloss was told by eye. */
  public boolean isBand(String typed) {
    return bands.contains(typed);
  }

  /** Returns the words that an aspect may have on any item; none for one that has none. */
  public List<Control.Choice> words(String aspect) {
    return walk.areas().stream()
        .flatMap(area -> area.items().stream())
        .flatMap(item -> item.aspects().stream())
        .filter(it -> it.word().equals(aspect))
        .findFirst()
        .map(it -> it.control().choices())
        .orElse(List.of());
  }
}
