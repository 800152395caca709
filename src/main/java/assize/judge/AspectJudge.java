package assize.judge;

import assize.aspect.Comparison;
import assize.aspect.Expectation;
import assize.aspect.Finding;
import assize.aspect.Place;
import assize.aspect.Reason;
import assize.aspect.Setting;
import assize.aspect.Verdict;
import assize.date.DateRange;
import assize.evidence.Claim;
import assize.evidence.DisputeState;
import assize.evidence.Scope;
import assize.evidence.Ternary;
import assize.judge.FrameOfDiscernment.SourceStatement;
import assize.judge.WeighedAspect.WeighedPosition;
import assize.judgment.AspectJudgment;
import assize.judgment.PositionJudgment;
import assize.production.ScopeAttributes;
import assize.production.VehicleAttribute;
import assize.record.Observation;
import assize.record.PhysicalTrace;
import assize.record.VehicleRecord;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** One aspect of one item within one stretch: judges the vehicle by what the sources come to. */
final class AspectJudge {
  private static final Reason NOT_ASSESSED = new Reason.Said("not assessed");

  /** The most ways that one is split into by what may be fitted. */
  private static final int MOST_FITTED = 1024;

  private final ClaimWeigher grounds;
  private final RuleSet rules;
  private final VehicleRecord vehicle;
  private final List<Way> ways;
  private final DateRange days;
  private final DateRange build;

  /**
   * One way in which the vehicle can be.
   *
   * @param weight its share of all ways
   */
  record Way(Scope.Facts facts, BigFraction weight) {
    /** Returns it with a piece of equipment and without; only a world can be split so. */
    Stream<Way> fitted(String piece) {
      return facts instanceof World world
          ? Stream.of(world.with(piece, true), world.with(piece, false))
              .map(it -> new Way(it, weight.divide(2)))
          : Stream.of(this);
    }
  }

  /**
   * Prepares to judge within one stretch.
   *
   * @param ways every way in which the vehicle can be in it
   * @param days build days of it within which no date condition changes
   * @param build all possible build days
   */
  AspectJudge(
      ClaimWeigher grounds,
      VehicleRecord vehicle,
      List<Way> ways,
      DateRange days,
      DateRange build) {
    this.grounds = grounds;
    this.rules = grounds.rules();
    this.vehicle = vehicle;
    this.ways = List.copyOf(ways);
    this.days = days;
    this.build = build;
  }

  /** Returns nothing where no source speaks of such a vehicle. */
  Optional<AspectJudgment> judge(Item item, ApplicableClaims matter) {
    if (matter instanceof ApplicableClaims.Known sure) {
      return hasTrace(item.id(), sure.rule())
          ? judge(item.id(), sure.rule(), sure.claims())
          : sure.ground().map(ground -> conclude(item.id(), ground));
    }
    ApplicableClaims.Unknown open = (ApplicableClaims.Unknown) matter;
    List<Scope> scopes = List.copyOf(open.unsure().keySet());
    List<Telling> tellings = tellings(open, scopes);
    List<UnknownFactCases.Weighed> variants = new ArrayList<>();
    for (Map.Entry<Integer, BigFraction> one : cases(item.scope(), scopes).entrySet()) {
      int holding = one.getKey();
      List<Claim> speaking =
          tellings.stream()
              .filter(told -> told.always() || (holding & told.scopes()) != 0)
              .map(Telling::claim)
              .toList();
      judge(item.id(), open.rule(), speaking)
          .ifPresent(it -> variants.add(new UnknownFactCases.Weighed(it, one.getValue())));
    }
    return UnknownFactCases.joined(variants);
  }

  /**
   * A claim that speaks, or may.
   *
   * @param scopes bit i where it speaks if the scope of that number holds
   */
  private record Telling(Claim claim, boolean always, int scopes) {}

