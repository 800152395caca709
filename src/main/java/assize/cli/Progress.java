package assize.cli;

import java.util.Locale;
import java.util.function.LongSupplier;

/**
 * A line on a terminal that says how far long work has come; anywhere else it says nothing. The
 * time left is worked out from all that was done so far, and not said before that means something.
 */
final class Progress implements AutoCloseable {
  private static final long SECOND = 1_000_000_000L;
  private static final long BETWEEN = SECOND / 4;
  private static final long ENOUGH_TIME = 3 * SECOND;
  private static final int ENOUGH_DONE = 10;

  private final Terminal terminal;
  private final LongSupplier nanos;
  private final int all;
  private final long begun;
  private long next;
  private int done;
  private int shown;

  /**
   * Begins.
   *
   * @param all how many steps there are
   * @param nanos a clock that only runs forward
   */
  Progress(Terminal terminal, int all, LongSupplier nanos) {
    this.terminal = terminal;
    this.all = all;
    this.nanos = nanos;
    this.begun = nanos.getAsLong();
    this.next = begun + BETWEEN;
  }

  /** Takes one step. */
  void step() {
    done++;
    long now = nanos.getAsLong();
    if (terminal.live() && now >= next) {
      next = now + BETWEEN;
      show(words(now - begun));
    }
  }

  private String words(long spent) {
    String far = String.format(Locale.ROOT, "%d of %d (%d%%)", done, all, done * 100L / all);
    if (spent < ENOUGH_TIME || done < ENOUGH_DONE) {
      return far;
    }
    long left = (long) ((double) spent / done * (all - done) / SECOND);
    return far
        + (left < 60 ? ", less than a minute left" : ", about " + (left + 59) / 60 + " min left");
  }

  private void show(String words) {
    terminal.err().print("\r" + words + " ".repeat(Math.max(0, shown - words.length())));
    terminal.err().flush();
    shown = words.length();
  }

  /** Takes the line away, so that something else can be printed. */
  void clear() {
    if (shown > 0) {
      terminal.err().print("\r" + " ".repeat(shown) + "\r");
      terminal.err().flush();
      shown = 0;
    }
  }

  @Override
  public void close() {
    clear();
  }
}
