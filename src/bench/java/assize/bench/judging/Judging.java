package assize.bench.judging;

import assize.aspect.Verdict;
import assize.bench.Against;
import assize.bench.judging.ByHand.Sum;
import assize.judge.Judge;
import assize.judgment.Judgment;
import assize.judgment.ScoreRange;
import assize.judgment.Totals;
import assize.ruleset.RuleSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
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
public class Judging {
  private static final int CHUNK = 50;
  private static final int FEW = 100;

  @Param({"10000"})
  public int vehicles = 10_000;

  private Fleet fleet;
  private ByHand hand;
  private Judge judge;
  private ForkJoinPool two;

  /** Makes the fleet, and compares what both sides find. */
  @Setup
  public void prepare() {
    Standard standard = new Standard(0);
    RuleSet rules = standard.rules();
    fleet = new Fleet(standard, rules, vehicles, false);
    hand = new ByHand(standard, fleet);
    judge = Judge.by(rules);
    two = new ForkJoinPool(2);
    if (!figures().equals(byHand())) {
      throw new IllegalStateException(figures() + ", by hand " + byHand());
    }
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
  @Against(value = "byHand", says = "figures of a vehicle : a loop over arrays", goal = 0.5)
  public Sum figures() {
    return figures(0, vehicles);
  }

  @Benchmark
  @Against(value = "byHand", says = "the same loop in two threads : in one", goal = 1.8)
  public Sum byHandInTwo() {
    return inTwo(first -> hand.judge(first, Math.min(vehicles, first + CHUNK)));
  }

  @Benchmark
  @Against(value = "figures", says = "figures in two threads : in one", goal = 1.8)
  public Sum figuresInTwo() {
    return inTwo(first -> figures(first, Math.min(vehicles, first + CHUNK)));
  }

  @Benchmark
  public Sum fewByHand() {
    return hand.judge(0, FEW);
  }

  @Benchmark
  @Against(
      value = "fewByHand",
      says = "whole judgments, with reasons : a loop over arrays",
      goal = 0)
  public Sum judgments() {
    Sum sum = new Sum(0, 0, 0, 0);
    for (int v = 0; v < FEW; v++) {
      Judgment judgment = judge.judge(fleet.records.get(v), Optional.empty());
      long met = judgment.items().stream().filter(item -> item.verdict() == Verdict.MEETS).count();
      sum = sum.plus(sum(met, judgment.score()));
    }
    return sum;
  }

  private Sum inTwo(IntFunction<Sum> part) {
    List<Integer> firsts =
        IntStream.range(0, vehicles).filter(i -> i % CHUNK == 0).boxed().toList();
    return two.submit(
            () -> firsts.parallelStream().map(part::apply).reduce(new Sum(0, 0, 0, 0), Sum::plus))
        .join();
  }

  private Sum figures(int first, int last) {
    Sum sum = new Sum(0, 0, 0, 0);
    for (int v = first; v < last; v++) {
      Totals totals = judge.totals(fleet.records.get(v));
      sum = sum.plus(sum(totals.verdicts().getOrDefault(Verdict.MEETS, 0), totals.score()));
    }
    return sum;
  }

  private static Sum sum(long met, ScoreRange score) {
    return new Sum(met, score.low(), score.likely(), score.high());
  }
}
