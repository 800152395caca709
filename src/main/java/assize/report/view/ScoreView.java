package assize.report.view;

import assize.report.chart.Chart;
import java.util.List;

/**
 * The score against the awards.
 *
 * @param open whether low and high differ
 * @param reached what it reaches, in a few words; empty where there are no awards
 * @param sentences the score and the awards in whole sentences
 * @param withoutAllowances the score without allowances, in words; empty where it is the same
 * @param wide the drawing for a wide page
 * @param narrow the same for a narrow one
 * @param tally how many items have which verdict
 */
public record ScoreView(
    String low,
    String likely,
    String high,
    String of,
    boolean open,
    String reached,
    List<String> sentences,
    String withoutAllowances,
    List<AwardView> awards,
    Chart wide,
    Chart narrow,
    List<TallyView> tally) {
  public ScoreView {
    sentences = List.copyOf(sentences);
    awards = List.copyOf(awards);
    tally = List.copyOf(tally);
  }

  /**
   * An award and how the vehicle stands to it.
   *
   * @param standing certain, likely, possible or out of reach
   */
  public record AwardView(String name, String at, String conditions, String standing) {}

  /** How many items have one verdict. */
  public record TallyView(VerdictView verdict, String count, String meaning) {}
}
