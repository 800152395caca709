package assize.report.handbook;

import assize.aspect.Expectation;
import assize.date.DateRange;
import assize.date.DateRangeFormatter;
import assize.evidence.DisputeState;
import assize.judgment.AspectJudgment;
import assize.judgment.PositionJudgment;
import assize.report.chart.ExpectationChart;
import assize.report.handbook.HandbookItemView.CourseView;
import assize.report.handbook.HandbookItemView.PositionView;
import assize.report.handbook.HandbookItemView.StandView;
import assize.report.handbook.HandbookItemView.TimelineCharts;
import assize.report.view.CiteView;
import assize.report.view.NumberFormatter;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import assize.timeline.TimelineEntry;
import assize.timeline.VehicleTimeline;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How an aspect stands over the production of some vehicles. */
public final class HandbookTimelines {
  private static final int WIDE = 640;
  private static final int NARROW = 300;

  private final HandbookContext reading;

  HandbookTimelines(HandbookContext reading) {
    this.reading = reading;
  }

  /** Returns how far sources agree, as the handbook says it. */
  public static String state(DisputeState state) {
    return switch (state) {
      case AGREED, SETTLED, DISPUTED -> state.word();
      case UNSOURCED -> "no source named";
    };
  }

  /**
   * Returns one course.
   *
   * @param only whether it is that of all vehicles to which the item applies
   */
  CourseView view(Item item, AspectRule rule, VehicleTimeline course, boolean only, String anchor) {
    List<Merged> merged = new ArrayList<>();
    for (TimelineEntry stand : course.stands()) {
      StandView told = stand(item, rule, stand);
      int end = merged.size() - 1;
      boolean goesOn =
          end >= 0
              && merged.get(end).told().equals(told)
              && merged.get(end).days().last().plusDays(1).equals(stand.days().first());
      if (goesOn) {
        merged.set(end, new Merged(merged.get(end).days().hull(stand.days()), told));
      } else {
        merged.add(new Merged(stand.days(), told));
      }
    }
    return new CourseView(
        only ? "" : reading.scopes().of(course.vehicles()),
        merged.size() < 2 ? Optional.empty() : line(item, rule, course, anchor),
        merged.stream().map(one -> one.dated(course.window())).toList());
  }

  /** Build days for which the same is told, whoever speaks. */
  private record Merged(DateRange days, StandView told) {
    StandView dated(DateRange window) {
      return new StandView(
          days.equals(window) ? "" : DateRangeFormatter.of(days),
          told.right(),
          told.state(),
          told.positions(),
          told.conflict());
    }
  }

  private StandView stand(Item item, AspectRule rule, TimelineEntry stand) {
    if (stand.outcome().isEmpty()) {
      return new StandView("", "", "no source speaks; not judged", List.of(), "");
    }
    AspectJudgment outcome = stand.outcome().get();
    String right =
        outcome.positions().stream()
            .filter(PositionJudgment::scored)
            .map(position -> words(item, rule, position))
            .collect(Collectors.joining("; or else "));
    boolean differ =
        outcome.dispute() == DisputeState.DISPUTED || outcome.dispute() == DisputeState.SETTLED;
    return new StandView(
        "",
        right,
        state(outcome.dispute()),
        differ
            ? outcome.positions().stream().map(it -> position(item, rule, it)).toList()
            : List.of(),
        outcome.conflict() > 0
            ? "Conflict K " + NumberFormatter.mass(outcome.conflict()) + "."
            : "");
  }

  private String words(Item item, AspectRule rule, PositionJudgment position) {
    return reading.words().any(item, rule.aspect(), position.accepts());
  }

  private PositionView position(Item item, AspectRule rule, PositionJudgment one) {
    List<CiteView> by = new ArrayList<>();
    one.sources().forEach(source -> by.add(reading.cite(source, "")));
    for (String echo : one.repeatingSources()) {
      CiteView cite = reading.cite(echo, "");
      by.add(new CiteView(cite.anchor(), cite.title(), cite.grade(), "", copied(echo)));
    }
    return new PositionView(
        words(item, rule, one),
        NumberFormatter.mass(one.belief()),
        NumberFormatter.mass(one.plausibility()),
        one.scored(),
        by);
  }

