package assize.judge;

import assize.date.DateRange;
import assize.evidence.Scope;
import assize.judge.NumberDating.Dated;
import assize.judge.World.Supposed;
import assize.production.NumberPart;
import assize.production.ScopeAttributes;
import assize.production.VehicleAttribute;
import assize.record.VehicleRecord;
import assize.ruleset.Model;
import assize.ruleset.NumberTable;
import assize.ruleset.NumberTable.Series;
import assize.ruleset.RuleSet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Every way in which one vehicle can be, by its record and its rule set. What the record states
 * holds. Then the rule set narrows: the model was in production on the build day, and each number
 * belongs to a series of that model, plant and day. A step that would leave no way is passed over.
 */
final class Worlds {
  /** The most ways that are told apart; of more, each fact is looked at by itself. */
  private static final int MOST = 65_536;

  private final RuleSet rules;
  private final VehicleRecord vehicle;
  private final ScopeAttributes asked;
  private final Map<String, List<NumberPart>> parts = new LinkedHashMap<>();
  private final Map<String, Map<String, Set<Scope.Numbers>>> answers = new LinkedHashMap<>();

  private Worlds(CompiledRuleSet bench, VehicleRecord vehicle) {
    this.rules = bench.rules();
    this.vehicle = vehicle;
    this.asked = bench.asked();
    asked
        .ranges()
        .forEach(
            (id, ranges) -> {
              Optional<NumberTable> table = Optional.ofNullable(rules.numberTables().get(id));
              if (vehicle.possibleNumbers(id).isEmpty()) {
                table.ifPresent(it -> parts.put(id, bench.parts(it)));
              } else {
                table.ifPresent(it -> answers.put(id, answers(it, ranges)));
              }
            });
  }

  /**
   * Returns the days on which something about the ways changes, beside those of conditions and
   * production.
   */
  static NavigableSet<LocalDate> turns(CompiledRuleSet bench, VehicleRecord vehicle) {
    Worlds worlds = new Worlds(bench, vehicle);
    NavigableSet<LocalDate> turns = new TreeSet<>();
    Stream<DateRange> dated =
        worlds.rules.numberTables().values().stream()
            .flatMap(table -> worlds.dated(table).stream())
            .flatMap(it -> it.days().stream());
    Stream<DateRange> givenOut =
        worlds.parts.values().stream().flatMap(List::stream).map(NumberPart::days);
    Stream.concat(dated, givenOut)
        .forEach(
            days -> {
              turns.add(days.first());
              if (!days.openEnd()) {
                turns.add(days.last().plusDays(1));
              }
            });
    return turns;
  }

  /**
   * Returns the ways for each piece of the possible build days; pieces on which there is none are
   * left out.
   *
   * @param days pieces within which nothing changes, in their order
   * @return nothing where there are too many
   */
  static Optional<Map<DateRange, List<World>>> of(
      CompiledRuleSet bench, VehicleRecord vehicle, List<DateRange> days) {
    return new Worlds(bench, vehicle).of(days);
  }

  /** A model and a plant on some days. */
  private record Piece(DateRange days, Optional<String> model, Optional<String> plant) {
    boolean is(Dated dated) {
      Series series = dated.series();
      return (series.models().isEmpty() || model.map(series.models()::contains).orElse(true))
          && (series.plant().isEmpty() || plant.isEmpty() || series.plant().equals(plant))
          && isOn(dated);
    }

    boolean isOn(Dated dated) {
      return dated.days().map(it -> it.contains(days.first())).orElse(true);
    }
  }

  private Optional<Map<DateRange, List<World>>> of(List<DateRange> days) {
    List<Optional<String>> models = supposed(vehicle.model(), rules.models().keySet(), true);
    List<Optional<String>> plants = supposed(vehicle.plant(), rules.plants().keySet(), plants());
    List<Optional<String>> markets =
        supposed(
            vehicle.market(),
            rules.markets().keySet(),
            asked.contains(new VehicleAttribute.OfMarket()));
    if ((long) days.size() * models.size() * plants.size() * markets.size() > MOST) {
      return Optional.empty();
    }
    List<Piece> pieces = new ArrayList<>();
    for (DateRange day : days) {
      models.forEach(model -> plants.forEach(plant -> pieces.add(new Piece(day, model, plant))));
    }
    Map<DateRange, List<World>> found = new LinkedHashMap<>();
    narrowed(pieces)
        .forEach(
            (day, byModel) -> {
              List<World> worlds = new ArrayList<>();
              byModel.values().forEach(some -> worlds.addAll(worlds(some, markets)));
              BigFraction share = ExactMath.of(1, byModel.size());
              found.put(
                  day,
                  worlds.stream()
                      .map(it -> new World(day, it.supposed(), it.weight().multiply(share)))
                      .toList());
            });
    int all = found.values().stream().mapToInt(List::size).sum();
    return all > MOST ? Optional.empty() : Optional.of(found);
  }

  /** Returns what a fact may be: what is stated, else any, else nothing if nobody asks. */
  private static List<Optional<String>> supposed(
      Optional<String> stated, Set<String> possible, boolean isAsked) {
    return stated.isPresent() || possible.isEmpty() || !isAsked
        ? List.of(stated)
        : possible.stream().map(Optional::of).toList();
  }

