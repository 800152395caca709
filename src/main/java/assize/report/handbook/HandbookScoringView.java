package assize.report.handbook;

import assize.report.view.LinkView;
import java.util.List;

/**
 * How a vehicle is scored, in words.
 *
 * @param method in whole sentences, a paragraph each
 * @param columns heads of the columns of figures of {@code areas}
 * @param grades what a source of each grade weighs
 * @param allow reasons for a departure and the credit that each keeps
 * @param causes causes that several items share
 * @param example one item worked out by hand, a step each
 */
public record HandbookScoringView(
    List<String> method,
    List<String> columns,
    List<AreaRow> areas,
    List<AwardRow> awards,
    List<HandbookView.Fact> grades,
    String sources,
    List<HandbookView.Fact> allow,
    List<Cause> causes,
    List<String> example) {
  public HandbookScoringView {
    method = List.copyOf(method);
    columns = List.copyOf(columns);
    areas = List.copyOf(areas);
    awards = List.copyOf(awards);
    grades = List.copyOf(grades);
    allow = List.copyOf(allow);
    causes = List.copyOf(causes);
    example = List.copyOf(example);
  }

  /** An area and its figures. */
  public record AreaRow(LinkView area, List<String> cells) {
    public AreaRow {
      cells = List.copyOf(cells);
    }
  }

  /**
   * An award.
   *
   * @param at from how many points on
   */
  public record AwardRow(String id, String name, String at, List<String> conditions) {
    public AwardRow {
      conditions = List.copyOf(conditions);
    }
  }

  /** A cause, and the items that lose together. */
  public record Cause(String name, List<LinkView> items) {
    public Cause {
      items = List.copyOf(items);
    }
  }
}
