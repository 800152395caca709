package assize.cli;

import assize.report.text.DiagnosticFormatter;
import java.nio.file.Path;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import picocli.CommandLine.ParameterException;

/**
 * Does something again whenever one of the files that it read is saved. A file that is being saved
 * is left alone until two looks find it the same.
 */
final class FileWatcher {
  private static final int NAMED = 3;
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

  private final Terminal terminal;
  private final Supplier<PollSchedule> looks;
  private final Supplier<LocalTime> clock;

  FileWatcher(Terminal terminal, Supplier<PollSchedule> looks, Supplier<LocalTime> clock) {
    this.terminal = terminal;
    this.looks = looks;
    this.clock = clock;
  }

  /** Watches as a person wants it, by the clock on the wall. */
  static FileWatcher live(Terminal terminal) {
    return new FileWatcher(terminal, () -> new IntervalPollSchedule(terminal), LocalTime::now);
  }

  /**
   * Does something once, and again at each save.
   *
   * @param named what the command line names
   * @param work does it by what it reads anew, and returns an exit code
   */
  int run(Collection<Path> named, Function<InputLoader, Integer> work) {
    PollSchedule looking = looks.get();
    FileSnapshot begun = FileSnapshot.look(named);
    Set<Path> read = work(named, Set.of(), work, looking);
    FileSnapshot done = FileSnapshot.look(read).asOf(begun);
    terminal.error(
        "watching " + DiagnosticFormatter.number(done.files().size(), "file") + "; Ctrl-C ends");
    flush();
    FileSnapshot last = done;
    while (looking.another()) {
      FileSnapshot now = FileSnapshot.look(read);
      boolean settled = now.equals(last);
      last = now;
      if (settled && !now.equals(done)) {
        say(now.changedFrom(done));
        read = work(named, read, work, looking);
        done = FileSnapshot.look(read).asOf(now);
        last = done;
        flush();
      }
    }
    return Exit.DONE;
  }

  /** Does the work, and returns what is to be watched then. */
  private Set<Path> work(
      Collection<Path> named,
      Set<Path> before,
      Function<InputLoader, Integer> work,
      PollSchedule looking) {
    InputLoader inputs = new InputLoader(terminal);
    int exit = Exit.CANNOT_WRITE;
    try {
      exit = work.apply(inputs);
    } catch (ParameterException e) {
      throw e;
    } catch (RuntimeException | StackOverflowError e) {
      if (!looking.areOver()) {
        exit = IoErrorMessages.say(terminal, e, List.of());
      }
    }
    Set<Path> read = new LinkedHashSet<>(named);
    read.addAll(inputs.read());
    if (exit != Exit.DONE) {
      // Where something is wrong not all that it names can be read.
      read.addAll(before);
    }
    return read;
  }

  private void say(List<Path> changed) {
    String names =
        changed.stream()
            .limit(NAMED)
            .map(it -> String.valueOf(it.getFileName()))
            .reduce((a, b) -> a + ", " + b)
            .orElse("");
    int more = changed.size() - NAMED;
    terminal.error(
        TIME.format(clock.get())
            + "  "
            + names
            + (more > 0 ? " and " + more + " more" : "")
            + " saved");
  }

  private void flush() {
    terminal.out().flush();
    terminal.err().flush();
  }
}
