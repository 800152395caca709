package assize.production;

import assize.date.DateRange;
import assize.evidence.Scope;
import assize.evidence.Ternary;
import assize.ruleset.Item;
import assize.ruleset.Model;
import assize.ruleset.NumberTable;
import assize.ruleset.RuleSet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Every kind of vehicle that a rule set has and that some scopes tell apart: each model with each
 * market, plant, equipment and number that can come together. A number is of a series, which may be
 * that of some models, of one plant and of some days alone.
 */
public final class Production {
  private static final VehicleAttribute MODEL = new VehicleAttribute.OfModel();

  /** The most kinds over the whole production for some scopes, and for those of all items. */
  private static final int MOST = 1000;

  private static final int MOST_OF_ALL = 200_000;

  /** The most kinds by days for some scopes, and for those of all items. */
  private static final int MOST_DATED = 20_000;

  private static final int MOST_DATED_OF_ALL = 2_000_000;

  private final RuleSet rules;
  private final List<DateRange> asked;
  private final ScopeAttributes attributes;
  private final Map<String, List<NumberPart>> parts = new LinkedHashMap<>();
  private final int items;

  private Production(RuleSet rules, Collection<Scope> scopes) {
    this.rules = rules;
    this.asked = scopes.stream().flatMap(Scope::buildDays).toList();
    this.attributes = ScopeAttributes.of(scopes);
    attributes
        .ranges()
        .forEach(
            (id, ranges) -> {
              Optional<NumberTable> table = Optional.ofNullable(rules.numberTables().get(id));
              table.ifPresent(it -> parts.put(id, NumberPart.of(it, ranges)));
            });
    this.items = rules.areas().stream().mapToInt(area -> area.items().size()).sum();
  }

  /** Prepares to tell vehicles apart by some scopes. */
  public static Production of(RuleSet rules, Collection<Scope> scopes) {
    return new Production(rules, scopes);
  }

  /** Prepares to tell vehicles apart by an item and all its claims. */
  public static Production of(RuleSet rules, Item item) {
    Stream<Scope> claims =
        item.aspects().stream().flatMap(rule -> rule.claims().stream()).map(claim -> claim.scope());
    return of(rules, Stream.concat(Stream.of(item.scope()), claims).toList());
  }

  /** Returns the kinds by days that may be within all of some scopes. */
  public static Stream<VehicleKind> within(RuleSet rules, List<Scope> scopes) {
    return of(rules, scopes).byDays().stream()
        .filter(kind -> scopes.stream().allMatch(scope -> scope.holds(kind) != Ternary.NO));
  }

  /** Parts all days wherever one of some spans begins or ends, in their order. */
  public static List<DateRange> days(Stream<DateRange> spans) {
    TreeSet<LocalDate> starts = new TreeSet<>(Set.of(LocalDate.MIN));
    spans.forEach(
        span -> {
          starts.add(span.first());
          if (!span.openEnd()) {
            starts.add(span.last().plusDays(1));
          }
        });
    List<DateRange> days = new ArrayList<>();
    for (LocalDate from : starts) {
      LocalDate next = starts.higher(from);
      days.add(new DateRange(from, next == null ? LocalDate.MAX : next.minusDays(1)));
    }
    return days;
  }

  /** Returns what tells the kinds apart, the model first where the rule set names any. */
  public List<VehicleAttribute> attributes() {
    Set<VehicleAttribute> all = new LinkedHashSet<>();
    if (!rules.models().isEmpty()) {
      all.add(MODEL);
    }
    all.addAll(attributes.attributes());
    if (rules.models().isEmpty()) {
      all.remove(MODEL);
    }
    return List.copyOf(all);
  }

  /**
   * Returns every kind over the whole production, whenever built, in the order in which the scopes
   * ask for attributes; nothing where they are too many.
   */
  public Optional<List<VehicleKind>> kinds() {
    List<VehicleKind> models =
        rules.models().isEmpty()
            ? List.of(new VehicleKind(Optional.empty(), DateRange.ALL))
            : rules.models().keySet().stream()
                .map(model -> new VehicleKind(Optional.of(model), DateRange.ALL))
                .toList();
    return detailed(models, Math.min(MOST, MOST_OF_ALL / Math.max(1, items)))
        .map(kinds -> kinds.stream().sorted(inOrder()).toList());
  }

  /**
   * Returns every kind of each model, for each stretch of its production within which no scope
   * tells days apart; where they are too many, what is asked for beside model and days is left
   * unknown.
   */
  public List<VehicleKind> byDays() {
    List<VehicleKind> plain = new ArrayList<>();
    for (Model model : rules.models().values()) {
      for (DateRange days : days(asked.stream())) {
        days.intersect(model.production())
            .ifPresent(it -> plain.add(new VehicleKind(Optional.of(model.id()), it)));
      }
    }
    return detailed(plain, Math.min(MOST_DATED, MOST_DATED_OF_ALL / Math.max(1, items)))
        .orElse(plain);
  }

