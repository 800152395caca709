package assize.report.handbook;

import assize.aspect.DateCodes;
import assize.aspect.Expectation;
import assize.aspect.PartNumbers;
import assize.pattern.NumberPattern;
import assize.report.handbook.HandbookView.Fact;
import assize.report.handbook.HandbookView.IndexEntry;
import assize.report.handbook.HandbookView.Stamp;
import assize.report.view.AnchorIds;
import assize.report.view.EdtfFormatter;
import assize.report.view.FileView;
import assize.report.view.HazardView;
import assize.report.view.NumberFormatter;
import assize.ruleset.Area;
import assize.ruleset.Hazard;
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

/** Makes the handbook of a rule set. */
public final class HandbookViewFactory {
  private final RuleSet rules;
  private final HandbookContext reading;

  private HandbookViewFactory(RuleSet rules) {
    this.rules = rules;
    this.reading = new HandbookContext(rules);
  }

  /** Returns the handbook, finished. */
  public static HandbookView of(RuleSet rules) {
    return new HandbookViewFactory(rules).view();
  }

  private HandbookView view() {
    HandbookVocabularyViewFactory words = new HandbookVocabularyViewFactory(reading);
    HandbookSourceViewFactory sources = new HandbookSourceViewFactory(reading);
    return new HandbookView(
        rules.id(),
        rules.name(),
        edition(rules),
        facts(),
        rules.purpose().orElse(""),
        rules.notes().orElse(""),
        new HandbookScoringViewFactory(rules).view(),
        words.vehicles(),
        new HandbookNumberTableViewFactory(rules).views(),
        areas(),
        words.words(),
        sources.entries(),
        sources.copying(),
        sources.uncited(),
        hazards(),
        Hazard.THEN,
        index(),
        stamps(),
        rules.files().stream()
            .map(file -> new FileView(file.path(), file.sha256(), "rule set"))
            .toList());
  }

  /** Returns as in "edition 3, March 2026". */
  public static String edition(RuleSet rules) {
    return "edition "
        + rules.edition()
        + rules.issued().map(date -> ", " + EdtfFormatter.date(date)).orElse("");
  }

  private List<Fact> facts() {
    List<Fact> facts = new ArrayList<>();
    rules.maker().ifPresent(maker -> facts.add(new Fact("Maker", maker)));
    facts.add(new Fact("Edition", rules.edition()));
    rules.issued().ifPresent(date -> facts.add(new Fact("Issued", EdtfFormatter.date(date))));
    facts.add(
        new Fact(
            "Holds",
            NumberFormatter.count(rules.items().count(), "item", "items")
                + " in "
                + NumberFormatter.count(rules.areas().size(), "area", "areas")
                + ", by "
                + NumberFormatter.count(rules.sources().size(), "source", "sources")));
    facts.add(new Fact("Full score", NumberFormatter.points(rules.scale().outOf())));
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

  private List<HandbookAreaView> areas() {
    HandbookItemViewFactory views = new HandbookItemViewFactory(reading);
    List<HandbookAreaView> areas = new ArrayList<>();
    int number = 0;
    for (Area area : rules.areas()) {
      List<HandbookItemView> items = new ArrayList<>();
      for (Item item : area.items()) {
        items.add(views.view(item, ++number));
      }
      String points =
          NumberFormatter.points(area.points())
              + " points"
              + (area.maxLoss().isPresent()
                  ? ", of which it loses at most "
                      + NumberFormatter.points(area.maxLoss().getAsLong())
                  : "");
      areas.add(
          new HandbookAreaView(AnchorIds.area(area.id()), area.id(), area.name(), points, items));
    }
    return areas;
  }

  private List<HazardView> hazards() {
    return Arrays.stream(Hazard.values())
        .map(
            hazard ->
                new HazardView(
                    AnchorIds.hazard(hazard.word()),
                    hazard.word(),
                    hazard.precaution(),
                    reading.items(item -> item.hazards().contains(hazard))))
        .filter(hazard -> !hazard.items().isEmpty())
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
                    one.getKey(), one.getValue().stream().map(HandbookContext::link).toList()))
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
        HandbookContext.claims(item).stream().flatMap(it -> it.values().stream()).toList()) {
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
    return new Stamp(text, what, HandbookContext.link(item));
  }
}
