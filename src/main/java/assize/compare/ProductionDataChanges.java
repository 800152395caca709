package assize.compare;

import assize.date.DateRangeFormatter;
import assize.production.VehicleAttribute;
import assize.ruleset.Model;
import assize.ruleset.NumberTable;
import assize.ruleset.NumberTable.Reserved;
import assize.ruleset.NumberTable.Series;
import assize.ruleset.NumberTable.TableEntry;
import assize.ruleset.RuleSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What changed of models, works, markets, equipment and number tables. */
final class ProductionDataChanges {
  private static final List<Property<Model>> MODEL =
      List.of(
          Property.wording(Model.NAME, "name"),
          Property.altering(
              Model.PRODUCTION, "production", it -> Optional.of(new ChangedValue.Days(it))));

  private static final List<Property<Series>> SERIES =
      List.of(
          new Property<>("models", true, it -> models(it).map(ChangedValue.Words::new)),
          Property.altering(Series.PLANT, "works", it -> it.map(ChangedValue.Words::new)),
          new Property<>("numbers", true, it -> Optional.of(new ChangedValue.Words(entries(it)))),
          Property.altering(
              Series.LAST,
              "last number",
              it -> it.map(last -> new ChangedValue.Words(entry(last)))),
          new Property<>("set aside", true, it -> reserved(it).map(ChangedValue.Words::new)));

  private final RuleSet before;
  private final RuleSet after;
  private final AffectedItems bearing;

  ProductionDataChanges(RuleSet before, RuleSet after, AffectedItems bearing) {
    this.before = before;
    this.after = after;
    this.bearing = bearing;
  }

  void into(List<Change> changes) {
    new ChangeCollector(changes, RuleSetPart.MODEL, Effect.BUILD_DATES)
        .each(
            before.models(),
            after.models(),
            id -> id,
            Model::name,
            id -> bearing.all(),
            (of, both) -> Property.compare(MODEL, of, both.before(), both.after()));
    named(
        changes,
        RuleSetPart.PLANT,
        before.plants(),
        after.plants(),
        new VehicleAttribute.OfPlant());
    named(
        changes,
        RuleSetPart.MARKET,
        before.markets(),
        after.markets(),
        new VehicleAttribute.OfMarket());
    new ChangeCollector(changes, RuleSetPart.EQUIPMENT)
        .each(
            before.equipment(),
            after.equipment(),
            id -> id,
            name -> name,
            id -> bearing.asking(new VehicleAttribute.OfEquipment(id)),
            (of, both) -> of.words("name", false, both.before(), both.after()));
    new ChangeCollector(changes, RuleSetPart.NUMBERS, Effect.BUILD_DATES)
        .each(
            before.numberTables(),
            after.numberTables(),
            id -> id,
            NumberTable::name,
            bearing::numbered,
            (of, both) -> table(of, both.before(), both.after()));
  }

  private void named(
      List<Change> changes,
      RuleSetPart part,
      Map<String, String> old,
      Map<String, String> now,
      VehicleAttribute question) {
    new ChangeCollector(changes, part)
        .each(
            old,
            now,
            id -> id,
            name -> name,
            id -> bearing.asking(question),
            (of, both) -> of.words("name", false, both.before(), both.after()));
  }

  private static void table(ChangeCollector.Of of, NumberTable before, NumberTable after) {
    of.words("name", false, before.name(), after.name());
    List<Series> old = without(before.series(), after.series());
    Pairing<Series> come = new Pairing<>(without(after.series(), before.series()));
    List<Series> gone =
        come.pair(old, ProductionDataChanges::ends, (one, other) -> series(of, one, other));
    gone.forEach(
        one -> of.words("series " + name(one), true, Optional.of(all(one)), Optional.empty()));
    come.left()
        .forEach(
            now -> of.words("series " + name(now), true, Optional.empty(), Optional.of(all(now))));
    boolean sameSeries = gone.isEmpty() && come.left().isEmpty();
    List<String> order = before.series().stream().map(ProductionDataChanges::name).toList();
    List<String> newOrder = after.series().stream().map(ProductionDataChanges::name).toList();
    if (sameSeries && !order.equals(newOrder)) {
      of.words("order of the series", false, String.join(", ", order), String.join(", ", newOrder));
    }
  }

  private static List<Series> without(List<Series> all, List<Series> others) {
    Set<Series> known = new HashSet<>(others);
    return all.stream().filter(it -> !known.contains(it)).toList();
  }

  /** Returns what is equal for series of the same numbers. */
  private static Object ends(Series series) {
    return List.of(series.prefix(), series.suffix());
  }

  private static void series(ChangeCollector.Of of, Series before, Series after) {
    String head = "series " + name(after) + ": ";
    for (Property<Series> one : SERIES) {
      of.check(
          head + one.what(), one.alters(), one.value().apply(before), one.value().apply(after));
    }
  }

  private static String name(Series series) {
    return series.prefix() + "…" + series.suffix();
  }

  private static String all(Series series) {
    return entries(series)
        + series.last().map(last -> "; last " + entry(last)).orElse("")
        + models(series).map(it -> "; " + it).orElse("");
  }

  private static Optional<String> models(Series series) {
    return series.models().isEmpty()
        ? Optional.empty()
        : Optional.of(series.models().stream().sorted().collect(Collectors.joining(", ")));
  }

  private static String entries(Series series) {
    return series.firstNumbers().stream()
        .map(ProductionDataChanges::entry)
        .collect(Collectors.joining("; "));
  }

  private static String entry(TableEntry entry) {
    return entry.number() + ": " + DateRangeFormatter.of(entry.built());
  }

  private static Optional<String> reserved(Series series) {
    return series.reserved().isEmpty()
        ? Optional.empty()
        : Optional.of(
            series.reserved().stream()
                .map(ProductionDataChanges::block)
                .collect(Collectors.joining("; ")));
  }

  private static String block(Reserved block) {
    return block.from()
        + " to "
        + block.to()
        + ": "
        + block.purpose()
        + block.built().map(days -> ", " + DateRangeFormatter.of(days)).orElse("");
  }
}