  private String copied(String source) {
    return Stream.ofNullable(reading.rules().sources().get(source))
        .flatMap(
            it ->
                reading.rules().sources().values().stream()
                    .filter(other -> it.copies().contains(other.id())))
        .map(other -> other.title())
        .collect(Collectors.joining(" and "));
  }

  /** Draws what is right when; nothing where no production bounds it. */
  private Optional<TimelineCharts> line(
      Item item, AspectRule rule, VehicleTimeline course, String anchor) {
    DateRange window = course.window();
    if (window.openStart() || window.openEnd()) {
      return Optional.empty();
    }
    Map<String, List<ExpectationChart.Bar>> bars = new LinkedHashMap<>();
    Map<String, Expectation> values = new LinkedHashMap<>();
    List<ExpectationChart.Bar> silent = new ArrayList<>();
    for (TimelineEntry stand : course.stands()) {
      if (stand.outcome().isEmpty()) {
        silent.add(bar(stand, ExpectationChart.Stand.SILENT));
        continue;
      }
      Map<String, ExpectationChart.Stand> now = new LinkedHashMap<>();
      for (PositionJudgment position : stand.outcome().get().positions()) {
        ExpectationChart.Stand as = as(stand.outcome().get(), position);
        for (Expectation value : position.accepts()) {
          String key = reading.words().one(item, rule.aspect(), value);
          values.putIfAbsent(key, value);
          now.merge(key, as, (a, b) -> a.compareTo(b) <= 0 ? a : b);
        }
      }
      now.forEach(
          (key, as) -> add(bars.computeIfAbsent(key, it -> new ArrayList<>()), bar(stand, as)));
    }
    List<ExpectationChart.PeriodRow> rows = new ArrayList<>();
    bars.forEach(
        (says, some) -> rows.add(new ExpectationChart.PeriodRow(says, dates(some, window), some)));
    if (!silent.isEmpty()) {
      rows.add(new ExpectationChart.PeriodRow("No source speaks", dates(silent, window), silent));
    }
    ExpectationChart line = new ExpectationChart(window.first(), window.last(), rows);
    String title = "What is right when: " + item.title() + ", " + rule.aspect().spoken();
    String description =
        rows.stream().map(row -> row.says() + ": " + row.dates()).collect(Collectors.joining("; "));
    return Optional.of(
        new TimelineCharts(
            line.draw(anchor, title, description, WIDE),
            line.draw(anchor + ".narrow", title, description, NARROW)));
  }

  private static ExpectationChart.Stand as(AspectJudgment outcome, PositionJudgment position) {
    if (!position.scored()) {
      return ExpectationChart.Stand.ASIDE;
    }
    return outcome.dispute() == DisputeState.DISPUTED
        ? ExpectationChart.Stand.OPEN
        : ExpectationChart.Stand.RIGHT;
  }

  private static ExpectationChart.Bar bar(TimelineEntry stand, ExpectationChart.Stand as) {
    return new ExpectationChart.Bar(stand.days().first(), stand.days().last(), as);
  }

  /** Adds a bar, as one with that before it where it goes on from there. */
  private static void add(List<ExpectationChart.Bar> bars, ExpectationChart.Bar bar) {
    int end = bars.size() - 1;
    if (end >= 0
        && bars.get(end).stand() == bar.stand()
        && bars.get(end).last().plusDays(1).equals(bar.first())) {
      bars.set(end, new ExpectationChart.Bar(bars.get(end).first(), bar.last(), bar.stand()));
    } else {
      bars.add(bar);
    }
  }

  /** Returns as in "until 31 August 1934; in dispute from 1 September 1934". */
  private static String dates(List<ExpectationChart.Bar> bars, DateRange window) {
    return bars.stream()
        .map(
            bar -> {
              String as =
                  switch (bar.stand()) {
                    case RIGHT, SILENT -> "";
                    case OPEN -> "disputed ";
                    case ASIDE -> "not judged by ";
                  };
              boolean fromStart = bar.first().equals(window.first());
              boolean toEnd = bar.last().equals(window.last());
              return as
                  + (fromStart && toEnd
                      ? "throughout"
                      : fromStart
                          ? "until " + DateRangeFormatter.of(bar.last())
                          : toEnd
                              ? "from " + DateRangeFormatter.of(bar.first())
                              : DateRangeFormatter.of(new DateRange(bar.first(), bar.last())));
            })
        .collect(Collectors.joining("; "));
  }
}
