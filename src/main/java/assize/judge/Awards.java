package assize.judge;

import assize.judge.ScoreCalculator.AreaScore;
import assize.judge.ScoreCalculator.StretchScore;
import assize.judgment.AreaJudgment;
import assize.judgment.AwardResult;
import assize.judgment.ScoreRange;
import assize.ruleset.Award;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;

/** The awards that a vehicle reaches, certainly, likely and possibly. */
final class Awards {
  private final List<Award> awards;
  private final List<StretchScore> scores;
  private final List<AreaJudgment> areas;
  private final LargestLoss worst;

  private Awards(
      List<Award> awards, List<StretchScore> scores, List<AreaJudgment> areas, LargestLoss worst) {
    this.awards = awards.stream().sorted(Comparator.comparing(Award::minScore).reversed()).toList();
    this.scores = scores;
    this.areas = areas;
    this.worst = worst;
  }

  /**
   * Finds the awards: what is certain is reached, and what is reached is possible.
   *
   * @param scores of each stretch
   * @param score over all stretches
   * @param areas over all stretches; may be left out where no award asks for a share of an area
   */
  static AwardResult of(
      List<Award> awards,
      List<StretchScore> scores,
      ScoreRange score,
      List<AreaJudgment> areas,
      LargestLoss worst) {
    Awards all = new Awards(awards, scores, areas, worst);
    Optional<Award> certain = all.every(all::certain);
    Optional<Award> reached = all.higher(certain, all.first(award -> all.reached(award, score)));
    return new AwardResult(certain, reached, all.higher(reached, all.any(all::possible)));
  }

  private Optional<Award> higher(Optional<Award> one, Optional<Award> other) {
    return first(award -> one.equals(Optional.of(award)) || other.equals(Optional.of(award)));
  }

  private interface InStretch {
    boolean reaches(Award award, int stretch);
  }

  private Optional<Award> first(Function<Award, Boolean> reaches) {
    return awards.stream().filter(reaches::apply).findFirst();
  }

  private Optional<Award> every(InStretch test) {
    return first(award -> IntStream.range(0, scores.size()).allMatch(i -> test.reaches(award, i)));
  }

  private Optional<Award> any(InStretch test) {
    return first(award -> IntStream.range(0, scores.size()).anyMatch(i -> test.reaches(award, i)));
  }

  private boolean certain(Award award, int i) {
    return scores.get(i).score().low() >= award.minScore()
        && areasReach(award, i, AreaScore::leastShare)
        && within(award, worst.low().get(i));
  }

  private boolean possible(Award award, int i) {
    return scores.get(i).score().high() >= award.minScore()
        && areasReach(award, i, AreaScore::greatestShare)
        && within(award, worst.high().get(i));
  }

  private boolean reached(Award award, ScoreRange score) {
    boolean areasReach =
        areas.stream()
            .filter(area -> area.possible() > 0)
            .allMatch(
                area ->
                    award
                        .minAreaShare()
                        .map(
                            share ->
                                ExactMath.of(area.earned().likely(), area.possible())
                                        .compareTo(share)
                                    >= 0)
                        .orElse(true));
    return score.likely() >= award.minScore() && areasReach && within(award, worst.likely());
  }

  private boolean areasReach(Award award, int i, Function<AreaScore, Optional<BigFraction>> share) {
    return scores.get(i).areas().stream()
        .flatMap(area -> share.apply(area).stream())
        .allMatch(of -> award.minAreaShare().map(least -> of.compareTo(least) >= 0).orElse(true));
  }

  private static boolean within(Award award, long lost) {
    return award.maxItemLoss().isEmpty() || lost <= award.maxItemLoss().getAsLong();
  }
}
