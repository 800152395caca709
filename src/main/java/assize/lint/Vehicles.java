package assize.lint;

import assize.date.DaySpan;
import assize.evidence.Scope;
import assize.ruleset.Item;
import assize.ruleset.Model;
import assize.ruleset.NumberTable;
import assize.ruleset.NumberTable.Entry;
import assize.ruleset.NumberTable.Series;
import assize.ruleset.RuleSet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * One vehicle of each kind that conditions tell apart: of each model, for each stretch of its
 * production, of each market and plant, with and without each piece of equipment, with a number
 * before, within and after each range. Where those are too many, what is asked for beside model and
 * days is left unknown.
 */
final class Vehicles {
  /** The most kinds that are looked at for one item. */
  private static final int MOST = 20_000;

  /** The most kinds that are looked at for all items together. */
  private static final int MOST_OF_ALL = 2_000_000;

  private final int most;
  private final RuleSet rules;
  private final List<DaySpan> parting;
  private final Asked asked;

  private Vehicles(RuleSet rules, List<Scope> scopes) {
    this.rules = rules;
    this.parting = scopes.stream().flatMap(Scope::buildDays).toList();
    this.asked = Asked.by(scopes);
    int items = rules.areas().stream().mapToInt(area -> area.items().size()).sum();
    this.most = Math.min(MOST, MOST_OF_ALL / Math.max(1, items));
  }

  /** Returns the kinds that an item and all its claims tell apart. */
  static List<Vehicle> of(Item item, RuleSet rules) {
    Stream<Scope> claims =
        item.aspects().stream().flatMap(rule -> rule.claims().stream()).map(claim -> claim.scope());
    return of(Stream.concat(Stream.of(item.scope()), claims).toList(), rules);
  }

  /** Returns the kinds that some conditions tell apart. */
  static List<Vehicle> of(List<Scope> scopes, RuleSet rules) {
    Vehicles vehicles = new Vehicles(rules, scopes);
    List<Vehicle> plain = vehicles.stretches();
    return vehicles.detailed(plain).orElse(plain);
  }

  /** Cuts the production of each model wherever something begins or ends. */
  private List<Vehicle> stretches() {
    List<Vehicle> stretches = new ArrayList<>();
    for (Model model : rules.models().values()) {
      TreeSet<LocalDate> starts = new TreeSet<>();
      starts.add(model.built().first());
      for (DaySpan span : parting) {
        starts.add(span.first());
        if (!span.openEnd()) {
          starts.add(span.last().plusDays(1));
        }
      }
      for (LocalDate start : starts) {
        LocalDate next = Optional.ofNullable(starts.higher(start)).orElse(LocalDate.MAX);
        LocalDate last = next.equals(LocalDate.MAX) ? next : next.minusDays(1);
        new DaySpan(start, last)
            .intersect(model.built())
            .ifPresent(
                days ->
                    stretches.add(
                        new Vehicle(
                            model.id(),
                            days,
                            Optional.empty(),
                            Optional.empty(),
                            Map.of(),
                            Map.of())));
      }
    }
    return stretches;
  }

  /** Tells each apart by market, plant, equipment and numbers; empty where those are too many. */
  private Optional<List<Vehicle>> detailed(List<Vehicle> plain) {
    List<Vehicle> all = plain;
    if (!asked.markets().isEmpty()) {
      all = each(all, rules.markets().keySet(), Vehicles::withMarket);
    }
    boolean byPlant = !asked.plants().isEmpty();
    if (byPlant) {
      all = each(all, rules.plants().keySet(), Vehicles::withPlant);
    }
    for (String one : asked.equipment()) {
      all = each(all, List.of(true, false), (it, fitted) -> withEquipment(it, one, fitted));
      if (all.size() > most) {
        return Optional.empty();
      }
    }
    for (Map.Entry<String, java.util.Set<Scope.Numbers>> one : asked.numbers().entrySet()) {
      Optional<NumberTable> table = Optional.ofNullable(rules.numbers().get(one.getKey()));
      if (table.isPresent()) {
        all = withNumbers(all, table.get(), List.copyOf(one.getValue()));
      }
      if (all.size() > most) {
        return Optional.empty();
      }
    }
    return all.size() > most ? Optional.empty() : Optional.of(all);
  }

