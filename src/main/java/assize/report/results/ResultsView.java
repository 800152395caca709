package assize.report.results;

import assize.report.chart.Chart;
import java.util.List;

/**
 * An index of judged vehicles but for its rows, which stand in files until the page is printed.
 *
 * @param copy what a copy for others leaves out; empty for the owner's own
 * @param sentences how many there are, and by what they were judged
 * @param standards one table each: what was judged by different standards can't be compared
 * @param leftOut records that have errors
 */
public record ResultsView(
    String count,
    String copy,
    List<String> sentences,
    List<StandardView> standards,
    List<LeftOutView> leftOut) {
  public ResultsView {
    sentences = List.copyOf(sentences);
    standards = List.copyOf(standards);
    leftOut = List.copyOf(leftOut);
  }

  /**
   * The vehicles that were judged by one edition of one rule set.
   *
   * @param anchor the id that a link leads to
   * @param caveat why it stands apart from another of the same name, or empty
   * @param wide the spread of their scores, for a wide page
   * @param narrow the same for a narrow one
   */
  public record StandardView(
      String anchor,
      String name,
      String edition,
      String caveat,
      String count,
      List<String> sentences,
      List<AwardView> awards,
      Chart wide,
      Chart narrow,
      String of) {
    public StandardView {
      sentences = List.copyOf(sentences);
      awards = List.copyOf(awards);
    }
  }

  /** How many vehicles reach an award on the likely, the low and the high score. */
  public record AwardView(
      String name, String at, String reached, String certain, String possible) {}

  /** A record that could not be judged. */
  public record LeftOutView(String record, String problems) {}
}
