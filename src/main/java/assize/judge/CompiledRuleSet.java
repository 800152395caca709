package assize.judge;

import assize.date.DateRange;
import assize.evidence.Claim;
import assize.evidence.Scope;
import assize.evidence.Ternary;
import assize.judge.FrameOfDiscernment.SourceStatement;
import assize.production.NumberPart;
import assize.production.ScopeAttributes;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import assize.ruleset.Model;
import assize.ruleset.NumberTable;
import assize.ruleset.RuleSet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A rule set made ready to judge many vehicles: each condition is asked once for all items that
 * have it, and what sources come to is worked out once for all vehicles of which they speak. Any
 * thread may ask.
 */
final class CompiledRuleSet {
  /** The most different facts that may be unknown on the claims of one aspect. */
  static final int MOST_UNKNOWN = 6;

  /** How many kinds of vehicles are kept in mind. */
  private static final int MOST_LINEUPS = 256;

  /** How many ways in which its conditions can be answered are kept in mind of each item. */
  private static final int MOST_WAYS = 64;

  private final RuleSet rules;
  private final ClaimWeigher grounds;
  private final ConditionIndex conditions = new ConditionIndex();
  private final NavigableSet<LocalDate> turns = new TreeSet<>();
  private final ScopeAttributes asked;
  private final Map<String, List<NumberPart>> parts = new LinkedHashMap<>();
  private final List<CompiledItem> entries;
  private final int[] areas;
  private final Item[] items;
  private final List<Item> dated;
  private final BoundedCache<ConditionResults, List<PreparedItem>> lineups =
      new BoundedCache<>(MOST_LINEUPS);

  /**
   * One item.
   *
   * @param places where its own condition stands, then those of the claims of each aspect
   * @param dated whether a date code is expected of it
   */
  private record CompiledItem(
      Item item, int[] places, boolean dated, BoundedCache<ConditionResults, PreparedItem> ways) {}

  CompiledRuleSet(RuleSet rules) {
    this.rules = rules;
    this.grounds = ClaimWeigher.of(rules);
    this.entries = rules.items().map(this::entry).toList();
    this.items = entries.stream().map(CompiledItem::item).toArray(Item[]::new);
    this.dated = entries.stream().filter(CompiledItem::dated).map(CompiledItem::item).toList();
    this.areas =
        IntStream.range(0, rules.areas().size())
            .flatMap(area -> rules.areas().get(area).items().stream().mapToInt(item -> area))
            .toArray();
    Stream.concat(
            conditions.scopes().stream().flatMap(Scope::buildDays),
            rules.models().values().stream().map(Model::production))
        .forEach(this::turn);
    this.asked = ScopeAttributes.of(conditions.scopes());
    asked
        .ranges()
        .forEach(
            (id, ranges) ->
                Optional.ofNullable(rules.numberTables().get(id))
                    .ifPresent(table -> parts.put(id, NumberPart.of(table, ranges))));
  }

  private CompiledItem entry(Item item) {
    Stream<Scope> ofClaims =
        item.aspects().stream().flatMap(rule -> rule.claims().stream()).map(Claim::scope);
    int[] places =
        Stream.concat(Stream.of(item.scope()), ofClaims).mapToInt(conditions::place).toArray();
    boolean dated = item.aspects().stream().anyMatch(rule -> rule.aspect().kind().isDated());
    return new CompiledItem(item, places, dated, new BoundedCache<>(MOST_WAYS));
  }

  private void turn(DateRange days) {
    turns.add(days.first());
    if (!days.openEnd()) {
      turns.add(days.last().plusDays(1));
    }
  }

  RuleSet rules() {
    return rules;
  }

  ClaimWeigher grounds() {
    return grounds;
  }

  int items() {
    return entries.size();
  }

  Item item(int number) {
    return items[number];
  }

  /** Returns the place of an item's area among the areas. */
  int area(int number) {
    return areas[number];
  }

  /** Returns a list to gather the points of each area in. */
  List<ScoredArea> lots() {
    return rules.areas().stream().map(area -> new ScoredArea()).toList();
  }

  /** Returns the items of which a date code is expected. */
  List<Item> dated() {
    return dated;
  }

  /** Returns the days of some on which a condition begins or ends to hold. */
  NavigableSet<LocalDate> turns(DateRange build) {
    return turns.subSet(build.first(), true, build.last(), true);
  }

  /** Returns every condition, and every part of one. */
  List<Scope> conditions() {
    return conditions.scopes();
  }

  /** Asks every condition. */
  ConditionResults answers(Scope.Facts facts) {
    return conditions.of(facts);
  }

  /** Asks every condition of every way in which a vehicle can be; unknown where they differ. */
  ConditionResults answers(List<World> worlds) {
    return ConditionResults.joined(worlds.stream().map(conditions::of));
  }

  /** Returns what conditions ask of a vehicle. */
  ScopeAttributes asked() {
    return asked;
  }

  /** Returns the numbers of a table, parted wherever a condition asks. */
  List<NumberPart> parts(NumberTable table) {
    return parts.getOrDefault(table.id(), List.of());
  }

  /** Returns the items in their order, as they are for vehicles with these answers. */
  List<PreparedItem> lineup(ConditionResults answers) {
    return lineups.get(
        answers,
        all ->
            entries.stream()
                .map(entry -> entry.ways().get(all.at(entry.places()), own -> asked(entry, own)))
                .toList());
  }

  private PreparedItem asked(CompiledItem entry, ConditionResults own) {
    Ternary applies = own.at(0);
    List<ApplicableClaims> matters = new ArrayList<>();
    if (applies != Ternary.NO) {
      int next = 1;
      for (AspectRule rule : entry.item().aspects()) {
        int from = next;
        next += rule.claims().size();
        List<Ternary> speaks =
            IntStream.range(0, rule.claims().size()).mapToObj(i -> own.at(from + i)).toList();
        matters.add(matter(rule, speaks));
      }
    }
    return PreparedItem.of(entry.item(), applies, matters, entry.dated());
  }

  private ApplicableClaims matter(AspectRule rule, List<Ternary> speaks) {
    List<Claim> certain = new ArrayList<>();
    Map<Scope, List<Claim>> unsure = new LinkedHashMap<>();
    for (int i = 0; i < speaks.size(); i++) {
      Claim claim = rule.claims().get(i);
      boolean oneMore = unsure.size() < MOST_UNKNOWN || unsure.containsKey(claim.scope());
      if (speaks.get(i) == Ternary.YES || speaks.get(i) == Ternary.UNKNOWN && !oneMore) {
        certain.add(claim);
      } else if (speaks.get(i) == Ternary.UNKNOWN) {
        unsure.computeIfAbsent(claim.scope(), scope -> new ArrayList<>()).add(claim);
      }
    }
    return unsure.isEmpty()
        ? new ApplicableClaims.Known(
            rule,
            List.copyOf(certain),
            grounds.weigh(rule, certain.stream().map(SourceStatement::of).toList()))
        : new ApplicableClaims.Unknown(rule, List.copyOf(certain), unsure);
  }
}
