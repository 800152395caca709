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
import assize.record.Observation;
import assize.record.PhysicalTrace;
import assize.record.VehicleRecord;
import assize.ruleset.AspectRule;
import assize.ruleset.RuleSet;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** One aspect of one item within one stretch: judges the vehicle by what the sources come to. */
final class AspectJudge {
  private static final Reason SAYS_SO = new Reason.Said("the owner says that it is incorrect");
  private static final Reason NOT_ASSESSED = new Reason.Said("not assessed");

  private final ClaimWeigher grounds;
  private final RuleSet rules;
  private final VehicleRecord vehicle;
  private final VehicleFacts facts;
  private final DateRange days;
  private final DateRange build;

  /**
   * Prepares to judge within one stretch.
   *
   * @param facts what is known of the vehicle in it
   * @param days build days of it within which no date condition changes
   * @param build all possible build days
   */
  AspectJudge(
      ClaimWeigher grounds,
      VehicleRecord vehicle,
      VehicleFacts facts,
      DateRange days,
      DateRange build) {
    this.grounds = grounds;
    this.rules = grounds.rules();
    this.vehicle = vehicle;
    this.facts = facts;
    this.days = days;
    this.build = build;
  }

  /** Returns nothing where no source speaks of such a vehicle. */
  Optional<AspectJudgment> judge(String item, ApplicableClaims matter) {
    if (matter instanceof ApplicableClaims.Known sure) {
      return hasTrace(item, sure.rule())
          ? judge(item, sure.rule(), sure.claims())
          : sure.ground().map(ground -> conclude(item, ground));
    }
    ApplicableClaims.Unknown open = (ApplicableClaims.Unknown) matter;
    List<Scope> scopes = List.copyOf(open.unsure().keySet());
    List<Telling> tellings = tellings(open, scopes);
    List<AspectJudgment> variants = new ArrayList<>();
    for (int holding : cases(scopes)) {
      List<Claim> speaking =
          tellings.stream()
              .filter(one -> one.always() || (holding & one.scopes()) != 0)
              .map(Telling::claim)
              .toList();
      judge(item, open.rule(), speaking).ifPresent(variants::add);
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
   * Returns every set of scopes that can hold together, the largest first, bit i for the scope of
   * that number: a vehicle has one model, one market and one works, so that scopes which ask for
   * different ones never do.
   */
  private List<Integer> cases(List<Scope> unsure) {
    Set<Integer> cases = new LinkedHashSet<>();
    for (Scope.Facts supposed : facts.suppositions()) {
      List<Integer> growing = new ArrayList<>(List.of(0));
      for (int i = 0; i < unsure.size(); i++) {
        Ternary holds = unsure.get(i).holds(supposed);
        List<Integer> next = new ArrayList<>();
        for (int one : growing) {
          if (holds != Ternary.NO) {
            next.add(one | 1 << i);
          }
          if (holds != Ternary.YES) {
            next.add(one);
          }
        }
        growing = next;
      }
      cases.addAll(growing);
    }
    return cases.stream()
        .sorted(Comparator.comparing((Integer one) -> Integer.bitCount(one)).reversed())
        .toList();
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
    List<Comparison> comparisons = new ArrayList<>();
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
        comparisons.add(comparison);
      }
    }
    Credits credits = Credits.of(comparisons, ground.shares(), rules.scale().notAssessed());
    Optional<BigFraction> allowed = allowed(item, credits.verdict());
    Credits kept = allowed.map(credits::atLeast).orElse(credits);
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
      boolean knownWrong =
          observation
              .map(it -> it.departure().isPresent() && it.findings().isEmpty())
              .orElse(false);
      return knownWrong ? Comparison.incorrect(SAYS_SO) : Comparison.notAssessed(NOT_ASSESSED);
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

  private Optional<BigFraction> allowed(String item, Verdict verdict) {
    if (verdict == Verdict.CORRECT || verdict == Verdict.NOT_ASSESSED) {
      return Optional.empty();
    }
    return Optional.ofNullable(vehicle.observations().get(item))
        .flatMap(Observation::departure)
        .flatMap(
            departure -> Optional.ofNullable(rules.scale().allowances().get(departure.reason())));
  }
}
