package assize.report.text;

import assize.check.Coverage;
import assize.check.Coverage.Reach;
import assize.check.Coverage.Stretch;
import assize.date.DateRange;
import assize.ruleset.Area;
import assize.ruleset.Model;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Draws which stretches of production claims cover, for a terminal of 80 columns in black and
 * white. Each bar stands beside the same in words.
 */
public final class CoverageTable {
  private static final int COLUMNS = 80;
  private static final int WIDEST_BAR = 32;
  private static final int NARROWEST_BAR = 8;

  /** The widest words beside a bar: {@code in part 1934-07-01 to 1934-07-31}. */
  private static final int WORDS = 33;

  private static final String KEY =
      """
      Each bar is a model's production, from its first day to its last.
        #  a claim says what is right     .  no claim does
        -  one does, of some vehicles built then and not of others
           (blank) the item does not apply
      """;

  private final RuleSet rules;
  private final boolean whole;
  private final int nameWidth;
  private final int barWidth;
  private final List<String> lines = new ArrayList<>();

  private CoverageTable(RuleSet rules, boolean whole) {
    this.rules = rules;
    this.whole = whole;
    this.nameWidth =
        rules.models().keySet().stream().mapToInt(TerminalEscaper::columns).max().orElse(0);
    this.barWidth = Math.max(NARROWEST_BAR, Math.min(WIDEST_BAR, COLUMNS - nameWidth - WORDS - 11));
  }

  /**
   * Draws the items of a rule set by area.
   *
   * @param whole whether items without a gap are drawn too
   * @return lines without their ends
   */
  public static List<String> lines(RuleSet rules, List<Coverage> items, boolean whole) {
    CoverageTable table = new CoverageTable(rules, whole);
    table.wrap("", rules.name() + ", edition " + rules.edition());
    table.lines.add("");
    table.lines.addAll(KEY.lines().toList());
    for (Area area : rules.areas()) {
      table.area(area, items.stream().filter(it -> it.item().area().equals(area.id())).toList());
    }
    long gaps = items.stream().filter(CoverageTable::hasGap).count();
    table.lines.add("");
    table.lines.add(
        count(items.size(), "item", "items")
            + ", "
            + (gaps == 0
                ? "all covered."
                : gaps + " with a stretch that no claim covers, or not for every vehicle."));
    return table.lines;
  }

  private static String count(int count, String one, String many) {
    return count + " " + (count == 1 ? one : many);
  }

  private static boolean hasGap(Coverage item) {
    return item.aspects().stream().anyMatch(CoverageTable::hasGap);
  }

  private static boolean hasGap(Coverage.OfAspect aspect) {
    return aspect.stretches().values().stream().anyMatch(CoverageTable::hasGap);
  }

  private static boolean hasGap(List<Stretch> stretches) {
    return stretches.stream().anyMatch(it -> isGap(it.reach()));
  }

  private static boolean isGap(Reach reach) {
    return reach == Reach.UNCOVERED || reach == Reach.IN_PART;
  }

  private void area(Area area, List<Coverage> items) {
    List<Coverage> gaps = items.stream().filter(CoverageTable::hasGap).toList();
    lines.add("");
    wrap(
        "",
        area.name()
            + ": "
            + count(items.size(), "item", "items")
            + ", "
            + (gaps.isEmpty() ? "all covered" : gaps.size() + " with gaps"));
    (whole ? items : gaps).forEach(this::item);
  }

  private void item(Coverage item) {
    lines.add("");
    wrap("  ", item.item().title() + " (" + item.item().id() + ")");
    for (Coverage.OfAspect aspect : item.aspects()) {
      if (whole || hasGap(aspect)) {
        lines.add("    " + aspect.aspect().spoken());
        aspect
            .stretches()
            .forEach(
                (model, stretches) -> {
                  if (whole || hasGap(stretches)) {
                    bar(model, stretches);
                  }
                });
      }
    }
  }

  private void bar(String model, List<Stretch> stretches) {
    Optional<DateRange> built =
        Optional.ofNullable(rules.models().get(model)).map(Model::production);
    List<String> words =
        stretches.stream()
            .filter(it -> isGap(it.reach()))
            .map(CoverageTable::words)
            .collect(Collectors.toCollection(ArrayList::new));
    if (words.isEmpty()) {
      words.add(
          stretches.stream().allMatch(it -> it.reach() == Reach.NONE_NEEDED)
              ? "does not apply"
              : "covered");
    }
    String shown = TerminalEscaper.of(model);
    String head =
        "      "
            + shown
            + " ".repeat(Math.max(0, nameWidth - TerminalEscaper.columns(shown)))
            + " |"
            + built.map(days -> drawn(days, stretches)).orElse("")
            + "| ";
    lines.add(head + words.get(0));
    words.stream().skip(1).forEach(it -> lines.add(" ".repeat(TerminalEscaper.columns(head)) + it));
  }

  private static String words(Stretch stretch) {
    return (stretch.reach() == Reach.IN_PART ? "in part " : "none ")
        + stretch.days().first()
        + " to "
        + stretch.days().last();
  }

  /** Draws a stretch into each place that it has a day in; a gap is never too short to be seen. */
  private String drawn(DateRange built, List<Stretch> stretches) {
    StringBuilder bar = new StringBuilder();
    long days = built.days();
    for (int i = 0; i < barWidth; i++) {
      long first = days * i / barWidth;
      long last = Math.max(first, days * (i + 1) / barWidth - 1);
      DateRange here = DateRange.of(built.first().plusDays(first), built.first().plusDays(last));
      bar.append(
          sign(
              stretches.stream()
                  .filter(it -> it.days().overlaps(here))
                  .map(Stretch::reach)
                  .reduce(Reach.NONE_NEEDED, (a, b) -> a.compareTo(b) >= 0 ? a : b)));
    }
    return bar.toString();
  }

  private static char sign(Reach reach) {
    return switch (reach) {
      case NONE_NEEDED -> ' ';
      case COVERED -> '#';
      case IN_PART -> '-';
      case UNCOVERED -> '.';
    };
  }

  /** Adds a text on as many lines as it takes, the later ones further in. */
  private void wrap(String indent, String text) {
    StringBuilder line = new StringBuilder(indent);
    boolean first = true;
    for (String word : TerminalEscaper.of(text).split(" ")) {
      boolean full = TerminalEscaper.columns(line + " " + word) > COLUMNS;
      if (full && !first) {
        lines.add(line.toString());
        line = new StringBuilder(indent + "  ");
        first = true;
      }
      line.append(first ? "" : " ").append(word);
      first = false;
    }
    lines.add(line.toString());
  }
}
