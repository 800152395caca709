package assize;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.engine.support.descriptor.ClassSource;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.TestPlan;

/** Prints the ten test classes that took the longest, after each run of more than ten. */
public final class SlowestTests implements TestExecutionListener {
  private static final int SHOWN = 10;

  private final Map<String, Long> started = new ConcurrentHashMap<>();
  private final Map<String, Duration> took = new ConcurrentHashMap<>();

  @Override
  public void executionStarted(TestIdentifier test) {
    if (isClass(test)) {
      started.put(test.getUniqueId(), System.nanoTime());
    }
  }

  @Override
  public void executionFinished(TestIdentifier test, TestExecutionResult result) {
    Long start = started.remove(test.getUniqueId());
    if (start != null) {
      String name = test.getLegacyReportingName();
      took.merge(name, Duration.ofNanos(System.nanoTime() - start), Duration::plus);
    }
  }

  @Override
  public void testPlanExecutionFinished(TestPlan plan) {
    if (took.size() <= SHOWN) {
      return;
    }
    Duration all = took.values().stream().reduce(Duration.ZERO, Duration::plus);
    System.out.printf("%nSlowest of %d test classes (%s in all):%n", took.size(), seconds(all));
    List<Map.Entry<String, Duration>> slowest =
        took.entrySet().stream()
            .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
            .limit(SHOWN)
            .toList();
    slowest.forEach(it -> System.out.printf("%10s  %s%n", seconds(it.getValue()), it.getKey()));
    took.clear();
  }

  /** Returns whether this is a test class of its own: nested classes count with the outer one. */
  private static boolean isClass(TestIdentifier test) {
    return test.getSource().filter(ClassSource.class::isInstance).isPresent()
        && test.getUniqueIdObject().getSegments().size() == 2;
  }

  private static String seconds(Duration time) {
    return "%.1f s".formatted(time.toMillis() / 1000.0);
  }
}
