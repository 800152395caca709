package assize.report.sheet;

import assize.aspect.Control;
import assize.yaml.Node;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * An inspection sheet: what there is to look at on one vehicle, and the record that answers go
 * into.
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
 * @param mostGloss the most units of gloss that there can be
 * @param fields what may be said of an item, in the order in which a record says it
 * @param names what a record may hold, in its order
 * @param order every item of the rule set, by its name
 * @param named words that some source speaks of, by item and aspect
 */
public record SheetView(
    InspectionView walk,
    String key,
    String file,
    String text,
    boolean marked,
    Node.Mapping tree,
    String by,
    String on,
    List<String> reasons,
    List<String> bands,
    int mostGloss,
    List<SheetField> fields,
    List<RecordName> names,
    List<String> order,
    Map<String, Map<String, Set<String>>> named) {
  /** So many choices or fewer all stand on paper, and at once on a screen. */
  private static final int FEW = 9;

  public SheetView {
    reasons = List.copyOf(reasons);
    bands = List.copyOf(bands);
    fields = List.copyOf(fields);
    names = List.copyOf(names);
    order = List.copyOf(order);
    named = Map.copyOf(named);
  }

  /** Returns the choices that have a box on paper: all of a few, else those that are named. */
  public List<Control.Choice> boxes(
      InspectionView.InspectedItem item, InspectionView.InspectedAspect aspect) {
    List<Control.Choice> all = aspect.control().choices();
    return all.size() <= FEW
        ? all
        : all.stream().filter(it -> spokenOf(item, aspect).contains(it.id())).toList();
  }

  /** Says whether what was found has a box on paper. */
  public boolean hasBox(InspectionView.InspectedItem item, InspectionView.InspectedAspect aspect) {
    return boxes(item, aspect).stream().anyMatch(it -> it.id().equals(aspect.found().typed()));
  }

  /** Returns the words of an aspect that some source speaks of. */
  public Set<String> spokenOf(
      InspectionView.InspectedItem item, InspectionView.InspectedAspect aspect) {
    return named.getOrDefault(item.id(), Map.of()).getOrDefault(aspect.word(), Set.of());
  }

  /** Says whether a gloss was told by eye. */
  public boolean isBand(String typed) {
    return bands.contains(typed);
  }

  /** Returns the words and colors of the rule set that the walk may need, each list once. */
  public List<WordList> lists() {
    return fields.stream().flatMap(it -> list(it).stream()).toList();
  }

  private Optional<WordList> list(SheetField field) {
    return walk.areas().stream()
        .flatMap(area -> area.items().stream())
        .flatMap(item -> item.aspects().stream())
        .filter(it -> it.word().equals(field.word()))
        .map(InspectionView.InspectedAspect::control)
        .filter(it -> !it.ofItem() && it.kind() != Control.Kind.YES_NO && !it.choices().isEmpty())
        .findFirst()
        .map(it -> new WordList(field.many(), it.kind() == Control.Kind.COLOR, it.choices()));
  }

  /**
   * Words of the rule set.
   *
   * @param name what they are, as in "finishes"
   * @param areColors whether they are matched on the thing itself
   */
  public record WordList(String name, boolean areColors, List<Control.Choice> choices) {
    public WordList {
      choices = List.copyOf(choices);
    }
  }

  /**
   * Something that may be said of an item.
   *
   * @param word its key in a record, as in "part_number"
   * @param control what kind of thing is written; nothing for a text in a person's own words
   */
  public record SheetField(String word, Optional<Control.Kind> control) {

    /** Returns the name as running text has it. */
    public String spoken() {
      return word.replace('_', ' ');
    }

    /** Returns what several words for it are called, as in "finishes". */
    public String many() {
      return spoken() + (spoken().matches(".*(?:s|x|sh|ch)") ? "es" : "s");
    }
  }

  /**
   * A name in a record.
   *
   * @param name empty for names of the writer's own
   * @param bounds of each number that is written under it
   * @param below the names in the group that may stand under it, in their order
   */
  public record RecordName(String name, List<Bounds> bounds, List<RecordName> below) {
    public RecordName {
      bounds = List.copyOf(bounds);
      below = List.copyOf(below);
    }
  }

  /** The least and the greatest number, both included, as decimals. */
  public record Bounds(String least, String most) {}
}
