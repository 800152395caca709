package assize.bench.judging;

import assize.aspect.Verdict;
import assize.bench.Baseline;
import assize.bench.judging.HandWrittenJudge.Sum;
import assize.judge.Judge;
import assize.judgment.Judgment;
import assize.judgment.ScoreRange;
import assize.record.Observation;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/** Judges a fleet by a standard of 1,000 items; both sides must come to the same. */
@State(Scope.Benchmark)
@Fork(value = 1, jvmArgsAppend = "-Xmx8g")
@SuppressWarnings("NullAway.Init") // JMH calls prepare() first.
public class JudgingBenchmark {
  private static final int CHUNK = 10;

  @Param({"200"})
  public int vehicles = 200;

  private Fleet fleet;
  private HandWrittenJudge hand;
  private Judge judge;
  private List<VehicleRecord> changed;
  private ForkJoinPool two;

  /** Makes the fleet, and compares what both sides find. */
  @Setup
  public void prepare() {
    Standard standard = new Standard(0);
    RuleSet rules = standard.rules();
    fleet = new Fleet(standard, rules, vehicles, false);
    hand = new HandWrittenJudge(standard, fleet);
    judge = Judge.by(rules);
    changed = changed(fleet.records.get(0));
    two = new ForkJoinPool(2);
    if (!judgments().equals(byHand())) {
      throw new IllegalStateException(judgments() + ", by hand " + byHand());
    }
  }

  /** Returns the same vehicle without each of its first observations in turn. */
  private List<VehicleRecord> changed(VehicleRecord own) {
    return own.observations().keySet().stream()
        .limit(vehicles)
        .map(
            item -> {
              Map<String, Observation> left = new LinkedHashMap<>(own.observations());
              left.remove(item);
              return own.with(VehicleRecord.OBSERVATIONS, left);
            })
        .toList();
  }

  @TearDown
  public void close() {
    two.shutdown();
  }

  @Benchmark
  public Sum byHand() {
    return hand.judge(0, vehicles);
  }

  @Benchmark
  @Baseline(value = "byHand", says = "whole judgments, with reasons : a loop over arrays", goal = 0)
  public Sum judgments() {
    return judgments(0, vehicles);
  }

  @Benchmark
  @Baseline(value = "judgments", says = "whole judgments in two threads : in one", goal = 1.6)
  public Sum judgmentsInTwo() {
    return inTwo(first -> judgments(first, Math.min(vehicles, first + CHUNK)));
  }

  @Benchmark
  public long changesAnew() {
    return changed.stream()
        .mapToLong(it -> judge.judge(it, Optional.empty()).score().likely())
        .sum();
  }

  @Benchmark
  @Baseline(
      value = "changesAnew",
      says = "one change judged with what is recalled : anew",
      goal = 3)
  public long changesRecalled() {
    Function<VehicleRecord, Judgment> suppose = judge.suppose();
    return changed.stream().mapToLong(it -> suppose.apply(it).score().likely()).sum();
  }

  private Sum inTwo(IntFunction<Sum> part) {
    List<Integer> firsts =
        IntStream.range(0, vehicles).filter(i -> i % CHUNK == 0).boxed().toList();
    return two.submit(
            () -> firsts.parallelStream().map(part::apply).reduce(new Sum(0, 0, 0, 0), Sum::plus))
        .join();
  }

  private Sum judgments(int first, int last) {
    Sum sum = new Sum(0, 0, 0, 0);
    for (int v = first; v < last; v++) {
      Judgment judgment = judge.judge(fleet.records.get(v), Optional.empty());
      long met =
          judgment.items().stream().filter(item -> item.verdict() == Verdict.CORRECT).count();
      sum = sum.plus(sum(met, judgment.score()));
    }
    return sum;
  }

  private static Sum sum(long met, ScoreRange score) {
    return new Sum(met, score.low(), score.likely(), score.high());
  }
}
