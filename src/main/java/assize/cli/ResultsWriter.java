package assize.cli;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.diagnostic.Result;
import assize.report.results.HtmlResults;
import assize.report.results.ResultsEntry;
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
 * Judges all vehicles of a folder and writes a results page. Several are worked on at once, each is
 * put on disk as soon as it is judged, and what they give is taken in the order of their paths.
 */
final class ResultsWriter {
  private final Terminal terminal;
  private final ResultsOptions wanted;
  private final InputLoader inputs;
  private final Set<String> claimed = ConcurrentHashMap.newKeySet();

  ResultsWriter(Terminal terminal, ResultsOptions wanted) {
    this.terminal = terminal;
    this.wanted = wanted;
    this.inputs = new InputLoader(terminal);
  }

  /**
   * What a person asked for.
   *
   * @param reports what is wanted of each report; the results page goes to its folder too
   * @param leaveOut whether records with errors are left out instead of stopping it all
   * @param noReports whether the results page is all that is written
   */
  record ResultsOptions(
      Path folder,
      ReportWriter.ReportOptions reports,
      Optional<Path> rules,
      Optional<LocalDate> asOf,
      boolean leaveOut,
      boolean noReports) {
    Optional<String> json() {
      return reports.json();
    }

    boolean toOutput() {
      return json().equals(Optional.of("-"));
    }

    Path index() {
      return reports.out().resolve(reports.share() ? "results-redacted.html" : "results.html");
    }
  }

  /**
   * What one file gave.
   *
   * @param problems what stands in the way of its copy for others
   * @param failed whether the program itself failed at it
   * @param judged what came of it; empty where the file is no record or has errors
   */
  record Made(
      Path file,
      List<Diagnostic> found,
      List<String> problems,
      boolean failed,
      Optional<Judged> judged) {
    static Made without(Path file, List<Diagnostic> found) {
      return new Made(file, found, List.of(), false, Optional.empty());
    }
  }

  /**
   * What came of one vehicle; the page itself is on disk, and nothing here holds it.
   *
   * @param page where its report goes, whether or not one is written
   * @param twin says that another vehicle's report goes there too
   * @param entry its row of the results page, and the row as it is printed; none where no page is
   *     made
   * @param line its judgment as one line of JSON
   * @param keeping what has to be done before its page is put into place
   * @param clearing what has to be done after that
   */
  record Judged(
      Path page,
      String twin,
      Optional<ResultsEntry> entry,
      String row,
      String line,
      Runnable keeping,
      Runnable clearing,
      List<String> notes) {}

  /**
   * Makes it all, or says what is wrong and writes nothing.
   *
   * @return how the command ends
   */
  int make() throws IOException {
    if (!Files.isDirectory(wanted.folder())) {
      terminal.error("error: " + wanted.folder() + ": there is no such folder");
      return Exit.BAD_INPUT;
    }
    if (wanted.json().map(Path::of).filter(wanted.index()::equals).isPresent()) {
      terminal.error(
          "error: " + wanted.index() + ": the results page goes there; name another for --json");
      return Exit.BAD_INPUT;
    }
    RecordFileFinder files = RecordFileFinder.in(wanted.folder());
    if (!wanted.toOutput()) {
      AtomicFileWriter.checkPages(List.of(wanted.index()));
    }
    wanted
        .json()
        .filter(file -> !wanted.toOutput())
        .ifPresent(file -> AtomicFileWriter.checkJson(Path.of(file)));
    try (OutputTransaction outputs = new OutputTransaction();
        ResultsCollector gathered = new ResultsCollector(terminal, wanted, files.files().size())) {
      files.closed().forEach(gathered::closed);
      work(files.files(), outputs, gathered);
      if (!gathered.isFine()) {
        return gathered.hasFailed() ? Exit.FAILED : Exit.BAD_INPUT;
      }
      if (wanted.toOutput()) {
        gathered.lines().copyTo(terminal.out());
        return Exit.DONE;
      }
      gathered.keep();
      wanted.json().ifPresent(file -> outputs.stage(Path.of(file), gathered.lines()::copyTo));
      outputs.stagePage(
          wanted.index(),
          out -> {
            Writer page = new OutputStreamWriter(out, StandardCharsets.UTF_8);
            new HtmlResults().write(gathered.view(), gathered::rows, page);
            page.flush();
          });
      outputs.commit();
      gathered.clear();
      terminal.result(wanted.index() + ": " + gathered.summary());
      gathered.notes().forEach(terminal::error);
      return Exit.DONE;
    }
  }

