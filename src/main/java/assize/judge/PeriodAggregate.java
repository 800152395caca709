package assize.judge;

import assize.judge.PeriodMean.Figures;
import assize.judge.PeriodSplitter.Cut;
import assize.judge.ScoreCalculator.AreaScore;
import assize.judge.ScoreCalculator.StretchScore;
import assize.judge.ScoredItem.Bound;
import assize.judgment.AreaJudgment;
import assize.judgment.ScoreRange;
import assize.ruleset.Area;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** What stretches come to together: the least, the mean over their days, the greatest. */
final class PeriodAggregate {
  private PeriodAggregate() {}

  /** Returns each area over all stretches. */
  static List<AreaJudgment> areas(RuleSet rules, List<Cut> cuts, List<StretchScore> scores) {
    List<AreaJudgment> areas = new ArrayList<>();
    for (int a = 0; a < rules.areas().size(); a++) {
      Area area = rules.areas().get(a);
      List<Figures> figures = new ArrayList<>();
      List<AreaJudgment.AreaInPeriod> stretches = new ArrayList<>();
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
      PeriodMean mean = PeriodMean.of(figures);
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
      likely =
          likely.add(ExactMath.of(Bound.LIKELY.of(scores.get(i)), 1).multiply(ExactMath.of(of, 1)));
    }
    return new ScoreRange(
        scores.stream().mapToLong(ScoreRange::low).min().orElse(0),
        ExactMath.round(likely.divide(ExactMath.of(days, 1))),
        scores.stream().mapToLong(ScoreRange::high).max().orElse(0));
  }
}
