package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class ProgressTest {
  private final AtomicLong now = new AtomicLong();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  private Progress progress(boolean live, int all) {
    PrintStream to = new PrintStream(err, true, StandardCharsets.UTF_8);
    return new Progress(new Terminal(to, to, false, live), all, now::get);
  }

  /** Returns what stands on the line: what was last written over it, without what pads it. */
  private String line() {
    String all = err.toString(StandardCharsets.UTF_8);
    return all.substring(all.lastIndexOf('\r') + 1).stripTrailing();
  }

  private static void steps(Progress progress, int count, Runnable before) {
    for (int i = 0; i < count; i++) {
      before.run();
      progress.step();
    }
  }

  @Test
  void saysHowFarAndHowLongOnceThatMeansSomething() {
    try (Progress progress = progress(true, 1000)) {
      steps(progress, 2, () -> now.addAndGet(1_000_000_000L));
      assertThat(line()).isEqualTo("2 of 1000 (0%)");
      steps(progress, 18, () -> now.addAndGet(1_000_000_000L));
      // by hand: 980 more at a second each are 16 minutes and 20 seconds
      assertThat(line()).isEqualTo("20 of 1000 (2%), about 17 min left");
      steps(progress, 980, () -> now.addAndGet(10_000_000L));
      assertThat(line()).contains("of 1000").contains("less than a minute left");
    }
    assertThat(line()).isEmpty();
  }

  @Test
  void writesNoOftenerThanCanBeRead() {
    try (Progress progress = progress(true, 1000)) {
      steps(progress, 1000, () -> now.addAndGet(1_000_000L));
    }
    assertThat(err.toString(StandardCharsets.UTF_8).split("of 1000", -1)).hasSize(1 + 4);
  }

  @Test
  void saysNothingWhereNobodyLooksOn() {
    try (Progress progress = progress(false, 1000)) {
      steps(progress, 1000, () -> now.addAndGet(1_000_000_000L));
    }
    assertThat(err.size()).isZero();
    assertThat(Terminal.liveFor(Map.of("TERM", "xterm", "NO_COLOR", "1"), true)).isTrue();
    assertThat(Terminal.liveFor(Map.of("TERM", "xterm"), false)).isFalse();
    assertThat(Terminal.liveFor(Map.of("TERM", "dumb"), true)).isFalse();
  }
}
