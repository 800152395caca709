package assize.bench.judging;

import assize.aspect.Verdict;
import assize.bench.Baseline;
import assize.bench.judging.Engines.Found;
import assize.judge.Judge;
import assize.ruleset.RuleSet;
import java.util.List;
import java.util.Optional;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * Judges some vehicles by a standard of 1,000 items, against engines that evaluate rules; all must
 * find the same number of items that meet.
 */
@State(Scope.Benchmark)
@SuppressWarnings("NullAway.Init") // JMH calls prepare() first.
public class AgainstEngines {
  private static final int VEHICLES = 50;

  private Fleet fleet;
  private Judge judge;
  private Engines engines;
  private List<List<Found>> findings;

  /** Makes the fleet, and compares what all of them find. */
  @Setup
  public void prepare() {
    Standard standard = new Standard(0);
    RuleSet rules = standard.rules();
    fleet = new Fleet(standard, rules, VEHICLES, false);
    judge = Judge.by(rules);
    engines = new Engines(standard, fleet);
    findings = engines.findings(VEHICLES);
    long met = judgments();
    if (byDrools() != met || byCel() != met) {
      throw new IllegalStateException(met + ", " + byDrools() + ", " + byCel());
    }
  }

  @Benchmark
  public long byDrools() {
    return engines.byDrools(findings);
  }

  @Benchmark
  public long byCel() {
    return engines.byCel(findings);
  }

  @Benchmark
  @Baseline(value = "byDrools", says = "whole judgments, with reasons : Drools", goal = 0)
  @Baseline(value = "byCel", says = "whole judgments, with reasons : CEL", goal = 0)
  public long judgments() {
    return fleet.records.stream()
        .flatMap(it -> judge.judge(it, Optional.empty()).items().stream())
        .filter(item -> item.verdict() == Verdict.CORRECT)
        .count();
  }
}
