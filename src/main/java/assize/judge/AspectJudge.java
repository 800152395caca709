package assize.judge;

import assize.aspect.Expectation;
import assize.aspect.Finding;
import assize.date.DaySpan;
import assize.evidence.Claim;
import assize.evidence.DisputeState;
import assize.evidence.Grade;
import assize.evidence.Independence;
import assize.evidence.Kleene;
import assize.evidence.Outcome;
import assize.evidence.Scope;
import assize.evidence.Settling;
import assize.evidence.Source;
import assize.evidence.Testimony;
import assize.evidence.Weighing.Share;
import assize.judge.Frame.Voice;
import assize.judgment.AspectJudgment;
import assize.judgment.Comparison;
import assize.judgment.PositionJudgment;
import assize.judgment.PositionJudgment.Further;
import assize.judgment.Verdict;
import assize.record.Observation;
import assize.record.Trace;
import assize.record.VehicleRecord;
import assize.ruleset.AspectRule;
import assize.ruleset.RuleSet;
import assize.ruleset.Scale;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** One aspect of one item within one stretch: weighs the sources, then judges the vehicle. */
final class AspectJudge {
  /** The most different facts that may be unknown on the claims of one aspect. */
  static final int MOST_UNKNOWN = 6;

  private final RuleSet rules;
  private final VehicleRecord vehicle;
  private final VehicleFacts facts;
  private final DaySpan days;
  private final DaySpan build;
  private final Map<String, Set<String>> copies;

  /**
   * Prepares to judge within one stretch.
   *
   * @param facts what is known of the vehicle in it
   * @param days build days of it within which no date condition changes
   * @param build all possible build days
   */
  AspectJudge(
      RuleSet rules, VehicleRecord vehicle, VehicleFacts facts, DaySpan days, DaySpan build) {
    this.rules = rules;
    this.vehicle = vehicle;
    this.facts = facts;
    this.days = days;
    this.build = build;
    this.copies =
        rules.sources().values().stream().collect(Collectors.toMap(Source::id, Source::copies));
  }

  /** Returns nothing where no source speaks of such a vehicle. */
  Optional<AspectJudgment> judge(String item, AspectRule rule) {
    List<Claim> certain = new ArrayList<>();
    Map<Scope, List<Claim>> unsure = new LinkedHashMap<>();
    for (Claim claim : rule.claims()) {
      Kleene speaks = claim.scope().holds(facts);
      boolean oneMore = unsure.size() < MOST_UNKNOWN || unsure.containsKey(claim.scope());
      if (speaks == Kleene.YES || speaks == Kleene.UNKNOWN && !oneMore) {
        certain.add(claim);
      } else if (speaks == Kleene.UNKNOWN) {
        unsure.computeIfAbsent(claim.scope(), scope -> new ArrayList<>()).add(claim);
      }
    }
    if (unsure.isEmpty()) {
      return judge(item, rule, certain);
    }
    List<AspectJudgment> variants = new ArrayList<>();
    for (Set<Scope> holding : cases(List.copyOf(unsure.keySet()))) {
      Set<Claim> speaking = new LinkedHashSet<>(certain);
      holding.forEach(scope -> speaking.addAll(unsure.getOrDefault(scope, List.of())));
      List<Claim> inOrder = rule.claims().stream().filter(speaking::contains).toList();
      judge(item, rule, inOrder).ifPresent(variants::add);
    }
    return Variants.joined(variants);
  }

  /**
   * Returns every set of scopes that can hold together, the largest first: a vehicle has one model,
   * one market and one works, so that scopes which ask for different ones never do.
   */
  private List<Set<Scope>> cases(List<Scope> unsure) {
    Set<Set<Scope>> cases = new LinkedHashSet<>();
    for (Scope.Facts supposed : facts.suppositions()) {
      List<Set<Scope>> growing = new ArrayList<>(List.of(Set.of()));
      for (Scope scope : unsure) {
        Kleene holds = scope.holds(supposed);
        List<Set<Scope>> next = new ArrayList<>();
        for (Set<Scope> one : growing) {
          if (holds != Kleene.NO) {
            Set<Scope> with = new LinkedHashSet<>(one);
            with.add(scope);
            next.add(with);
          }
          if (holds != Kleene.YES) {
            next.add(one);
          }
        }
        growing = next;
      }
      cases.addAll(growing);
    }
    return cases.stream()
        .sorted(Comparator.comparing((Set<Scope> one) -> one.size()).reversed())
        .toList();
  }

