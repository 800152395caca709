package assize.judge;

import assize.judgment.Judgment;
import assize.record.VehicleRecord;
import assize.ruleset.NumberTable;
import assize.ruleset.NumberTable.Series;
import assize.ruleset.RuleSet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Judges vehicles by a rule set: rule set and record in, judgment out. Any thread may ask.
 *
 * <p>The possible build days are cut into stretches; each item is judged in each; the points of
 * each stretch make a score; low and high are the least and the greatest of these, likely the mean
 * over the days.
 */
public final class Judge {
  private final CompiledRuleSet bench;

  private Judge(RuleSet rules) {
    this.bench = new CompiledRuleSet(rules);
  }

  /** Makes a rule set ready, so that many vehicles can be judged by it. */
  public static Judge by(RuleSet rules) {
    return new Judge(rules);
  }

  /**
   * Judges one vehicle.
   *
   * @param asOf the day on which departures with a date are looked at; without one the day of the
   *     record counts, if it says one
   */
  public static Judgment judge(RuleSet rules, VehicleRecord vehicle, Optional<LocalDate> asOf) {
    return by(rules).judge(vehicle, asOf);
  }

  /**
   * Says why a vehicle takes too long to be judged; nothing where it does not.
   *
   * @return what there is too much of, in words
   */
  public Optional<String> crowded(VehicleRecord vehicle) {
    return PeriodSplitter.crowded(
        bench, vehicle, BuildDateResolver.of(bench.rules(), vehicle, new ArrayList<>()).days());
  }

  /** Judges a vehicle, with everything that a report says of it. */
  public Judgment judge(VehicleRecord vehicle, Optional<LocalDate> asOf) {
    return new DetailedJudge(bench, vehicle, Recall.nothing()).judge(asOf);
  }

  /**
   * Begins to judge one vehicle over and over as its record changes: what a change leaves alone is
   * not judged again. What it returns is for one thread at a time.
   */
  public Function<VehicleRecord, Judgment> suppose() {
    Recall recall = Recall.of();
    return vehicle -> new DetailedJudge(bench, vehicle, recall).judge(Optional.empty());
  }

  /**
   * Returns the numbers of a series that the table dates, cut wherever what follows from a number
   * changes.
   *
   * @param from the least number looked at
   * @param to the greatest
   */
  public List<NumberRun> numbersAlike(NumberTable table, Series series, long from, long to) {
    return NumberRuns.of(table, series, from, to, bench.conditions());
  }
}
