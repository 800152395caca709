package assize.report.view;

import assize.aspect.DateCodes;
import assize.aspect.Expectation;
import assize.aspect.NumberPattern;
import assize.aspect.PartNumbers;
import assize.report.view.GuideView.Fact;
import assize.report.view.GuideView.IndexEntry;
import assize.report.view.GuideView.Stamp;
import assize.ruleset.Area;
import assize.ruleset.Caution;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Makes the book of a rule set. */
public final class GuideViews {
  private final RuleSet rules;
  private final GuideReading reading;

  private GuideViews(RuleSet rules) {
    this.rules = rules;
    this.reading = new GuideReading(rules);
  }

  /** Returns the book, finished. */
  public static GuideView of(RuleSet rules) {
    return new GuideViews(rules).view();
  }

  private GuideView view() {
    GuideWordViews words = new GuideWordViews(reading);
    GuideSourceViews sources = new GuideSourceViews(reading);
    return new GuideView(
        rules.id(),
        rules.name(),
        edition(rules),
        facts(),
        rules.purpose().orElse(""),
        rules.notes().orElse(""),
        new GuideScoringViews(rules).view(),
        words.vehicles(),
        new GuideTableViews(rules).views(),
        areas(),
        words.words(),
        sources.entries(),
        sources.copying(),
        sources.uncited(),
        cautions(),
        Caution.THEN,
        index(),
        stamps(),
        rules.files().stream()
            .map(file -> new ReportView.FileView(file.path(), file.sha256(), "rule set"))
            .toList());
  }

  /** Returns as in "edition 3, March 2026". */
  static String edition(RuleSet rules) {
    return "edition "
        + rules.edition()
        + rules.issued().map(date -> ", " + DayTexts.date(date)).orElse("");
  }

  private List<Fact> facts() {
    List<Fact> facts = new ArrayList<>();
    rules.maker().ifPresent(maker -> facts.add(new Fact("Maker", maker)));
    facts.add(new Fact("Edition", rules.edition()));
    rules.issued().ifPresent(date -> facts.add(new Fact("Issued", DayTexts.date(date))));
    facts.add(
        new Fact(
            "Holds",
            Numbers.count(rules.items().count(), "item", "items")
                + " in "
                + Numbers.count(rules.areas().size(), "area", "areas")
                + ", by "
                + Numbers.count(rules.sources().size(), "source", "sources")));
    facts.add(new Fact("Full score", Numbers.points(rules.scale().outOf())));
    facts.add(new Fact("Name in records", rules.id()));
    if (!rules.files().isEmpty()) {
      facts.add(
          new Fact(
              "SHA-256",
              rules.files().size() == 1
                  ? rules.files().get(0).sha256()
                  : "of each of its " + rules.files().size() + " files: on the last page"));
    }
    return facts;
  }

  private List<GuideAreaView> areas() {
    GuideItemViews views = new GuideItemViews(reading);
    List<GuideAreaView> areas = new ArrayList<>();
    int number = 0;
    for (Area area : rules.areas()) {
      List<GuideItemView> items = new ArrayList<>();
      for (Item item : area.items()) {
        items.add(views.view(item, ++number));
      }
      String points =
          Numbers.points(area.points())
              + " points"
              + (area.most().isPresent()
                  ? ", of which it loses at most " + Numbers.points(area.most().getAsLong())
                  : "");
      areas.add(new GuideAreaView(Anchors.area(area.id()), area.id(), area.name(), points, items));
    }
    return areas;
  }

  private List<ReportView.CautionView> cautions() {
    return Arrays.stream(Caution.values())
        .map(
            caution ->
                new ReportView.CautionView(
                    Anchors.caution(caution.word()),
                    caution.word(),
                    caution.precaution(),
                    reading.items(item -> item.cautions().contains(caution))))
        .filter(caution -> !caution.items().isEmpty())
        .toList();
  }

  private List<IndexEntry> index() {
    Map<String, List<Item>> letters = new TreeMap<>();
    rules
        .items()
        .sorted(
            Comparator.comparing((Item item) -> item.title().toLowerCase(Locale.ROOT))
                .thenComparing(Item::id))
        .forEach(item -> letters.computeIfAbsent(letter(item), it -> new ArrayList<>()).add(item));
    return letters.entrySet().stream()
        .map(
            one ->
                new IndexEntry(
                    one.getKey(), one.getValue().stream().map(GuideReading::link).toList()))
        .toList();
  }

  private static String letter(Item item) {
    return item.title()
        .codePoints()
        .filter(Character::isLetterOrDigit)
        .mapToObj(c -> Character.toString(c).toUpperCase(Locale.ROOT))
        .findFirst()
        .orElse("…");
  }

  private List<Stamp> stamps() {
    Map<List<String>, Stamp> stamps = new LinkedHashMap<>();
    rules.items().forEach(item -> gather(item, stamps));
    return stamps.values().stream()
        .sorted(
            Comparator.comparing((Stamp stamp) -> NumberPattern.fold(stamp.text()))
                .thenComparing(Stamp::text)
                .thenComparing(stamp -> stamp.item().anchor()))
        .toList();
  }

  private static void gather(Item item, Map<List<String>, Stamp> stamps) {
    for (Expectation value :
        GuideReading.claims(item).stream().flatMap(it -> it.values().stream()).toList()) {
      Optional<Stamp> stamp =
          value instanceof PartNumbers.Right part
              ? Optional.of(
                  stamp(part.number().text(), part.number().isPlain() ? "number" : "pattern", item))
              : value instanceof DateCodes.Right made
                  ? Optional.of(stamp(made.code().text(), "date code", item))
                  : Optional.empty();
      stamp.ifPresent(it -> stamps.putIfAbsent(List.of(it.text(), it.what(), item.id()), it));
    }
  }

  private static Stamp stamp(String text, String what, Item item) {
    return new Stamp(text, what, GuideReading.link(item));
  }
}
