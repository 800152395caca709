package assize.spreadsheet;

import assize.record.VehicleRecord;
import assize.report.view.WalkView;
import assize.ruleset.RuleSet;

/** Writes the walk-round sheet as a table to be filled in; what is found already stands in it. */
public final class TableWriter {
  private TableWriter() {}

  /**
   * Returns a workbook ({@code .xlsx}): the same bytes for the same vehicle.
   *
   * @param view what there is to look at
   * @param record what the view was made of
   */
  public static byte[] xlsx(WalkView view, RuleSet rules, VehicleRecord record) {
    return WorkbookWriter.write(SheetTable.of(view, rules, record));
  }

  /** Returns the same as CSV, the table alone. */
  public static byte[] csv(WalkView view, RuleSet rules, VehicleRecord record) {
    return CsvTableWriter.write(SheetTable.of(view, rules, record));
  }
}
