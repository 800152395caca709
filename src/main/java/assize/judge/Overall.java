package assize.judge;

import assize.judge.Lot.Bound;
import assize.judge.Mean.Figures;
import assize.judge.Scoring.AreaScore;
import assize.judge.Scoring.StretchScore;
import assize.judge.Stretches.Cut;
import assize.judgment.AreaJudgment;
import assize.judgment.ScoreRange;
import assize.ruleset.Area;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** What stretches come to together: the least, the mean over their days, the greatest. */
final class Overall {
  private Overall() {}

  /** Returns each area over all stretches. */
  static List<AreaJudgment> areas(RuleSet rules, List<Cut> cuts, List<StretchScore> scores) {
    List<AreaJudgment> areas = new ArrayList<>();
    for (int a = 0; a < rules.areas().size(); a++) {
      Area area = rules.areas().get(a);
      List<Figures> figures = new ArrayList<>();
      List<AreaJudgment.AreaInStretch> stretches = new ArrayList<>();
      for (int i = 0; i < cuts.size(); i++) {
        AreaScore score = scores.get(i).areas().get(a);
        stretches.add(score.inStretch());
        figures.add(
            new Figures(
                cuts.get(i).days().days(),
                score.meanLow(),
                score.inStretch().likely().earned(),
                score.meanHigh(),
                score.inStretch().likely().possible()));
      }
      Mean mean = Mean.of(figures);
      areas.add(new AreaJudgment(area, mean.earned(), mean.possible(), stretches));
    }
    return areas;
  }

  /** Returns the least score, the mean over the days, and the greatest. */
  static ScoreRange score(List<Cut> cuts, List<ScoreRange> scores) {
    long days = 0;
    BigFraction likely = BigFraction.ZERO;
    for (int i = 0; i < cuts.size(); i++) {
      long of = cuts.get(i).days().days();
      days += of;
      likely = likely.add(Exact.of(Bound.LIKELY.of(scores.get(i)), 1).multiply(Exact.of(of, 1)));
    }
    return new ScoreRange(
        scores.stream().mapToLong(ScoreRange::low).min().orElse(0),
        Exact.round(likely.divide(Exact.of(days, 1))),
        scores.stream().mapToLong(ScoreRange::high).max().orElse(0));
  }
}