  /** Judges by the claims that speak; returns nothing where they name no position. */
  Optional<AspectJudgment> judge(String item, AspectRule rule, List<Claim> claims) {
    List<Voice> voices = new ArrayList<>(claims.stream().map(Voice::of).toList());
    voices.addAll(traces(item, rule));
    Frame frame = Frame.of(voices);
    if (frame.positions().isEmpty()) {
      return Optional.empty();
    }
    Set<String> witnesses = Independence.witnesses(copies, frame.stands());
    Map<String, Integer> weights = weights(voices);
    List<Testimony> testimonies =
        frame.stands().entrySet().stream()
            .filter(stands -> witnesses.contains(stands.getKey()))
            .map(
                stands ->
                    new Testimony(weights.getOrDefault(stands.getKey(), 1), stands.getValue()))
            .toList();
    int count = frame.positions().size();
    Scale scale = rules.scale();
    Outcome outcome = Outcome.of(count, testimonies, scale.settledAt(), Scale.LIVE_AT);
    List<Integer> judged = judged(outcome, count);
    Map<Integer, List<Further>> settling =
        outcome.state() == DisputeState.DISPUTED ? settling(count, testimonies) : Map.of();
    return Optional.of(conclude(item, rule, frame, witnesses, weights, outcome, judged, settling));
  }

  private List<Voice> traces(String item, AspectRule rule) {
    List<Voice> voices = new ArrayList<>();
    for (int i = 0; i < vehicle.traces().size(); i++) {
      Trace trace = vehicle.traces().get(i);
      List<Expectation> values = trace.values().get(rule.aspect());
      if (trace.item().equals(item) && values != null) {
        voices.add(
            new Voice(
                Optional.of("trace " + (i + 1)),
                Optional.of(trace.grade()),
                trace.manner(),
                values));
      }
    }
    return voices;
  }

  private Map<String, Integer> weights(List<Voice> voices) {
    Map<String, Integer> weights = new LinkedHashMap<>();
    for (Voice voice : voices) {
      voice
          .source()
          .ifPresent(
              name -> {
                Optional<Grade> grade =
                    voice
                        .grade()
                        .or(
                            () ->
                                Optional.ofNullable(rules.sources().get(name)).map(Source::grade));
                grade.ifPresent(
                    it -> weights.put(name, rules.scale().grades().getOrDefault(it, 1)));
              });
    }
    return weights;
  }

