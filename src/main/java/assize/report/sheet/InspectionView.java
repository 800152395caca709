package assize.report.sheet;

import assize.aspect.Control;
import assize.record.Observation;
import assize.report.view.HazardView;
import assize.report.view.ReportHeaderView;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What there is to look at on one vehicle, in the order of walking round it; an empty text stands
 * for what is not said.
 *
 * @param vehicle its name
 * @param record the record's name
 * @param rules the rule set's name, as files refer to it
 * @param standard its title
 * @param edition as in "edition 3, issued March 2026"
 * @param facts what is known of the vehicle, in words
 * @param areas those with something to look at
 * @param hazards every hazard that an item carries, each once
 * @param afterHazards what stands after hazards
 * @param items how many there are to look at
 * @param aspects how many things there are to look at on them
 * @param time roughly how long that takes, as in "about 3 hours"
 * @param minutes the same in minutes
 */
public record InspectionView(
    String vehicle,
    String record,
    String rules,
    String standard,
    String edition,
    List<ReportHeaderView.Named> facts,
    List<InspectedArea> areas,
    List<HazardView> hazards,
    String afterHazards,
    int items,
    int aspects,
    String time,
    int minutes) {
  public InspectionView {
    facts = List.copyOf(facts);
    areas = List.copyOf(areas);
    hazards = List.copyOf(hazards);
  }

  /** A group of items that stand together on the vehicle. */
  public record InspectedArea(String id, String name, List<InspectedItem> items) {
    public InspectedArea {
      items = List.copyOf(items);
    }
  }

  /**
   * An item to look at.
   *
   * @param number from 1, over the whole rule set: the same for every vehicle
   * @param id its name, as records refer to it
   * @param points the most that it earns
   * @param look what to look at, and where
   * @param notes a small Markdown
   * @param mayApply on what it depends whether the vehicle is judged by it; empty where it is
   * @param texts what may be said of it in a person's own words
   */
  public record InspectedItem(
      int number,
      String id,
      String title,
      String points,
      String look,
      String notes,
      String mayApply,
      List<HazardView> hazards,
      List<InspectedAspect> aspects,
      List<SheetText> texts) {
    public InspectedItem {
      hazards = List.copyOf(hazards);
      aspects = List.copyOf(aspects);
      texts = List.copyOf(texts);
    }

    /** Returns what the record says of it beside what was found. */
    public String note() {
      return texts.stream()
          .filter(it -> it.word().equals(Observation.NOTE.name()))
          .map(SheetText::text)
          .collect(Collectors.joining());
    }
  }

  /**
   * Something that may be said of an item in a person's own words.
   *
   * @param word its key in a record, as in "note"
   * @param spoken the same in running text
   * @param text what the record says already; empty where it says nothing
   */
  public record SheetText(String word, String spoken, String text) {
    static SheetText of(String word, String text) {
      return new SheetText(word, word.replace('_', ' '), text);
    }
  }

  /**
   * One thing to look at.
   *
   * @param word its key in a record, as in "part_number"
   * @param spoken the same in running text
   * @param expected what is held to be right; more than one where sources or build days differ
   * @param found what the record says already
   */
  public record InspectedAspect(
      String word, String spoken, Control control, List<ExpectedValue> expected, FoundValue found) {
    public InspectedAspect {
      expected = List.copyOf(expected);
    }
  }

  /**
   * What is held to be right.
   *
   * @param when for which build days or vehicles, as in "built before 12 March 1935"; empty for all
   * @param words the value, or the values that are right alike
   * @param by who holds it, each with its grade, and who leaves it open or rules it out; empty
   *     where sources do not differ
   * @param scored whether the vehicle is judged by it; not so where it is outweighed
   * @param swatches its colors, as a screen can show them
   */
  public record ExpectedValue(
      String when, String words, List<String> by, boolean scored, List<String> swatches) {
    public ExpectedValue {
      by = List.copyOf(by);
      swatches = List.copyOf(swatches);
    }

    /** Returns all of it on one line. */
    public String line() {
      return (when.isEmpty() ? "" : when + ": ")
          + words
          + (by.isEmpty() ? "" : " (" + String.join("; ", by) + ")")
          + (scored ? "" : ", outweighed by the others");
    }
  }

  /**
   * What the record says already of one aspect.
   *
   * @param typed what a person types for it, without quotes; of a color its name, empty where an
   *     instrument alone read it
   * @param yaml the value as YAML has it behind the colon; empty where nothing was found
   * @param words the same in words
   */
  public record FoundValue(String typed, String yaml, String words) {
    /** Nothing was found yet. */
    public static final FoundValue NOTHING = new FoundValue("", "", "");
  }
}
