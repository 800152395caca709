package assize.report.view;

import assize.report.chart.Drawing;
import java.util.List;

/**
 * The score against the build day.
 *
 * @param sentence what finding the build day is worth
 * @param mean how the likely score comes about
 */
public record StepsView(
    String sentence, Drawing wide, Drawing narrow, List<Row> rows, String mean) {
  public StepsView {
    rows = List.copyOf(rows);
  }

  /** One stretch of build days. */
  public record Row(String days, String count, String low, String likely, String high) {}
}
