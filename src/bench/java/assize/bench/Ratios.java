package assize.bench;

import java.lang.reflect.Method;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/**
 * Runs the benchmarks of one group and prints how fast each is as a share of what it is measured
 * against, as a Markdown table.
 *
 * <p>Each round measures everything once, each in a process of its own, so that both sides of a
 * ratio are minutes apart at most; a round gives one ratio, and the table shows the middle one with
 * the least and the greatest.
 */
public final class Ratios {
  private static final int WARMING = 5;
  private static final int MEASURED = 5;

  private Ratios() {}

  /** Takes the group, a package below this one; the rounds; and the seconds that one time takes. */
  public static void main(String[] arguments) throws RunnerException {
    String group = arguments[0];
    int rounds = Integer.parseInt(arguments[1]);
    double seconds = Double.parseDouble(arguments[2]);
    Map<RatioRow, List<Double>> ratios = new LinkedHashMap<>();
    for (int round = 1; round <= rounds; round++) {
      System.err.println("round " + round + " of " + rounds);
      round(new Runner(options(group, seconds)).run(), ratios);
    }
    print(group, rounds, ratios);
  }

  private static Options options(String group, double seconds) {
    TimeValue time = TimeValue.milliseconds(Math.round(seconds * 1000));
    return new OptionsBuilder()
        .include("assize\\.bench\\." + group + "\\..*")
        .mode(Mode.AverageTime)
        .forks(1)
        .warmupIterations(WARMING)
        .warmupTime(time)
        .measurementIterations(MEASURED)
        .measurementTime(time)
        .shouldFailOnError(true)
        .output("target/bench-" + group + ".txt")
        .build();
  }

  private static void round(Collection<RunResult> results, Map<RatioRow, List<Double>> ratios) {
    Map<String, Double> times = new LinkedHashMap<>();
    results.forEach(it -> times.put(key(it.getParams()), it.getPrimaryResult().getScore()));
    for (RunResult result : results) {
      BenchmarkParams params = result.getParams();
      for (Baseline against : against(params.getBenchmark())) {
        String other = className(params.getBenchmark()) + "." + against.value() + values(params);
        Double theirs = times.get(other);
        if (theirs == null) {
          throw new IllegalStateException("nothing was measured as " + other);
        }
        RatioRow row = new RatioRow(against.says(), values(params), against.goal());
        ratios
            .computeIfAbsent(row, it -> new ArrayList<>())
            .add(theirs / result.getPrimaryResult().getScore());
      }
    }
  }

  private static Baseline[] against(String benchmark) {
    try {
      return Arrays.stream(Class.forName(className(benchmark)).getMethods())
          .filter(it -> it.getName().equals(methodName(benchmark)))
          .findFirst()
          .map((Method it) -> it.getAnnotationsByType(Baseline.class))
          .orElseThrow();
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String key(BenchmarkParams params) {
    return params.getBenchmark() + values(params);
  }

  private static String values(BenchmarkParams params) {
    List<String> values = new ArrayList<>();
    params.getParamsKeys().forEach(it -> values.add(it + " " + params.getParam(it)));
    return values.isEmpty() ? "" : " (" + String.join(", ", values) + ")";
  }

  private static String className(String benchmark) {
    return benchmark.substring(0, benchmark.lastIndexOf('.'));
  }

  private static String methodName(String benchmark) {
    return benchmark.substring(benchmark.lastIndexOf('.') + 1);
  }

  private static void print(String group, int rounds, Map<RatioRow, List<Double>> ratios) {
    System.out.println(
        String.join(
            ", ",
            LocalDate.now(ZoneOffset.UTC).toString(),
            Runtime.getRuntime().availableProcessors() + " cores",
            System.getProperty("os.arch"),
            "JDK " + Runtime.version(),
            "\"" + group + "\" in " + rounds + (rounds == 1 ? " round" : " rounds")));
    System.out.println();
    System.out.println("| what, against what | goal | ratio | least to greatest |");
    System.out.println("| --- | --- | --- | --- |");
    ratios.forEach((row, found) -> System.out.println(row.line(found)));
  }

  /** One comparison, for the values of its parameters. */
  private record RatioRow(String says, String values, double goal) {
    String line(List<Double> ratios) {
      List<Double> sorted = new ArrayList<>(ratios);
      Collections.sort(sorted);
      double middle = sorted.get(sorted.size() / 2);
      return String.format(
          Locale.ROOT,
          "| %s%s | %s | %s | %s to %s |",
          says,
          values,
          number(goal),
          number(middle),
          number(sorted.get(0)),
          number(sorted.get(sorted.size() - 1)));
    }

    private static String number(double ratio) {
      return String.format(Locale.ROOT, ratio < 10 ? "%.2f" : "%.0f", ratio);
    }
  }
}
