package assize.cli;

import assize.diagnostic.Code;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.Result;
import assize.judge.Judge;
import assize.judgment.Judgment;
import assize.report.html.HtmlRoster;
import assize.report.view.RosterEntry;
import assize.text.SourceFile;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;

/**
 * Judges all vehicles of a folder and writes an index of them. Several are worked on at once, each
 * is put on disk as soon as it is judged, and what they give is taken in the order of their paths.
 */
final class Roster {
  static final String INDEX = "roster.html";

  private final Terminal terminal;
  private final Wanted wanted;
  private final Inputs inputs;
  private final Set<String> claimed = ConcurrentHashMap.newKeySet();

  Roster(Terminal terminal, Wanted wanted) {
    this.terminal = terminal;
    this.wanted = wanted;
    this.inputs = new Inputs(terminal);
  }

  /**
   * What a person asked for.
   *
   * @param json where the machine's form goes; with {@code -}, standard output and no page
   * @param leaveOut whether records with errors are left out instead of stopping it all
   * @param indexOnly whether the index is all that is written
   */
  record Wanted(
      Path folder,
      Path out,
      Optional<Path> rules,
      Optional<LocalDate> asOf,
      Optional<String> json,
      boolean leaveOut,
      boolean indexOnly) {
    boolean toOutput() {
      return json.equals(Optional.of("-"));
    }

    Path index() {
      return out.resolve(INDEX);
    }
  }

  /**
   * What one file gave.
   *
   * @param id the vehicle's, or empty where the file is no record or has errors
   * @param row its row of the index
   * @param line its judgment as one line of JSON
   */
  record Made(
      Path file,
      List<Diagnostic> found,
      Optional<String> id,
      Optional<RosterEntry> entry,
      String row,
      String line) {
    static Made without(Path file, List<Diagnostic> found) {
      return new Made(file, found, Optional.empty(), Optional.empty(), "", "");
    }
  }

  /** Makes it all, or says what is wrong and writes nothing. */
  boolean make() throws IOException {
    if (!Files.isDirectory(wanted.folder())) {
      terminal.error("error: " + wanted.folder() + ": there is no such folder");
      return false;
    }
    if (wanted.json().map(Path::of).filter(wanted.index()::equals).isPresent()) {
      terminal.error(
          "error: " + wanted.index() + ": the index goes there; name another for --json");
      return false;
    }
    RecordFiles files = RecordFiles.in(wanted.folder());
    if (!wanted.toOutput()) {
      OutputFile.check(List.of(wanted.index()));
    }
    wanted
        .json()
        .filter(file -> !wanted.toOutput())
        .ifPresent(file -> OutputFile.check(List.of(Path.of(file))));
    try (Outputs outputs = new Outputs();
        RosterGathering gathered = new RosterGathering(terminal, wanted, files.files().size())) {
      files.closed().forEach(gathered::closed);
      work(files.files(), outputs, gathered);
      if (!gathered.isFine()) {
        return false;
      }
      if (wanted.toOutput()) {
        gathered.lines().copyTo(terminal.out());
        return true;
      }
      wanted.json().ifPresent(file -> outputs.stage(Path.of(file), gathered.lines()::copyTo));
      outputs.stage(
          wanted.index(),
          out -> {
            Writer page = new OutputStreamWriter(out, StandardCharsets.UTF_8);
            new HtmlRoster().write(gathered.view(), gathered::rows, page);
            page.flush();
          });
      outputs.place();
      terminal.result(wanted.index() + ": " + gathered.summary());
      return true;
    }
  }

  private void work(List<Path> files, Outputs outputs, RosterGathering gathered)
      throws IOException {
    int processors = Runtime.getRuntime().availableProcessors();
    ExecutorService workers = Executors.newFixedThreadPool(processors);
    Deque<Future<Made>> ahead = new ArrayDeque<>();
    try {
      Iterator<Path> waiting = files.iterator();
      while (waiting.hasNext() || !ahead.isEmpty()) {
        while (waiting.hasNext() && ahead.size() < 2 * processors) {
          Path file = waiting.next();
          ahead.add(workers.submit(() -> make(file, outputs)));
        }
        gathered.take(ahead.remove().get());
      }
    } catch (ExecutionException e) {
      if (e.getCause() instanceof OutputFile.CannotWrite cannot) {
        throw cannot;
      }
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    } finally {
      workers.shutdownNow();
      end(workers);
    }
  }

  private static void end(ExecutorService workers) {
    try {
      boolean ended = workers.awaitTermination(1, TimeUnit.MINUTES);
      assert ended;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private Made make(Path file, Outputs outputs) {
    if (!inputs.isRecord(file)) {
      return Made.without(file, inputs.unreadable(file));
    }
    Result<Inputs.Read> read = inputs.vehicle(file, wanted.rules());
    if (read.value().isEmpty()) {
      return Made.without(file, read.diagnostics());
    }
    List<Diagnostic> found = new ArrayList<>(read.diagnostics());
    Judgment judgment =
        Judge.judge(read.value().get().rules(), read.value().get().vehicle(), wanted.asOf());
    String id = judgment.vehicle().id();
    if (id.equalsIgnoreCase("roster")) {
      found.add(
          about(
              Code.BAD_NAME,
              file,
              "a record may not be named \"roster\" here: the index is named so"));
    }
    String line = wanted.json().isPresent() ? Reports.line(judgment) + "\n" : "";
    Optional<RosterEntry> entry = Optional.empty();
    String row = "";
    if (!wanted.toOutput()) {
      Path page = Reports.place(wanted.out(), judgment);
      if (!wanted.indexOnly() && claimed.add(id.toLowerCase(Locale.ROOT))) {
        outputs.stage(page, Reports.page(file, judgment, found));
      }
      RosterEntry made = RosterEntry.of(judgment, wanted.indexOnly() ? "" : id + ".html");
      entry = Optional.of(made);
      row = HtmlRoster.row(made.row());
    }
    return found.stream().anyMatch(Diagnostic::isError)
        ? Made.without(file, found)
        : new Made(file, found, Optional.of(id), entry, row, line);
  }

  /** Says something of a whole file; what it says is kept without the file's text. */
  static Diagnostic about(Code code, Path file, String message) {
    SourceFile name = new SourceFile(RecordFiles.shown(file), "");
    return Diagnostic.of(code, name.span(0, 0), message);
  }
}