  private boolean plants() {
    return asked.contains(new VehicleAttribute.OfPlant())
        || rules.numberTables().values().stream()
            .flatMap((NumberTable it) -> it.series().stream())
            .anyMatch(it -> it.plant().isPresent());
  }

  /** Narrows step by step, and returns what is left by day and model. */
  private Map<DateRange, Map<Optional<String>, List<Piece>>> narrowed(List<Piece> all) {
    List<Piece> pieces =
        narrowed(
            all,
            piece ->
                piece
                    .model()
                    .flatMap(it -> Optional.ofNullable(rules.models().get(it)))
                    .map(Model::production)
                    .map(it -> it.contains(piece.days().first()))
                    .orElse(true));
    for (NumberTable table : rules.numberTables().values()) {
      List<Dated> dated = dated(table);
      if (!dated.isEmpty()) {
        List<Piece> fitting =
            pieces.stream().filter(piece -> dated.stream().anyMatch(piece::is)).toList();
        pieces =
            fitting.isEmpty()
                ? narrowed(pieces, piece -> dated.stream().anyMatch(piece::isOn))
                : fitting;
      }
    }
    Map<DateRange, Map<Optional<String>, List<Piece>>> byDay = new LinkedHashMap<>();
    for (Piece piece : pieces) {
      byDay
          .computeIfAbsent(piece.days(), it -> new LinkedHashMap<>())
          .computeIfAbsent(piece.model(), it -> new ArrayList<>())
          .add(piece);
    }
    return byDay;
  }

  private static List<Piece> narrowed(List<Piece> pieces, Predicate<Piece> step) {
    List<Piece> left = pieces.stream().filter(step).toList();
    return left.isEmpty() ? pieces : left;
  }

  /** Returns what each series that a number of the record fits says of it. */
  private List<Dated> dated(NumberTable table) {
    return vehicle.possibleNumbers(table.id()).stream()
        .flatMap(number -> NumberDating.of(table, number).stream())
        .toList();
  }

  /** Returns the ways of one model on some days; their weights add up to 1. */
  private List<World> worlds(List<Piece> plants, List<Optional<String>> markets) {
    List<World> worlds = new ArrayList<>();
    BigFraction share = ExactMath.of(1, (long) markets.size() * plants.size());
    for (Optional<String> market : markets) {
      for (Piece piece : plants) {
        List<Map<String, Set<Scope.Numbers>>> numbers = numbers(piece);
        BigFraction weight = share.divide(numbers.size());
        for (Map<String, Set<Scope.Numbers>> one : numbers) {
          Supposed supposed =
              new Supposed(piece.model(), market, piece.plant(), one, vehicle.equipment());
          worlds.add(new World(piece.days(), supposed, weight));
        }
      }
    }
    return worlds;
  }

  /** Returns every set of answers to what is asked about the numbers of such a vehicle. */
  private List<Map<String, Set<Scope.Numbers>>> numbers(Piece piece) {
    List<Map<String, Set<Scope.Numbers>>> sets = List.of(Map.of());
    for (String table : asked.ranges().keySet()) {
      List<Set<Scope.Numbers>> each = new ArrayList<>(answers(table, piece));
      List<Map<String, Set<Scope.Numbers>>> more = new ArrayList<>();
      for (Map<String, Set<Scope.Numbers>> set : sets) {
        for (Set<Scope.Numbers> one : each) {
          Map<String, Set<Scope.Numbers>> longer = new LinkedHashMap<>(set);
          longer.put(table, one);
          more.add(longer);
        }
      }
      sets = more;
    }
    return sets;
  }

  private Set<Set<Scope.Numbers>> answers(String table, Piece piece) {
    Set<Set<Scope.Numbers>> found = new LinkedHashSet<>();
    Map<String, Set<Scope.Numbers>> known = answers.getOrDefault(table, Map.of());
    known.forEach(
        (number, ranges) -> {
          NumberTable of = rules.numberTables().get(table);
          if (of != null && NumberDating.of(of, number).stream().anyMatch(piece::is)) {
            found.add(ranges);
          }
        });
    if (found.isEmpty()) {
      found.addAll(known.values());
    }
    for (NumberPart part : parts.getOrDefault(table, List.of())) {
      if (part.isFor(piece.model())
          && part.isFrom(piece.plant())
          && part.days().contains(piece.days().first())) {
        found.add(Set.copyOf(part.ranges()));
      }
    }
    return found.isEmpty() ? Set.of(Set.of()) : found;
  }

  /** Returns for each number that the vehicle may have the ranges asked for that it lies in. */
  private Map<String, Set<Scope.Numbers>> answers(NumberTable table, Set<Scope.Numbers> ranges) {
    Map<String, Set<Scope.Numbers>> all = new LinkedHashMap<>();
    for (String number : vehicle.possibleNumbers(table.id())) {
      Set<Scope.Numbers> within = new LinkedHashSet<>();
      for (Series series : table.series()) {
        OptionalLong own = series.numberOf(number);
        if (own.isPresent()) {
          ranges.stream()
              .filter(it -> NumberPart.holds(series, it, own.getAsLong()))
              .forEach(within::add);
        }
      }
      all.put(number, within);
    }
    return all;
  }
}
