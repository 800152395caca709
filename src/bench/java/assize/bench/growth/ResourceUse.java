package assize.bench.growth;

import com.sun.management.OperatingSystemMXBean;
import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * What one run used.
 *
 * @param seconds of the processor, in all threads of the process: others that run beside it do not
 *     count
 * @param megabytes that the running thread asked for
 */
record ResourceUse(double seconds, double megabytes) {
  private static final OperatingSystemMXBean SYSTEM =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  /** Returns the middle of several runs. */
  static ResourceUse middle(Course.Run run, int rounds) {
    List<Double> seconds = new ArrayList<>();
    List<Double> megabytes = new ArrayList<>();
    for (int i = 0; i < rounds; i++) {
      long asked = THREADS.getCurrentThreadAllocatedBytes();
      long began = SYSTEM.getProcessCpuTime();
      run.once();
      seconds.add((SYSTEM.getProcessCpuTime() - began) / 1e9);
      megabytes.add((THREADS.getCurrentThreadAllocatedBytes() - asked) / 1e6);
    }
    Collections.sort(seconds);
    Collections.sort(megabytes);
    return new ResourceUse(seconds.get(rounds / 2), megabytes.get(rounds / 2));
  }
}