  /** Returns the positions that the vehicle is judged by. */
  private static List<Integer> judged(Outcome outcome, int count) {
    if (outcome.settledOn().isPresent()) {
      return List.of(outcome.settledOn().getAsInt());
    }
    if (outcome.live().isEmpty() || outcome.state() == DisputeState.UNSOURCED) {
      List<Integer> all = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        all.add(i);
      }
      return all;
    }
    return outcome.live();
  }

  private Map<Integer, List<Further>> settling(int count, List<Testimony> testimonies) {
    List<Grade> grades = Arrays.asList(Grade.values());
    List<Integer> gradeWeights =
        grades.stream().map(grade -> rules.scale().grades().getOrDefault(grade, 1)).toList();
    Map<Integer, List<Further>> found = new LinkedHashMap<>();
    List<Settling> all = Settling.of(count, testimonies, gradeWeights, rules.scale().settledAt());
    for (int i = 0; i < all.size(); i++) {
      Settling one = all.get(i);
      Grade grade = grades.get(i % grades.size());
      if (one.further().isPresent()) {
        found
            .computeIfAbsent(one.position(), position -> new ArrayList<>())
            .add(new Further(grade, one.further().getAsInt()));
      }
    }
    return found;
  }

  private AspectJudgment conclude(
      String item,
      AspectRule rule,
      Frame frame,
      Set<String> witnesses,
      Map<String, Integer> weights,
      Outcome outcome,
      List<Integer> judged,
      Map<Integer, List<Further>> settling) {
    List<BigFraction> shares = shares(outcome, judged, frame.positions().size());
    List<PositionJudgment> positions = new ArrayList<>();
    for (int i = 0; i < frame.positions().size(); i++) {
      List<String> sayers = frame.sayers().get(i);
      positions.add(
          new PositionJudgment(
              frame.positions().get(i),
              sayers.stream().filter(witnesses::contains).toList(),
              sayers.stream().filter(name -> !witnesses.contains(name)).toList(),
              outcome.weighing().belief(i),
              outcome.weighing().plausibility(i),
              shares.get(i).doubleValue(),
              judged.contains(i),
              compare(item, rule, frame.positions().get(i)),
              settling.getOrDefault(i, List.of())));
    }
    List<Comparison> comparisons = judged.stream().map(i -> positions.get(i).comparison()).toList();
    Credits credits =
        Credits.of(
            comparisons, judged.stream().map(shares::get).toList(), rules.scale().notShown());
    Optional<BigFraction> allowed = allowed(item, credits.verdict());
    Credits kept = allowed.map(credits::atLeast).orElse(credits);
    long points = rule.possible();
    long rides =
        outcome.state() == DisputeState.DISPUTED
            ? Exact.part(points, credits.bestPosition())
                - Exact.part(points, credits.worstPosition())
            : 0;
    List<Integer> order = Speakers.order(positions);
    return new AspectJudgment(
        rule,
        credits.verdict(),
        outcome.state(),
        outcome.weighing().conflict(),
        outcome.weighing().unassigned(),
        order.stream().map(positions::get).toList(),
        Speakers.of(frame, weights, copies, order),
        kept.low(),
        kept.likely(),
        kept.high(),
        allowed,
        kept.of(points),
        credits.of(points),
        rides);
  }

  private static List<BigFraction> shares(Outcome outcome, List<Integer> judged, int count) {
    BigFraction[] shares = new BigFraction[count];
    Arrays.fill(shares, BigFraction.ZERO);
    if (judged.size() == 1) {
      shares[judged.get(0)] = BigFraction.ONE;
      return List.of(shares);
    }
    long live = judged.stream().mapToLong(i -> 1L << i).reduce(0, (a, b) -> a | b);
    List<Share> exact = outcome.weighing().shares(live);
    for (int i : judged) {
      shares[i] = BigFraction.of(exact.get(i).numerator(), exact.get(i).denominator());
    }
    return List.of(shares);
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
      return knownWrong
          ? Comparer.departs(() -> "the owner says that it departs")
          : Comparer.notShown(() -> "not shown");
    }
    Comparer comparer =
        new Comparer(rules, vehicle, item, rule.aspect(), found.get(), days.first(), build);
    return named(accepts, found.get()).stream()
        .map(value -> value.match(comparer))
        .max(
            Comparator.comparing(Comparison::credit)
                .thenComparing(it -> it.verdict() != Verdict.NOT_SHOWN))
        .orElseThrow();
  }

  /** What was found counts by its own name where that is listed, else as a kind of another. */
  private static List<Expectation> named(List<Expectation> accepts, Finding found) {
    List<Expectation> byName =
        accepts.stream().filter(value -> found.equals(new Finding.Word(value.key()))).toList();
    return byName.isEmpty() ? accepts : byName;
  }

  private Optional<BigFraction> allowed(String item, Verdict verdict) {
    if (verdict == Verdict.MEETS || verdict == Verdict.NOT_SHOWN) {
      return Optional.empty();
    }
    return Optional.ofNullable(vehicle.observations().get(item))
        .flatMap(Observation::departure)
        .flatMap(departure -> Optional.ofNullable(rules.scale().allow().get(departure.reason())));
  }
}
