package assize.report.vehicle;

import assize.report.chart.Chart;
import java.util.List;

/**
 * The score against the build day.
 *
 * @param sentence what finding the build day is worth
 * @param mean how the likely score comes about
 */
public record ScoreByDateView(
    String sentence, Chart wide, Chart narrow, List<PeriodRow> rows, String mean) {
  public ScoreByDateView {
    rows = List.copyOf(rows);
  }

  /** One stretch of build days. */
  public record PeriodRow(String days, String count, String low, String likely, String high) {}
}
