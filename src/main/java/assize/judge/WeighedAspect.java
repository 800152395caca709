package assize.judge;

import assize.aspect.Expectation;
import assize.evidence.DempsterCombination.Share;
import assize.evidence.DisputeState;
import assize.evidence.EvidenceNeeded;
import assize.evidence.Grade;
import assize.evidence.SimpleSupport;
import assize.evidence.Source;
import assize.evidence.SourceIndependence;
import assize.evidence.WeighingResult;
import assize.judge.FrameOfDiscernment.SourceStatement;
import assize.judgment.PositionJudgment.SourcesNeeded;
import assize.judgment.SourceJudgment;
import assize.ruleset.AspectRule;
import assize.ruleset.RuleSet;
import assize.ruleset.Scale;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What the sources that speak come to on one aspect, before a vehicle is looked at: the same for
 * every vehicle of which the same sources speak.
 *
 * @param held the positions, those that are judged by first, the most believed first
 * @param sources every source that speaks, and what it comes to
 */
record WeighedAspect(
    AspectRule rule,
    DisputeState state,
    double conflict,
    double unassigned,
    List<WeighedPosition> held,
    List<SourceJudgment> sources) {

  /**
   * One position.
   *
   * @param accepts the values that it holds to be right
   * @param sources who holds it
   * @param repeatingSources sources that only repeat one they copy
   * @param share its part of the likely credit
   * @param scored whether a vehicle is judged by it
   * @param settling what would settle the matter for it
   */
  record WeighedPosition(
      List<Expectation> accepts,
      List<String> sources,
      List<String> repeatingSources,
      double belief,
      double plausibility,
      BigFraction share,
      boolean scored,
      List<SourcesNeeded> settling) {}

  WeighedAspect {
    held = List.copyOf(held);
    sources = List.copyOf(sources);
  }

  /** Weighs what is said; returns nothing where no position is named. */
  static Optional<WeighedAspect> of(
      RuleSet rules,
      SourceIndependence<String> copies,
      AspectRule rule,
      List<SourceStatement> voices) {
    FrameOfDiscernment frame = FrameOfDiscernment.of(voices);
    if (frame.positions().isEmpty()) {
      return Optional.empty();
    }
    Map<String, Integer> weights = weights(rules, voices);
    Set<String> witnesses = copies.witnesses(frame.compatiblePositions(), weights);
    List<SimpleSupport> testimonies =
        frame.compatiblePositions().entrySet().stream()
            .filter(stands -> witnesses.contains(stands.getKey()))
            .map(
                stands ->
                    new SimpleSupport(weights.getOrDefault(stands.getKey(), 1), stands.getValue()))
            .toList();
    int count = frame.positions().size();
    WeighingResult outcome =
        WeighingResult.of(count, testimonies, rules.scale().settledAt(), Scale.LIVE_AT);
    List<Integer> judged = scored(outcome, count);
    Map<Integer, List<SourcesNeeded>> settling =
        outcome.state() == DisputeState.DISPUTED ? settling(rules, count, testimonies) : Map.of();
    List<BigFraction> shares = shares(outcome, judged, count);
    List<WeighedPosition> positions = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      List<String> sayers = frame.sayers().get(i);
      positions.add(
          new WeighedPosition(
              frame.positions().get(i),
              sayers.stream().filter(witnesses::contains).toList(),
              sayers.stream().filter(name -> !witnesses.contains(name)).toList(),
              outcome.weighing().belief(i),
              outcome.weighing().plausibility(i),
              shares.get(i),
              judged.contains(i),
              settling.getOrDefault(i, List.of())));
    }
    List<Integer> order = ApplicableSources.order(positions);
    return Optional.of(
        new WeighedAspect(
            rule,
            outcome.state(),
            outcome.weighing().conflict(),
            outcome.weighing().unassigned(),
            order.stream().map(positions::get).toList(),
            ApplicableSources.of(frame, weights, copies, witnesses, order)));
  }

  private static Map<String, Integer> weights(RuleSet rules, List<SourceStatement> voices) {
    Map<String, Integer> weights = new LinkedHashMap<>();
    for (SourceStatement voice : voices) {
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

  /** Returns the positions that a vehicle is judged by. */
  private static List<Integer> scored(WeighingResult outcome, int count) {
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

  private static Map<Integer, List<SourcesNeeded>> settling(
      RuleSet rules, int count, List<SimpleSupport> testimonies) {
    List<Grade> grades = Arrays.asList(Grade.values());
    List<Integer> gradeWeights =
        grades.stream().map(grade -> rules.scale().grades().getOrDefault(grade, 1)).toList();
    Map<Integer, List<SourcesNeeded>> found = new LinkedHashMap<>();
    List<EvidenceNeeded> all =
        EvidenceNeeded.of(count, testimonies, gradeWeights, rules.scale().settledAt());
    for (int i = 0; i < all.size(); i++) {
      EvidenceNeeded one = all.get(i);
      Grade grade = grades.get(i % grades.size());
      if (one.further().isPresent()) {
        found
            .computeIfAbsent(one.position(), position -> new ArrayList<>())
            .add(new SourcesNeeded(grade, one.further().getAsInt()));
      }
    }
    return found;
  }

  private static List<BigFraction> shares(WeighingResult outcome, List<Integer> judged, int count) {
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
}
