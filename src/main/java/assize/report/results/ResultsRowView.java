package assize.report.results;

import assize.report.chart.Chart;
import java.util.List;

/**
 * One vehicle of a results page. A text that ends in {@code Key} is what rows are sorted by: a
 * whole number, or empty for what is not known.
 *
 * @param report the file of its report, beside the results page; empty for none
 * @param range the low and the high score; empty where nothing is open
 * @param awards the award reached first, then what is certain or possible where that differs
 * @param pointsAtStake the points that ride on its open disputes; empty without any
 */
public record ResultsRowView(
    String name,
    String id,
    String report,
    String model,
    String built,
    String builtKey,
    String likely,
    String range,
    String likelyKey,
    Chart bar,
    List<String> awards,
    String awardKey,
    String disputes,
    String pointsAtStake,
    String pointsAtStakeKey,
    String notShown,
    String notShownKey,
    String judged,
    String judgedKey) {
  public ResultsRowView {
    awards = List.copyOf(awards);
  }
}
