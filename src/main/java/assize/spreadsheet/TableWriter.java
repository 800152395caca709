package assize.spreadsheet;

import assize.record.VehicleRecord;
import assize.report.sheet.InspectionView;
import assize.ruleset.RuleSet;

/** Writes the inspection sheet as a table to be filled in; what is found already stands in it. */
public final class TableWriter {
  private TableWriter() {}

  /**
   * Returns a workbook ({@code .xlsx}): the same bytes for the same vehicle.
   *
   * @param view what there is to look at
   * @param record what the view was made of
   */
  public static byte[] xlsx(InspectionView view, RuleSet rules, VehicleRecord record) {
    return WorkbookWriter.write(InspectionTable.of(view, rules, record));
  }

  /** Returns the same as CSV, the table alone. */
  public static byte[] csv(InspectionView view, RuleSet rules, VehicleRecord record) {
    return CsvTableWriter.write(InspectionTable.of(view, rules, record));
  }
}
