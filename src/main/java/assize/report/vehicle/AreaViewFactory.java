package assize.report.vehicle;

import assize.judgment.AreaJudgment;
import assize.judgment.ItemJudgment;
import assize.judgment.ScoreRange;
import assize.judgment.Tally;
import assize.report.chart.RangeBars;
import assize.report.view.AnchorIds;
import assize.report.view.FilterViewFactory;
import assize.report.view.ItemViewFactory;
import assize.report.view.NumberFormatter;
import assize.report.view.ReportContext;
import assize.ruleset.Item;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The areas in words, each with its items. */
final class AreaViewFactory {
  private final ReportContext reading;
  private final ItemViewFactory items;

  AreaViewFactory(ReportContext reading, ItemViewFactory items) {
    this.reading = reading;
    this.items = items;
  }

  AreaView of(AreaJudgment one) {
    List<ItemJudgment> own =
        reading.judgment().items().stream()
            .filter(item -> item.item().area().equals(one.area().id()))
            .toList();
    ScoreRange earned = one.earned();
    double possible = Math.max(one.possible(), Math.max(earned.high(), 1));
    return new AreaView(
        AnchorIds.area(one.area().id()),
        one.area().name(),
        FilterViewFactory.mark(reading.judgment().areas().indexOf(one)),
        Integer.toString(own.size()),
        NumberFormatter.points(earned.low()),
        NumberFormatter.points(earned.likely()),
        NumberFormatter.points(earned.high()),
        NumberFormatter.points(one.possible()),
        one.area().maxLoss().isPresent()
            ? "It loses at most "
                + NumberFormatter.points(one.area().maxLoss().getAsLong())
                + " points."
            : "",
        RangeBars.earned(
            one.area().name(),
            NumberFormatter.range(earned)
                + " of "
                + NumberFormatter.points(one.possible())
                + " points",
            earned.low() / possible,
            earned.likely() / possible,
            earned.high() / possible),
        own.stream().filter(item -> !ItemViewFactory.isNotApplicable(item)).map(items::of).toList(),
        own.stream()
            .filter(ItemViewFactory::isNotApplicable)
            .map(
                item ->
                    new AreaView.NotApplicable(
                        AnchorIds.item(item.item().id()), item.item().title()))
            .toList(),
        sums(one));
  }

  private List<String> sums(AreaJudgment one) {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < one.stretches().size(); i++) {
      AreaJudgment.AreaInPeriod here = one.stretches().get(i);
      String days = reading.days(i, i);
      String start = days.isEmpty() ? "" : "Built " + days + ": ";
      lines.add(start + "low " + tally(here.low()) + out(here.outOfLow()) + ".");
      lines.add(start + "likely " + tally(here.likely()) + ".");
      lines.add(start + "high " + tally(here.high()) + out(here.outOfHigh()) + ".");
      for (AreaJudgment.CreditedBack spared : here.creditedBack()) {
        lines.add(start + creditedBack(spared));
      }
    }
    return lines;
  }

  private String out(Set<String> items) {
    return items.isEmpty()
        ? ""
        : reading.judgment().items().stream()
            .map(ItemJudgment::item)
            .filter(item -> items.contains(item.id()))
            .map(Item::title)
            .collect(Collectors.joining(", ", ", leaving out what may not apply: ", ""));
  }

  private static String creditedBack(AreaJudgment.CreditedBack spared) {
    String why =
        spared.reason().isEmpty()
            ? "the area had lost all that it may lose"
            : "items share the cause “" + spared.reason() + "”";
    return "given back, since "
        + why
        + ": "
        + NumberFormatter.points(spared.low())
        + " low, "
        + NumberFormatter.points(spared.likely())
        + " likely, "
        + NumberFormatter.points(spared.high())
        + " high.";
  }

  /** Returns {@code "12.5 of 20"}. */
  static String tally(Tally tally) {
    return NumberFormatter.points(tally.earned())
        + " of "
        + NumberFormatter.points(tally.possible());
  }
}
