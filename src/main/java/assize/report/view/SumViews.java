package assize.report.view;

import assize.judgment.AreaJudgment;
import assize.judgment.Judgment;
import assize.judgment.Stretch;
import assize.judgment.Tally;
import assize.ruleset.Scale;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** How the areas add up to the score. */
final class SumViews {
  private final Reading reading;
  private final Judgment judgment;
  private final Scale scale;

  SumViews(Reading reading) {
    this.reading = reading;
    this.judgment = reading.judgment();
    this.scale = judgment.rules().scale();
  }

  /** One of the three scores: its name, and where it is found. */
  private record Column(
      String name,
      Function<AreaJudgment.AreaInStretch, Tally> tally,
      Function<Stretch, Long> score) {}

  private static final List<Column> COLUMNS =
      List.of(
          new Column("Low", AreaJudgment.AreaInStretch::low, stretch -> stretch.score().low()),
          new Column(
              "Likely", AreaJudgment.AreaInStretch::likely, stretch -> stretch.score().likely()),
          new Column("High", AreaJudgment.AreaInStretch::high, stretch -> stretch.score().high()));

  SumView view() {
    List<SumView.Table> tables = new ArrayList<>();
    for (int i = 0; i < reading.stretches(); i++) {
      tables.add(table(i));
    }
    return new SumView(method(), headings(), tables);
  }

  private String method() {
    String of = Numbers.points(scale.outOf());
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

  private SumView.Table table(int stretch) {
    List<SumView.Row> rows = new ArrayList<>();
    for (AreaJudgment area : judgment.areas()) {
      List<String> cells = new ArrayList<>();
      if (scale.method() == Scale.Method.AREAS) {
        cells.add(Numbers.points(area.area().points()));
      }
      for (Column column : COLUMNS) {
        cells.add(cell(column.tally().apply(area.stretches().get(stretch))));
      }
      rows.add(new SumView.Row(area.area().name(), cells));
    }
    List<String> cells = new ArrayList<>();
    if (scale.method() == Scale.Method.AREAS) {
      cells.add("");
    }
    for (Column column : COLUMNS) {
      cells.add(scale.method() == Scale.Method.AREAS ? "" : cell(sum(column, stretch)));
    }
    return new SumView.Table(
        reading.days(stretch, stretch),
        rows,
        new SumView.Row("All areas", cells),
        COLUMNS.stream().map(column -> formula(column, stretch)).toList());
  }

  private String cell(Tally tally) {
    return scale.method() == Scale.Method.DEDUCTIONS
        ? Numbers.points(tally.possible().subtract(tally.earned()))
        : AreaViews.tally(tally);
  }

  private Tally sum(Column column, int stretch) {
    return judgment.areas().stream()
        .map(area -> column.tally().apply(area.stretches().get(stretch)))
        .reduce(Tally.EMPTY, Tally::plus);
  }

  private String formula(Column column, int stretch) {
    String of = Numbers.points(scale.outOf());
    String score = Numbers.points(column.score().apply(judgment.stretches().get(stretch)));
    Tally sum = sum(column, stretch);
    String how =
        switch (scale.method()) {
          case SUM ->
              sum.isEmpty()
                  ? "nothing counts"
                  : Numbers.points(sum.earned())
                      + " ÷ "
                      + Numbers.points(sum.possible())
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
                  return Numbers.points(area.area().points())
                      + " × "
                      + Numbers.points(tally.earned())
                      + "/"
                      + Numbers.points(tally.possible());
                })
            .collect(Collectors.joining(" + "));
    long weights = counting.stream().mapToLong(area -> area.area().points()).sum();
    return "(" + parts + ") ÷ " + Numbers.points(BigFraction.of(BigInteger.valueOf(weights)));
  }
}