  private void work(List<Path> files, OutputTransaction outputs, ResultsCollector gathered)
      throws IOException {
    int processors = Runtime.getRuntime().availableProcessors();
    ExecutorService workers = Executors.newFixedThreadPool(processors);
    Deque<Future<Made>> ahead = new ArrayDeque<>();
    try {
      Iterator<Path> waiting = files.iterator();
      while (waiting.hasNext() || !ahead.isEmpty()) {
        while (waiting.hasNext() && ahead.size() < 2 * processors) {
          Path file = waiting.next();
          ahead.add(workers.submit(() -> makeOrSay(file, outputs)));
        }
        gathered.take(ahead.remove().get());
      }
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException ours) {
        throw ours;
      }
      if (e.getCause() instanceof Error ours) {
        throw ours;
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

  /**
   * A vehicle at which the program fails is one with a problem, and keeps no other from its row.
   */
  private Made makeOrSay(Path file, OutputTransaction outputs) {
    try {
      return Bug.in(file, () -> make(file, outputs));
    } catch (Bug e) {
      IoErrorMessages.trace(terminal, e);
      List<String> problem = List.of(IoErrorMessages.bug(e.file(), e));
      return new Made(file, List.of(), problem, true, Optional.empty());
    }
  }

  private Made make(Path file, OutputTransaction outputs) {
    if (!inputs.isRecord(file)) {
      return Made.without(file, inputs.unreadable(file));
    }
    Result<InputLoader.Read> read = inputs.vehicle(file, wanted.rules());
    if (read.value().isEmpty()) {
      return Made.without(file, read.diagnostics());
    }
    List<Diagnostic> found = new ArrayList<>(read.diagnostics());
    InputLoader.Judged judged = read.value().get().judged(wanted.asOf());
    ReportWriter.Made one = ReportWriter.made(file, judged, wanted.reports());
    String page = String.valueOf(one.place().getFileName());
    if (one.place().equals(wanted.index()) || page.equalsIgnoreCase(indexName())) {
      found.add(
          about(
              DiagnosticCode.BAD_NAME,
              file,
              "a record may not be named \""
                  + judged.judgment().vehicle().id()
                  + "\" here: the results page is named so"));
    }
    String line = wanted.json().isPresent() ? ReportWriter.line(one.machine()) + "\n" : "";
    Optional<ResultsEntry> entry =
        wanted.toOutput()
            ? Optional.empty()
            : Optional.of(one.entry(wanted.noReports() ? "" : page));
    String row = entry.map(one::row).orElse("");
    Runnable clearing = () -> {};
    if (!wanted.toOutput()
        && !wanted.noReports()
        && isFine(found, one)
        && claimed.add(page.toLowerCase(Locale.ROOT))) {
      clearing = one.stage(outputs, found).clearing();
    }
    return isFine(found, one)
        ? new Made(
            file,
            found,
            List.of(),
            false,
            Optional.of(
                new Judged(
                    one.place(),
                    one.twin(),
                    entry,
                    row,
                    line,
                    wanted.noReports() ? () -> {} : one.keeping(),
                    clearing,
                    wanted.noReports() ? List.of() : one.notes())))
        : new Made(file, found, one.problems(), false, Optional.empty());
  }

  private String indexName() {
    return String.valueOf(wanted.index().getFileName());
  }

  private static boolean isFine(List<Diagnostic> found, ReportWriter.Made one) {
    return one.problems().isEmpty() && found.stream().noneMatch(Diagnostic::isError);
  }

  /** Says something of a whole file; what it says is kept without the file's text. */
  static Diagnostic about(DiagnosticCode code, Path file, String message) {
    SourceFile name = new SourceFile(RecordFileFinder.shown(file), "");
    return Diagnostic.of(code, name.span(0, 0), message);
  }
}
