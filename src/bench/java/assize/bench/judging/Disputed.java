package assize.bench.judging;

import assize.bench.Baseline;
import assize.judge.Judge;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import java.util.List;
import java.util.Optional;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * What it costs that sources differ on a third of the items and that each vehicle may have been
 * built in any of three years, at each turn of which other items hold.
 */
@State(Scope.Benchmark)
@SuppressWarnings("NullAway.Init") // JMH calls prepare() first.
public class Disputed {
  private static final int DISPUTED = 33;

  @Param({"100"})
  public int vehicles = 100;

  private Judge plain;
  private Judge disputed;
  private List<VehicleRecord> ofOneDay;
  private List<VehicleRecord> ofThreeYears;

  /** Makes two fleets, and sees that the one is cut and the other is not. */
  @Setup
  public void prepare() {
    Standard agreed = new Standard(0);
    RuleSet agreedRules = agreed.rules();
    plain = Judge.by(agreedRules);
    ofOneDay = new Fleet(agreed, agreedRules, vehicles, false).records;
    Standard differing = new Standard(DISPUTED);
    RuleSet differingRules = differing.rules();
    disputed = Judge.by(differingRules);
    ofThreeYears = new Fleet(differing, differingRules, vehicles, true).records;
    int cut = disputed.judge(ofThreeYears.get(0), Optional.empty()).stretches().size();
    if (plain.judge(ofOneDay.get(0), Optional.empty()).stretches().size() != 1 || cut != 3) {
      throw new IllegalStateException("cut into " + cut);
    }
  }

  @Benchmark
  public long agreedJudgments() {
    return ofOneDay.stream()
        .mapToLong(it -> plain.judge(it, Optional.empty()).score().likely())
        .sum();
  }

  @Benchmark
  @Baseline(
      value = "agreedJudgments",
      says = "whole judgments, a third disputed, three stretches : none, one",
      goal = 0.25)
  public long disputedJudgments() {
    return ofThreeYears.stream()
        .mapToLong(it -> disputed.judge(it, Optional.empty()).score().likely())
        .sum();
  }
}
