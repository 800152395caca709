package assize.report.changes;

import assize.report.view.FileView;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What changed between two editions, in the order in which it is read; an empty text stands for
 * what an edition does not say.
 *
 * @param before as in "edition 2, March 2024"
 * @param after the same of the newer edition
 * @param summary in whole sentences
 * @param vehicle what it means for one vehicle, where one was asked for
 * @param altering what can alter a verdict, points or an award
 * @param wording what only says the same in other words
 * @param renamed what may only have been given another name
 * @param told every change one by one, and {@code expectations} what each comes to
 */
public record ChangesView(
    String name,
    String before,
    String after,
    List<String> summary,
    Optional<VehicleView> vehicle,
    List<Group> altering,
    List<Group> wording,
    List<Renamed> renamed,
    List<ChangeDetails> told,
    List<Expected> expectations,
    List<FileView> files) {
  public ChangesView {
    summary = List.copyOf(summary);
    altering = List.copyOf(altering);
    wording = List.copyOf(wording);
    renamed = List.copyOf(renamed);
    told = List.copyOf(told);
    expectations = List.copyOf(expectations);
    files = List.copyOf(files);
  }

  /** One change, with nothing said of it elsewhere. */
  public record ChangeDetails(
      String part,
      String kind,
      String id,
      String name,
      String what,
      Optional<String> before,
      Optional<String> after,
      boolean alters,
      Set<String> items) {}

  /** What is expected otherwise of some vehicles for some build days; empty for all. */
  public record Expected(
      String item, String aspect, String vehicles, String days, String before, String after) {}

  /** Changes of one part of the rule set. */
  public record Group(String anchor, String name, List<Thing> things) {
    public Group {
      things = List.copyOf(things);
    }
  }

  /**
   * One named thing that changed.
   *
   * @param id empty for the standard as a whole
   * @param became added, taken out, or empty where it only changed
   * @param shifts what is expected otherwise, and of which vehicles
   * @param items other items that it bears on
   */
  public record Thing(
      String id,
      String name,
      String became,
      List<ChangeLine> lines,
      List<ShiftView> shifts,
      String items) {
    public Thing {
      lines = List.copyOf(lines);
      shifts = List.copyOf(shifts);
    }
  }

  /** One property that changed. */
  public record ChangeLine(String what, String before, String after) {}

  /**
   * What is expected otherwise of some vehicles.
   *
   * @param vehicles empty for all
   * @param remark why nothing is laid out
   */
  public record ShiftView(String aspect, String vehicles, List<ShiftDays> days, String remark) {
    public ShiftView {
      days = List.copyOf(days);
    }
  }

  /** What was right and what is, for some build days; empty for the whole production. */
  public record ShiftDays(String days, String before, String after) {}

  /** Two names that are much alike. */
  public record Renamed(String part, String before, String after, String name) {}

  /**
   * What two editions come to for one vehicle.
   *
   * @param scores the score, the range and the award, a row each
   * @param items those that fare differently
   * @param left what of the record an edition has no place for
   */
  public record VehicleView(
      String name, List<ChangeLine> scores, List<ItemRow> items, List<String> left) {
    public VehicleView {
      scores = List.copyOf(scores);
      items = List.copyOf(items);
      left = List.copyOf(left);
    }
  }

  /**
   * An item that fares differently.
   *
   * @param remark that it newly applies, or no longer does
   * @param because the changes that bear on it
   */
  public record ItemRow(
      String id, String title, String remark, String before, String after, List<String> because) {
    public ItemRow {
      because = List.copyOf(because);
    }
  }
}