  /** Returns them in the order written. */
  private static List<Telling> tellings(ApplicableClaims.Unknown open, List<Scope> scopes) {
    Map<Claim, Telling> tellings = new IdentityHashMap<>();
    open.certain().forEach(claim -> tellings.put(claim, new Telling(claim, true, 0)));
    for (int i = 0; i < scopes.size(); i++) {
      int bit = 1 << i;
      open.unsure()
          .getOrDefault(scopes.get(i), List.of())
          .forEach(claim -> tellings.put(claim, new Telling(claim, false, bit)));
    }
    return open.rule().claims().stream()
        .flatMap(claim -> Stream.ofNullable(tellings.get(claim)))
        .toList();
  }

  /**
   * Returns every set of scopes that can hold together where an item applies, bit i for the scope
   * of that number, each with the weight of the ways in which just these hold; the largest first.
   */
  private Map<Integer, BigFraction> cases(Scope applies, List<Scope> unsure) {
    List<Scope> all = new ArrayList<>(unsure);
    all.add(applies);
    ScopeAttributes asked = ScopeAttributes.of(all);
    Map<Integer, BigFraction> cases = new HashMap<>();
    for (Way way : ways) {
      for (Way told : fitted(way, asked)) {
        if (applies.holds(told.facts()) != Ternary.NO) {
          sets(unsure, told.facts())
              .forEach(
                  (holding, share) ->
                      cases.merge(holding, told.weight().multiply(share), BigFraction::add));
        }
      }
    }
    Map<Integer, BigFraction> sorted = new LinkedHashMap<>();
    cases.entrySet().stream()
        .sorted(
            Comparator.comparing((Map.Entry<Integer, BigFraction> one) -> bits(one))
                .reversed()
                .thenComparing(Map.Entry::getKey))
        .forEach(one -> sorted.put(one.getKey(), one.getValue()));
    return sorted;
  }

  private static int bits(Map.Entry<Integer, BigFraction> one) {
    return Integer.bitCount(one.getKey());
  }

  /** Returns the way with and without each piece of equipment that is asked for and unknown. */
  private static List<Way> fitted(Way way, ScopeAttributes asked) {
    List<Way> all = List.of(way);
    for (VehicleAttribute attribute : asked.attributes()) {
      if (attribute instanceof VehicleAttribute.OfEquipment piece
          && all.size() < MOST_FITTED
          && way.facts() instanceof World
          && way.facts().hasEquipment(piece.equipment()) == Ternary.UNKNOWN) {
        all = all.stream().flatMap(it -> it.fitted(piece.equipment())).toList();
      }
    }
    return all;
  }

  /** Returns the sets of scopes that may hold for some facts, each with its share. */
  private static Map<Integer, BigFraction> sets(List<Scope> unsure, Scope.Facts facts) {
    Map<Integer, BigFraction> sets = Map.of(0, BigFraction.ONE);
    for (int i = 0; i < unsure.size(); i++) {
      Ternary holds = unsure.get(i).holds(facts);
      Map<Integer, BigFraction> next = new HashMap<>();
      for (Map.Entry<Integer, BigFraction> one : sets.entrySet()) {
        BigFraction share = holds == Ternary.UNKNOWN ? one.getValue().divide(2) : one.getValue();
        if (holds != Ternary.NO) {
          next.merge(one.getKey() | 1 << i, share, BigFraction::add);
        }
        if (holds != Ternary.YES) {
          next.merge(one.getKey(), share, BigFraction::add);
        }
      }
      sets = next;
    }
    return sets;
  }

  /** Judges by the claims that speak; returns nothing where they name no position. */
  Optional<AspectJudgment> judge(String item, AspectRule rule, List<Claim> claims) {
    List<SourceStatement> voices =
        new ArrayList<>(claims.stream().map(SourceStatement::of).toList());
    voices.addAll(traces(item, rule));
    return grounds.weigh(rule, voices).map(ground -> conclude(item, ground));
  }

  /** Says whether the record has evidence of its own on an aspect. */
  private boolean hasTrace(String item, AspectRule rule) {
    return vehicle.traces().stream()
        .anyMatch(trace -> trace.item().equals(item) && trace.values().containsKey(rule.aspect()));
  }

