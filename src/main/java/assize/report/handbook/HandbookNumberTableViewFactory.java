package assize.report.handbook;

import assize.date.DateRange;
import assize.date.DateRangeFormatter;
import assize.report.chart.NumberTableChart;
import assize.report.handbook.HandbookView.Fact;
import assize.report.handbook.HandbookView.NumberRow;
import assize.report.handbook.HandbookView.NumberTableView;
import assize.report.view.AnchorIds;
import assize.ruleset.NumberTable;
import assize.ruleset.NumberTable.Series;
import assize.ruleset.NumberTable.TableEntry;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Number tables: numbers and dates, as tables and drawn. */
final class HandbookNumberTableViewFactory {
  private static final int WIDE = 640;
  private static final int NARROW = 300;

  private final RuleSet rules;

  HandbookNumberTableViewFactory(RuleSet rules) {
    this.rules = rules;
  }

  List<NumberTableView> views() {
    return rules.numberTables().values().stream().map(this::view).toList();
  }

  private NumberTableView view(NumberTable table) {
    Optional<NumberTableChart> lines = lines(table);
    String title = table.name() + ": when numbers were given out";
    String description = "The same as in the tables below.";
    String anchor = "numbers." + AnchorIds.safe(table.id());
    return new NumberTableView(
        table.id(),
        table.name(),
        lines.map(it -> it.draw(anchor, title, description, WIDE)),
        lines.map(it -> it.draw(anchor + ".narrow", title, description, NARROW)),
        table.series().stream().map(this::series).toList());
  }

  private HandbookView.Series series(Series series) {
    List<NumberRow> rows = new ArrayList<>();
    for (TableEntry entry : series.firstNumbers()) {
      rows.add(
          new NumberRow("from " + number(series, entry), DateRangeFormatter.of(entry.built())));
    }
    series
        .last()
        .ifPresent(
            last ->
                rows.add(
                    new NumberRow(
                        "last " + number(series, last), DateRangeFormatter.of(last.built()))));
    return new HandbookView.Series(
        name(series),
        rows,
        series.reserved().stream()
            .map(
                block ->
                    new Fact(
                        block.from() + " to " + block.to(),
                        block.purpose()
                            + block
                                .built()
                                .map(days -> ", " + DateRangeFormatter.of(days))
                                .orElse("")))
            .toList());
  }

  private static String number(Series series, TableEntry entry) {
    return series.prefix() + entry.number() + series.suffix();
  }

  private String name(Series series) {
    String pattern = series.prefix() + "…" + series.suffix();
    List<String> parts = new ArrayList<>();
    parts.add(pattern.equals("…") ? "Plain numbers" : pattern);
    if (!series.models().isEmpty()) {
      parts.add(
          Stream.concat(
                  rules.models().keySet().stream().filter(series.models()::contains),
                  series.models().stream().filter(id -> !rules.models().containsKey(id)).sorted())
              .collect(Collectors.joining(" and ")));
    }
    series.plant().map(id -> rules.plants().getOrDefault(id, id)).ifPresent(parts::add);
    return String.join(", ", parts);
  }

  /** Nothing where a day of the table is open, or no series has two numbers. */
  private Optional<NumberTableChart> lines(NumberTable table) {
    List<NumberTableChart.SeriesRow> rows = new ArrayList<>();
    Optional<DateRange> all = Optional.empty();
    for (Series series : table.series()) {
      List<TableEntry> entries =
          Stream.concat(series.firstNumbers().stream(), series.last().stream()).toList();
      if (entries.stream().anyMatch(one -> one.built().openStart() || one.built().openEnd())) {
        return Optional.empty();
      }
      List<NumberTableChart.Mark> marks = new ArrayList<>();
      for (TableEntry entry : series.firstNumbers()) {
        marks.add(new NumberTableChart.Mark(entry.built().first(), Long.toString(entry.number())));
      }
      series
          .last()
          .ifPresent(
              last ->
                  marks.add(
                      new NumberTableChart.Mark(
                          last.built().last(), Long.toString(last.number()))));
      if (marks.size() > 1) {
        rows.add(new NumberTableChart.SeriesRow(name(series), marks));
      }
      for (TableEntry entry : entries) {
        all = Optional.of(all.map(entry.built()::hull).orElse(entry.built()));
      }
    }
    return rows.isEmpty()
        ? Optional.empty()
        : all.map(days -> new NumberTableChart(days.first(), days.last(), rows));
  }
}
