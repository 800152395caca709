package assize.report.vehicle;

import java.util.List;

/**
 * How areas add up to the score, so that it can be checked by hand.
 *
 * @param method the method in words
 * @param headings the names of the columns
 */
public record ScoreCalculationView(String method, List<String> headings, List<Table> tables) {
  public ScoreCalculationView {
    headings = List.copyOf(headings);
    tables = List.copyOf(tables);
  }

  /**
   * The sums within one stretch.
   *
   * @param days empty where there is one stretch
   * @param formulas how the last line becomes the score
   */
  public record Table(String days, List<AreaRow> rows, AreaRow total, List<String> formulas) {
    public Table {
      rows = List.copyOf(rows);
      formulas = List.copyOf(formulas);
    }
  }

  /** One area, or all. */
  public record AreaRow(String name, List<String> cells) {
    public AreaRow {
      cells = List.copyOf(cells);
    }
  }
}