  /** Tells each apart by market, plant, equipment and numbers; empty where those are too many. */
  private Optional<List<VehicleKind>> detailed(List<VehicleKind> plain, int most) {
    Growing growing = new Growing(plain, most);
    if (attributes.contains(new VehicleAttribute.OfMarket()) && !rules.markets().isEmpty()) {
      growing.grow(kind -> rules.markets().keySet().stream().map(kind::withMarket));
    }
    if (attributes.contains(new VehicleAttribute.OfPlant()) && !rules.plants().isEmpty()) {
      growing.grow(kind -> rules.plants().keySet().stream().map(kind::withPlant));
    }
    for (VehicleAttribute one : attributes.attributes()) {
      if (one instanceof VehicleAttribute.OfEquipment it) {
        growing.grow(
            kind -> Stream.of(true, false).map(has -> kind.withEquipment(it.equipment(), has)));
      }
    }
    parts.forEach((table, some) -> growing.grow(kind -> numbered(kind, table, some)));
    return growing.kinds();
  }

  /** Kinds, to be told apart by one attribute after another until they are too many. */
  private static final class Growing {
    private final int most;
    private List<VehicleKind> kinds;

    Growing(List<VehicleKind> plain, int most) {
      this.kinds = plain;
      this.most = most;
    }

    void grow(Function<VehicleKind, Stream<VehicleKind>> each) {
      if (kinds.size() <= most) {
        kinds = kinds.stream().flatMap(each).limit(most + 1L).toList();
      }
    }

    Optional<List<VehicleKind>> kinds() {
      return kinds.size() > most ? Optional.empty() : Optional.of(kinds);
    }
  }

  /** Tells a kind apart by the ranges that its number may lie in. */
  private static Stream<VehicleKind> numbered(
      VehicleKind kind, String table, List<NumberPart> parts) {
    Map<List<Scope.Numbers>, List<NumberPart>> alike = new LinkedHashMap<>();
    for (NumberPart part : parts) {
      if (part.isFor(kind.model())
          && part.isFrom(kind.plant())
          && part.days().overlaps(kind.days())) {
        alike.computeIfAbsent(part.ranges(), it -> new ArrayList<>()).add(part);
      }
    }
    return alike.isEmpty()
        ? Stream.of(kind)
        : alike.values().stream().map(some -> kind.withNumbers(table, some));
  }

  private Comparator<VehicleKind> inOrder() {
    Map<String, Integer> models = places(rules.models().keySet());
    Map<String, Integer> markets = places(rules.markets().keySet());
    Map<String, Integer> plants = places(rules.plants().keySet());
    Comparator<VehicleKind> order = Comparator.comparing(kind -> 0);
    for (VehicleAttribute attribute : attributes()) {
      order =
          order.thenComparing(
              attribute.match(
                  new VehicleAttribute.Cases<Comparator<VehicleKind>>() {
                    @Override
                    public Comparator<VehicleKind> ofModel(VehicleAttribute.OfModel it) {
                      return named(VehicleKind::model, models);
                    }

                    @Override
                    public Comparator<VehicleKind> ofMarket(VehicleAttribute.OfMarket it) {
                      return named(VehicleKind::market, markets);
                    }

                    @Override
                    public Comparator<VehicleKind> ofPlant(VehicleAttribute.OfPlant it) {
                      return named(VehicleKind::plant, plants);
                    }

                    @Override
                    public Comparator<VehicleKind> ofEquipment(VehicleAttribute.OfEquipment it) {
                      return Comparator.comparing(
                          kind -> !kind.equipment().getOrDefault(it.equipment(), false));
                    }

                    @Override
                    public Comparator<VehicleKind> ofNumber(VehicleAttribute.OfNumber it) {
                      return Comparator.<VehicleKind>comparingInt(
                              kind ->
                                  kind.number(it.table())
                                      .map(NumberPart::place)
                                      .orElse(Integer.MAX_VALUE))
                          .thenComparingLong(
                              kind -> kind.number(it.table()).map(NumberPart::first).orElse(0L));
                    }
                  }));
    }
    return order;
  }

  private static Map<String, Integer> places(Collection<String> names) {
    Map<String, Integer> places = new HashMap<>();
    names.forEach(name -> places.put(name, places.size()));
    return places;
  }

  private static Comparator<VehicleKind> named(
      Function<VehicleKind, Optional<String>> value, Map<String, Integer> places) {
    return Comparator.comparingInt(
        kind -> value.apply(kind).map(it -> places.getOrDefault(it, 0)).orElse(0));
  }
}
