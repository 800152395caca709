package assize.report.view;

import assize.date.DateRange;
import assize.date.DateRangeFormatter;
import assize.evidence.Claim;
import assize.report.chart.ClaimDatesChart;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import assize.ruleset.Model;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** For which build days each claim on an aspect speaks. */
public final class ClaimDatesViewFactory {
  private static final int WIDE = 680;
  private static final int NARROW = 300;

  private final ReportContext reading;

  public ClaimDatesViewFactory(ReportContext reading) {
    this.reading = reading;
  }

  /** Returns nothing where every claim speaks of all days alike. */
  Optional<DisputeView.Dates> of(Item item, AspectRule rule, String anchor) {
    List<Claim> claims =
        rule.claims().stream().filter(claim -> claim.source().isPresent()).toList();
    DateRange all = window();
    List<ClaimDatesChart.ClaimRow> drawn = new ArrayList<>();
    List<DisputeView.ClaimDatesRow> rows = new ArrayList<>();
    for (Claim claim : claims) {
      List<ClaimDatesChart.Bar> bars = bars(claim, all, claims);
      if (bars.isEmpty()) {
        continue;
      }
      String who = reading.claims().cite(claim.source().orElse(""), "", "").title();
      String says =
          switch (claim.manner()) {
                case SAYS -> "";
                case LEAVES_OPEN -> "leaves open ";
                case RULES_OUT -> "not ";
              }
              + reading.words().any(item, rule.aspect(), claim.values());
      drawn.add(new ClaimDatesChart.ClaimRow(who, says, bars));
      rows.add(new DisputeView.ClaimDatesRow(who, says, words(bars)));
    }
    boolean dated =
        drawn.stream()
            .anyMatch(
                row ->
                    !row.bars().equals(List.of(new ClaimDatesChart.Bar(all.first(), all.last()))));
    if (!dated) {
      return Optional.empty();
    }
    DateRange built = reading.judgment().build().days();
    ClaimDatesChart dates =
        new ClaimDatesChart(all.first(), all.last(), built.first(), built.last(), drawn);
    String title = "Which build days the sources speak of";
    String description =
        rows.stream()
            .map(row -> row.who() + ": " + row.says() + ", " + row.days())
            .collect(Collectors.joining("; "));
    return Optional.of(
        new DisputeView.Dates(
            dates.draw(anchor + "-dates", title, description, WIDE),
            dates.draw(anchor + "-dates-narrow", title, description, NARROW),
            rows));
  }

  /** Returns the build days of which a claim speaks, in words. */
  String days(AspectRule rule, Claim claim) {
    List<Claim> claims = rule.claims().stream().filter(one -> one.source().isPresent()).toList();
    DateRange all = window();
    List<ClaimDatesChart.Bar> bars = bars(claim, all, claims);
    return bars.equals(List.of(new ClaimDatesChart.Bar(all.first(), all.last())))
        ? "all build days"
        : words(bars);
  }

  /** The production of the vehicle's model, or of all models, and its build days. */
  private DateRange window() {
    DateRange built = reading.judgment().build().days();
    LocalDate first = built.first();
    LocalDate last = built.last();
    Optional<String> own = reading.judgment().vehicle().model();
    for (Model model : reading.judgment().rules().models().values()) {
      if (own.isEmpty() || own.get().equals(model.id())) {
        first = first.isBefore(model.production().first()) ? first : model.production().first();
        last = last.isAfter(model.production().last()) ? last : model.production().last();
      }
    }
    return new DateRange(first, last);
  }

  private List<ClaimDatesChart.Bar> bars(Claim claim, DateRange all, List<Claim> claims) {
    TreeSet<LocalDate> cuts = new TreeSet<>(List.of(all.first()));
    for (Claim one : claims) {
      one.scope()
          .buildDays()
          .forEach(
              days -> {
                add(cuts, days.first(), all);
                if (days.last().isBefore(all.last())) {
                  add(cuts, days.last().plusDays(1), all);
                }
              });
    }
    List<ClaimDatesChart.Bar> bars = new ArrayList<>();
    for (LocalDate from : cuts) {
      LocalDate next = cuts.higher(from);
      LocalDate to = next == null ? all.last() : next.minusDays(1);
      if (!reading.claims().speaks(claim, from)) {
        continue;
      }
      int end = bars.size() - 1;
      if (end >= 0 && bars.get(end).last().plusDays(1).equals(from)) {
        bars.set(end, new ClaimDatesChart.Bar(bars.get(end).first(), to));
      } else {
        bars.add(new ClaimDatesChart.Bar(from, to));
      }
    }
    return bars;
  }

  private static void add(TreeSet<LocalDate> cuts, LocalDate day, DateRange all) {
    if (day.isAfter(all.first()) && !day.isAfter(all.last())) {
      cuts.add(day);
    }
  }

  private static String words(List<ClaimDatesChart.Bar> bars) {
    return bars.stream()
        .map(bar -> DateRangeFormatter.of(new DateRange(bar.first(), bar.last())))
        .collect(Collectors.joining("; "));
  }
}
