package assize.report.view;

import assize.aspect.Verdict;
import assize.judgment.AwardResult;
import assize.judgment.ItemJudgment;
import assize.judgment.Judgment;
import assize.judgment.ScoreRange;
import assize.report.chart.ScoreRangeChart;
import assize.ruleset.Award;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The score and the awards in words and as a drawing. */
public final class ScoreViewFactory {
  private static final int WIDE = 680;
  private static final int NARROW = 300;

  private ScoreViewFactory() {}

  public static ScoreView of(Judgment judgment) {
    ScoreRange score = judgment.score();
    long of = judgment.rules().scale().outOf();
    boolean allowances = !judgment.withoutAllowances().equals(score);
    ScoreRangeChart scale =
        new ScoreRangeChart(
            of / 1000.0,
            band(score),
            allowances ? Optional.of(band(judgment.withoutAllowances())) : Optional.empty(),
            thresholds(judgment));
    List<String> sentences = sentences(judgment);
    String title = "The score against the awards";
    String description = String.join(" ", sentences);
    return new ScoreView(
        NumberFormatter.points(score.low()),
        NumberFormatter.points(score.likely()),
        NumberFormatter.points(score.high()),
        NumberFormatter.points(of),
        !score.isPoint(),
        reached(judgment),
        sentences,
        allowances ? withoutAllowances(judgment.withoutAllowances()) : "",
        awards(judgment),
        scale.draw("score-wide", title, description, WIDE),
        scale.draw("score-narrow", title, description, NARROW),
        tally(judgment));
  }

  private static ScoreRangeChart.Band band(ScoreRange range) {
    return new ScoreRangeChart.Band(
        range.low() / 1000.0, range.likely() / 1000.0, range.high() / 1000.0);
  }

  /** Returns the awards' thresholds. */
  public static List<ScoreRangeChart.Threshold> thresholds(Judgment judgment) {
    return judgment.rules().awards().stream()
        .map(
            award ->
                new ScoreRangeChart.Threshold(
                    award.name(),
                    NumberFormatter.points(award.minScore()),
                    award.minScore() / 1000.0))
        .toList();
  }

  private static String reached(Judgment judgment) {
    return judgment.rules().awards().isEmpty()
        ? ""
        : judgment.award().reached().map(Award::name).orElse("no award");
  }

  private static List<String> sentences(Judgment judgment) {
    ScoreRange score = judgment.score();
    List<String> sentences = new ArrayList<>();
    String of = NumberFormatter.points(judgment.rules().scale().outOf());
    sentences.add(
        score.isPoint()
            ? "The score is "
                + NumberFormatter.points(score.likely())
                + " of "
                + of
                + "; nothing is open."
            : "The likely score is "
                + NumberFormatter.points(score.likely())
                + " of "
                + of
                + ". However the open matters turn out, it is no less than "
                + NumberFormatter.points(score.low())
                + " and no more than "
                + NumberFormatter.points(score.high())
                + ".");
    if (judgment.rules().awards().isEmpty()) {
      return sentences;
    }
    AwardResult award = judgment.award();
    sentences.add(
        award
            .reached()
            .map(it -> "On the likely score it reaches: " + it.name() + ".")
            .orElse("On the likely score it reaches no award."));
    if (!award.certain().equals(award.reached())) {
      sentences.add(
          award
              .certain()
              .map(it -> "Certain, even on the low score: " + it.name() + ".")
              .orElse("On the low score no award is certain."));
    }
    if (!award.possible().equals(award.reached())) {
      award
          .possible()
          .ifPresent(it -> sentences.add("Possible, on the high score: " + it.name() + "."));
    }
    return sentences;
  }

  private static String withoutAllowances(ScoreRange strict) {
    return "Without the scale's allowances for departures: "
        + NumberFormatter.points(strict.likely())
        + (strict.isPoint() ? "." : " likely, " + NumberFormatter.range(strict) + " in all.");
  }

  private static List<ScoreView.AwardView> awards(Judgment judgment) {
    AwardResult result = judgment.award();
    return judgment.rules().awards().stream()
        .sorted(Comparator.comparingLong(Award::minScore).reversed())
        .map(
            award ->
                new ScoreView.AwardView(
                    award.name(),
                    NumberFormatter.points(award.minScore()),
                    conditions(award),
                    standing(award, result)))
        .toList();
  }

  private static String standing(Award award, AwardResult result) {
    if (under(award, result.certain())) {
      return "certain";
    }
    if (under(award, result.reached())) {
      return "reached";
    }
    return under(award, result.possible()) ? "possible" : "out of reach";
  }

  /** Says whether an award is the best one reached, or below it. */
  public static boolean under(Award award, Optional<Award> best) {
    return best.isPresent() && award.minScore() <= best.get().minScore();
  }

  private static String conditions(Award award) {
    List<String> parts = new ArrayList<>();
    award
        .minAreaShare()
        .ifPresent(
            share ->
                parts.add("no area under " + NumberFormatter.number(share.multiply(100)) + "%"));
    award
        .maxItemLoss()
        .ifPresent(
            points ->
                parts.add("no item departs by over " + NumberFormatter.points(points) + " points"));
    return parts.stream().collect(Collectors.joining("; "));
  }

  private static List<ScoreView.TallyView> tally(Judgment judgment) {
    List<ScoreView.TallyView> tally = new ArrayList<>();
    for (Verdict verdict : Verdict.values()) {
      long count =
          judgment.items().stream().map(ItemJudgment::verdict).filter(verdict::equals).count();
      if (count > 0) {
        tally.add(
            new ScoreView.TallyView(
                VerdictView.of(verdict), Long.toString(count), meaning(verdict)));
      }
    }
    return tally;
  }

  private static String meaning(Verdict verdict) {
    return switch (verdict) {
      case CORRECT -> "as the standard has it";
      case PARTLY_CORRECT -> "right in part";
      case INCORRECT -> "not as the standard has it";
      case UNDECIDED -> "a dispute or a coarse measurement leaves it open";
      case NOT_ASSESSED -> "nothing in the record shows it";
      case NOT_APPLICABLE -> "not for this vehicle";
      case MAY_APPLY -> "the build day or the equipment is too uncertain to say";
    };
  }
}