  private <T> List<Vehicle> each(
      List<Vehicle> all,
      java.util.Collection<T> values,
      java.util.function.BiFunction<Vehicle, T, Vehicle> with) {
    return all.stream()
        .flatMap(it -> values.stream().map(value -> with.apply(it, value)))
        .limit(most + 1L)
        .toList();
  }

  private static Vehicle withMarket(Vehicle it, String market) {
    return new Vehicle(
        it.model(), it.days(), Optional.of(market), it.plant(), it.equipment(), it.numbers());
  }

  private static Vehicle withPlant(Vehicle it, String plant) {
    return new Vehicle(
        it.model(), it.days(), it.market(), Optional.of(plant), it.equipment(), it.numbers());
  }

  private static Vehicle withEquipment(Vehicle it, String one, boolean fitted) {
    Map<String, Boolean> equipment = new LinkedHashMap<>(it.equipment());
    equipment.put(one, fitted);
    return new Vehicle(it.model(), it.days(), it.market(), it.plant(), equipment, it.numbers());
  }

  private List<Vehicle> withNumbers(
      List<Vehicle> all, NumberTable table, List<Scope.Numbers> ranges) {
    List<Vehicle> numbered = new ArrayList<>();
    for (Vehicle it : all) {
      int before = numbered.size();
      for (Series series : table.series()) {
        boolean bears = series.models().isEmpty() || series.models().contains(it.model());
        boolean here =
            series.plant().isEmpty() || it.plant().map(series.plant().get()::equals).orElse(true);
        if (bears && here && numbered.size() <= most) {
          numbers(series, ranges, it.days())
              .forEach(number -> numbered.add(withNumber(it, table.id(), series, number)));
        }
      }
      if (numbered.size() == before) {
        numbered.add(it);
      }
    }
    return numbered;
  }

  private static Vehicle withNumber(Vehicle it, String table, Series series, long number) {
    Map<String, Vehicle.Number> numbers = new LinkedHashMap<>(it.numbers());
    numbers.put(table, new Vehicle.Number(series, number));
    return new Vehicle(it.model(), it.days(), it.market(), it.plant(), it.equipment(), numbers);
  }

  /**
   * Returns the first number of each part of a series that may have been given out on some days.
   */
  private static List<Long> numbers(Series series, List<Scope.Numbers> ranges, DaySpan days) {
    TreeSet<Long> starts = new TreeSet<>();
    starts.add(series.first().isEmpty() ? 0 : series.first().get(0).number());
    for (Scope.Numbers range : ranges) {
      series.numberOf(range.from()).ifPresent(starts::add);
      OptionalLong to = series.numberOf(range.to());
      if (to.isPresent()) {
        starts.add(to.getAsLong() + 1);
      }
    }
    return starts.stream()
        .filter(start -> start >= starts.first() && isGivenOut(series, start))
        .filter(
            start ->
                givenOut(
                        series,
                        start,
                        Optional.ofNullable(starts.higher(start)).orElse(Long.MAX_VALUE) - 1)
                    .overlaps(days))
        .toList();
  }

  private static boolean isGivenOut(Series series, long number) {
    boolean begun = series.first().isEmpty() || number >= series.first().get(0).number();
    return begun && series.last().map(last -> number <= last.number()).orElse(true);
  }

  /** Returns the days between the entries around some numbers of a series. */
  private static DaySpan givenOut(Series series, long from, long to) {
    List<Entry> entries = Stream.concat(series.first().stream(), series.last().stream()).toList();
    LocalDate first =
        entries.stream()
            .filter(entry -> entry.number() <= from)
            .map(entry -> entry.built().first())
            .reduce((a, b) -> b)
            .orElse(LocalDate.MIN);
    LocalDate last =
        entries.stream()
            .filter(entry -> entry.number() >= to)
            .map(entry -> entry.built().last())
            .findFirst()
            .or(() -> series.last().map(entry -> entry.built().last()))
            .orElse(LocalDate.MAX);
    return new DaySpan(first, last.isBefore(first) ? first : last);
  }
}
