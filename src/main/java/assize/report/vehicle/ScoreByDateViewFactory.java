package assize.report.vehicle;

import assize.date.DateRangeFormatter;
import assize.judgment.BuildPeriod;
import assize.judgment.Judgment;
import assize.judgment.ScoreRange;
import assize.report.chart.ScoreByDateChart;
import assize.report.view.EdtfFormatter;
import assize.report.view.NumberFormatter;
import assize.report.view.ReportContext;
import assize.report.view.ScoreViewFactory;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The score against the build day. */
final class ScoreByDateViewFactory {
  private static final int WIDE = 680;
  private static final int NARROW = 300;

  private final ReportContext reading;
  private final Judgment judgment;

  ScoreByDateViewFactory(ReportContext reading) {
    this.reading = reading;
    this.judgment = reading.judgment();
  }

  /** Neighboring stretches of one score. */
  private record Step(int from, int to, ScoreRange score) {}

  /** Returns nothing where there is one stretch. */
  Optional<ScoreByDateView> view() {
    if (reading.stretches() < 2) {
      return Optional.empty();
    }
    List<Step> steps = steps();
    String sentence = sentence(steps);
    ScoreByDateChart drawn =
        new ScoreByDateChart(
            steps.stream()
                .map(
                    step ->
                        new ScoreByDateChart.Step(
                            stretch(step.from()).days().first(),
                            stretch(step.to()).days().last(),
                            step.score().low() / 1000.0,
                            step.score().likely() / 1000.0,
                            step.score().high() / 1000.0,
                            NumberFormatter.points(step.score().likely())))
                .toList(),
            ScoreViewFactory.thresholds(judgment));
    String title = "The score against the build day";
    return Optional.of(
        new ScoreByDateView(
            sentence,
            drawn.draw("steps-wide", title, sentence, WIDE),
            drawn.draw("steps-narrow", title, sentence, NARROW),
            judgment.stretches().stream().map(ScoreByDateViewFactory::row).toList(),
            mean()));
  }

  private BuildPeriod stretch(int index) {
    return judgment.stretches().get(index);
  }

  private List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    for (int i = 0; i < reading.stretches(); i++) {
      int end = steps.size() - 1;
      if (end >= 0 && steps.get(end).score().equals(stretch(i).score())) {
        steps.set(end, new Step(steps.get(end).from(), i, steps.get(end).score()));
      } else {
        steps.add(new Step(i, i, stretch(i).score()));
      }
    }
    return steps;
  }

  private String sentence(List<Step> steps) {
    if (steps.size() == 1) {
      return "The build day matters to single items, yet the score is the same for every day.";
    }
    String parts;
    if (steps.size() == 2) {
      parts =
          "Built before "
              + DateRangeFormatter.of(stretch(steps.get(1).from()).days().first())
              + " it scores "
              + NumberFormatter.points(steps.get(0).score().likely())
              + ", from that day on "
              + NumberFormatter.points(steps.get(1).score().likely());
    } else {
      Step worst = Collections.min(steps, Comparator.comparingLong(it -> it.score().likely()));
      Step best = Collections.max(steps, Comparator.comparingLong(it -> it.score().likely()));
      parts =
          "It scores between "
              + NumberFormatter.points(worst.score().likely())
              + ", if built "
              + reading.period(worst.from(), worst.to())
              + ", and "
              + NumberFormatter.points(best.score().likely())
              + ", if built "
              + reading.period(best.from(), best.to());
    }
    long most = steps.stream().mapToLong(step -> step.score().likely()).max().orElse(0);
    long least = steps.stream().mapToLong(step -> step.score().likely()).min().orElse(0);
    return parts
        + ". Finding the build day is worth up to "
        + NumberFormatter.points(most - least)
        + " points.";
  }

  private static ScoreByDateView.PeriodRow row(BuildPeriod stretch) {
    return new ScoreByDateView.PeriodRow(
        DateRangeFormatter.of(stretch.days()),
        Long.toString(EdtfFormatter.count(stretch.days())),
        NumberFormatter.points(stretch.score().low()),
        NumberFormatter.points(stretch.score().likely()),
        NumberFormatter.points(stretch.score().high()));
  }

  /** The likely score is the mean over the days; low and high are the least and the greatest. */
  private String mean() {
    String sum =
        judgment.stretches().stream()
            .map(
                one ->
                    EdtfFormatter.count(one.days())
                        + " × "
                        + NumberFormatter.points(one.score().likely()))
            .collect(Collectors.joining(" + "));
    return "Low is the least and high the greatest over the build days. Likely is their mean, each"
        + " day alike: ("
        + sum
        + ") ÷ "
        + reading.allDays()
        + " = "
        + NumberFormatter.points(judgment.score().likely())
        + ".";
  }
}
