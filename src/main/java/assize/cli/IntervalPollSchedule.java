package assize.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** Looks twice a second, until somebody ends the program by Ctrl-C, which then ends well. */
final class IntervalPollSchedule implements PollSchedule {
  private static final long BETWEEN_MILLIS = 500;

  /** How long a run may still take once the program is to end. */
  private static final long LEFT_SECONDS = 2;

  private final Terminal terminal;
  private final CountDownLatch asked = new CountDownLatch(1);
  private final CountDownLatch over = new CountDownLatch(1);
  private boolean begun;

  IntervalPollSchedule(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public boolean another() {
    if (!begun) {
      begun = true;
      Runtime.getRuntime().addShutdownHook(new Thread(this::end, "end of watching"));
    }
    try {
      boolean ended = asked.await(BETWEEN_MILLIS, TimeUnit.MILLISECONDS);
      if (ended) {
        over.countDown();
      }
      return !ended;
    } catch (InterruptedException e) {
      return false;
    }
  }

  @Override
  public boolean areOver() {
    return asked.getCount() == 0;
  }

  /** Whoever ends the program by a signal is told 130 or 143 by Java; nothing went wrong here. */
  private void end() {
    asked.countDown();
    try {
      over.await(LEFT_SECONDS, TimeUnit.SECONDS);
      terminal.out().flush();
      terminal.err().flush();
      Runtime.getRuntime().halt(Exit.DONE);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