  private List<SourceStatement> traces(String item, AspectRule rule) {
    List<SourceStatement> voices = new ArrayList<>();
    for (int i = 0; i < vehicle.traces().size(); i++) {
      PhysicalTrace trace = vehicle.traces().get(i);
      List<Expectation> values = trace.values().get(rule.aspect());
      if (trace.item().equals(item) && values != null) {
        voices.add(
            new SourceStatement(
                Optional.of("trace " + (i + 1)),
                Optional.of(trace.grade()),
                trace.manner(),
                values));
      }
    }
    return voices;
  }

  /** Judges the vehicle by what the sources come to. */
  private AspectJudgment conclude(String item, WeighedAspect ground) {
    List<PositionJudgment> positions = new ArrayList<>();
    List<Credits.Position> scored = new ArrayList<>();
    for (WeighedPosition held : ground.held()) {
      Comparison comparison = compare(item, ground.rule(), held.accepts());
      positions.add(
          new PositionJudgment(
              held.accepts(),
              held.sources(),
              held.repeatingSources(),
              held.belief(),
              held.plausibility(),
              held.share().doubleValue(),
              held.scored(),
              comparison,
              held.settling()));
      if (held.scored()) {
        scored.add(new Credits.Position(comparison, best(held.accepts()), held.share()));
      }
    }
    BigFraction notAssessed = rules.scale().notAssessed();
    Credits credits = Credits.of(scored, notAssessed, BigFraction.ZERO);
    Credits kept = allowance(item).map(it -> Credits.of(scored, notAssessed, it)).orElse(credits);
    Optional<BigFraction> allowed = allowance(item).filter(it -> !kept.equals(credits));
    long points = ground.rule().possible();
    long rides =
        ground.state() == DisputeState.DISPUTED
            ? ExactMath.part(points, credits.bestPosition())
                - ExactMath.part(points, credits.worstPosition())
            : 0;
    return new AspectJudgment(
        ground.rule(),
        credits.verdict(),
        ground.state(),
        ground.conflict(),
        ground.unassigned(),
        positions,
        ground.sources(),
        kept.low(),
        kept.likely(),
        kept.high(),
        allowed,
        kept.of(points),
        credits.of(points),
        rides);
  }

  /** The best of the values that a position accepts counts. */
  private Comparison compare(String item, AspectRule rule, List<Expectation> accepts) {
    Optional<Observation> observation = Optional.ofNullable(vehicle.observations().get(item));
    Optional<Finding> found = observation.map(it -> it.findings().get(rule.aspect()));
    if (found.isEmpty()) {
      return Comparison.notAssessed(NOT_ASSESSED);
    }
    Setting setting =
        new Setting(
            new Place(rules, item, rule.aspect()),
            other ->
                Optional.ofNullable(vehicle.observations().get(other))
                    .map(it -> it.findings().get(rule.aspect())),
            days.first(),
            build,
            rules.scale().earlyPartCredit());
    return named(accepts, found.get()).stream()
        .map(value -> value.against(found.get(), setting))
        .max(
            Comparator.comparing(Comparison::credit)
                .thenComparing(it -> it.verdict() != Verdict.NOT_ASSESSED))
        .orElseThrow();
  }

  /** What was found counts by its own name where that is listed, else as a kind of another. */
  private static List<Expectation> named(List<Expectation> accepts, Finding found) {
    List<Expectation> byName = accepts.stream().filter(value -> value.names(found)).toList();
    return byName.isEmpty() ? accepts : byName;
  }

  private static BigFraction best(List<Expectation> accepts) {
    return accepts.stream().map(Expectation::credit).max(Comparator.naturalOrder()).orElseThrow();
  }

  /** Returns the credit that is allowed on the whole item for the owner's reason to depart. */
  private Optional<BigFraction> allowance(String item) {
    return Optional.ofNullable(vehicle.observations().get(item))
        .flatMap(Observation::departure)
        .flatMap(it -> Optional.ofNullable(rules.scale().allowances().get(it.reason())));
  }
}
