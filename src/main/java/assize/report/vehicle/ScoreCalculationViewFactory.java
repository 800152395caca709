package assize.report.vehicle;

import assize.judgment.AreaJudgment;
import assize.judgment.BuildPeriod;
import assize.judgment.Judgment;
import assize.judgment.Tally;
import assize.report.view.NumberFormatter;
import assize.report.view.ReportContext;
import assize.ruleset.Scale;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** How the areas add up to the score. */
final class ScoreCalculationViewFactory {
  private final ReportContext reading;
  private final Judgment judgment;
  private final Scale scale;

  ScoreCalculationViewFactory(ReportContext reading) {
    this.reading = reading;
    this.judgment = reading.judgment();
    this.scale = judgment.rules().scale();
  }

  /** One of the three scores: its name, and where it is found. */
  private record Column(
      String name,
      Function<AreaJudgment.AreaInPeriod, Tally> tally,
      Function<BuildPeriod, Long> score) {}

  private static final List<Column> COLUMNS =
      List.of(
          new Column("Low", AreaJudgment.AreaInPeriod::low, stretch -> stretch.score().low()),
          new Column(
              "Likely", AreaJudgment.AreaInPeriod::likely, stretch -> stretch.score().likely()),
          new Column("High", AreaJudgment.AreaInPeriod::high, stretch -> stretch.score().high()));

  ScoreCalculationView view() {
    List<ScoreCalculationView.Table> tables = new ArrayList<>();
    for (int i = 0; i < reading.stretches(); i++) {
      tables.add(table(i));
    }
    return new ScoreCalculationView(method(), headings(), tables);
  }

  private String method() {
    String of = NumberFormatter.points(scale.outOf());
    return switch (scale.method()) {
      case SUM ->
          "Points earned in all areas, divided by the points that could be earned, times "
              + of
              + ".";
      case AREAS ->
          "Each area's own share of its points, weighed by the area's points; the mean, times "
              + of
              + ".";
      case DEDUCTIONS -> "Points lost are taken from " + of + ", never below zero.";
    };
  }

  private List<String> headings() {
    List<String> headings = new ArrayList<>();
    if (scale.method() == Scale.Method.AREAS) {
      headings.add("Weight");
    }
    for (Column column : COLUMNS) {
      headings.add(
          scale.method() == Scale.Method.DEDUCTIONS ? column.name() + ", lost" : column.name());
    }
    return headings;
  }

  private ScoreCalculationView.Table table(int stretch) {
    List<ScoreCalculationView.AreaRow> rows = new ArrayList<>();
    for (AreaJudgment area : judgment.areas()) {
      List<String> cells = new ArrayList<>();
      if (scale.method() == Scale.Method.AREAS) {
        cells.add(NumberFormatter.points(area.area().points()));
      }
      for (Column column : COLUMNS) {
        cells.add(cell(column.tally().apply(area.stretches().get(stretch))));
      }
      rows.add(new ScoreCalculationView.AreaRow(area.area().name(), cells));
    }
    List<String> cells = new ArrayList<>();
    if (scale.method() == Scale.Method.AREAS) {
      cells.add("");
    }
    for (Column column : COLUMNS) {
      cells.add(scale.method() == Scale.Method.AREAS ? "" : cell(sum(column, stretch)));
    }
    return new ScoreCalculationView.Table(
        reading.days(stretch, stretch),
        rows,
        new ScoreCalculationView.AreaRow("All areas", cells),
        COLUMNS.stream().map(column -> formula(column, stretch)).toList());
  }

  private String cell(Tally tally) {
    return scale.method() == Scale.Method.DEDUCTIONS
        ? NumberFormatter.points(tally.possible().subtract(tally.earned()))
        : AreaViewFactory.tally(tally);
  }

  private Tally sum(Column column, int stretch) {
    return judgment.areas().stream()
        .map(area -> column.tally().apply(area.stretches().get(stretch)))
        .reduce(Tally.EMPTY, Tally::plus);
  }

  private String formula(Column column, int stretch) {
    String of = NumberFormatter.points(scale.outOf());
    String score = NumberFormatter.points(column.score().apply(judgment.stretches().get(stretch)));
    Tally sum = sum(column, stretch);
    String how =
        switch (scale.method()) {
          case SUM ->
              sum.isEmpty()
                  ? "nothing counts"
                  : NumberFormatter.points(sum.earned())
                      + " ÷ "
                      + NumberFormatter.points(sum.possible())
                      + " × "
                      + of;
          case DEDUCTIONS -> of + " − " + cell(sum);
          case AREAS -> mean(column, stretch) + " × " + of;
        };
    return column.name() + ": " + how + " = " + score;
  }

  private String mean(Column column, int stretch) {
    List<AreaJudgment> counting =
        judgment.areas().stream()
            .filter(area -> !column.tally().apply(area.stretches().get(stretch)).isEmpty())
            .toList();
    String parts =
        counting.stream()
            .map(
                area -> {
                  Tally tally = column.tally().apply(area.stretches().get(stretch));
                  return NumberFormatter.points(area.area().points())
                      + " × "
                      + NumberFormatter.points(tally.earned())
                      + "/"
                      + NumberFormatter.points(tally.possible());
                })
            .collect(Collectors.joining(" + "));
    long weights = counting.stream().mapToLong(area -> area.area().points()).sum();
    return "("
        + parts
        + ") ÷ "
        + NumberFormatter.points(BigFraction.of(BigInteger.valueOf(weights)));
  }
}
