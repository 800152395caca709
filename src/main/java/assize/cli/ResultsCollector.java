package assize.cli;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.report.results.ResultsView;
import assize.report.results.ResultsViewFactory;
import assize.report.text.DiagnosticFormatter;
import assize.text.SourceFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** The results so far: the rows wait on disk, and here stand their places alone. */
final class ResultsCollector implements AutoCloseable {
  /** How many notes are told; thousands would be read by nobody. */
  private static final int NOTES = 20;

  private final Terminal terminal;
  private final ResultsWriter.ResultsOptions wanted;
  private final Progress progress;
  private final Spool rows = Spool.open();
  private final Spool lines = Spool.open();
  private final ResultsViewFactory views;
  private final List<ResultRow> order = new ArrayList<>();
  private final Map<String, Path> pages = new HashMap<>();
  private final List<Runnable> keeping = new ArrayList<>();
  private final List<Runnable> clearing = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();
  private final Set<String> printed = new HashSet<>();
  private final Set<String> files = new HashSet<>();
  private long errors;
  private long warnings;
  private long leftOut;
  private long unsaid;
  private boolean clash;
  private boolean failed;

  /** Where a row stands, and what it is put in order by. */
  private record ResultRow(int standard, long likely, Spool.Piece piece) {}

  ResultsCollector(Terminal terminal, ResultsWriter.ResultsOptions wanted, int all)
      throws IOException {
    this.terminal = terminal;
    this.wanted = wanted;
    this.views = new ResultsViewFactory(wanted.reports().share());
    this.progress = new Progress(terminal, all, System::nanoTime);
  }

  /** Takes what one file gave; they come in the order of their paths. */
  void take(ResultsWriter.Made made) throws IOException {
    print(made.found(), made.file());
    made.problems().stream().map(it -> "error: " + it).forEach(this::say);
    failed |= made.failed();
    long wrong = made.found().stream().filter(Diagnostic::isError).count() + made.problems().size();
    if (wrong > 0) {
      leaveOut(made.file(), wrong);
    } else if (made.judged().isPresent()) {
      add(made.file(), made.judged().get());
    }
    progress.step();
  }

  /** Takes a folder that could not be looked into. */
  void closed(Path folder) {
    Diagnostic found =
        ResultsWriter.about(
            DiagnosticCode.CANNOT_OPEN_FILE, folder, "this folder can't be looked into");
    print(List.of(found), folder);
    leaveOut(folder, 1);
  }

  private void leaveOut(Path file, long wrong) {
    views.leaveOut(RecordFileFinder.shown(wanted.folder().relativize(file)), wrong);
    leftOut++;
  }

  private void add(Path file, ResultsWriter.Judged judged) throws IOException {
    Path page = judged.page();
    Path before =
        pages.putIfAbsent(String.valueOf(page.getFileName()).toLowerCase(Locale.ROOT), file);
    if (before != null) {
      clash(file, judged.twin(), before);
      return;
    }
    if (wanted.json().map(Path::of).filter(page::equals).isPresent()) {
      clash(file, "its report goes to " + page + "; name another file for --json", page);
      return;
    }
    lines.append(judged.line());
    keeping.add(judged.keeping());
    clearing.add(judged.clearing());
    for (String note : judged.notes()) {
      if (notes.size() < NOTES) {
        notes.add(note);
      } else {
        unsaid++;
      }
    }
    if (judged.entry().isPresent()) {
      int standard = views.add(judged.entry().get());
      order.add(new ResultRow(standard, judged.entry().get().likely(), rows.append(judged.row())));
    }
  }

  private void clash(Path file, String message, Path other) {
    SourceFile name = new SourceFile(RecordFileFinder.shown(other), "");
    Diagnostic found = ResultsWriter.about(DiagnosticCode.DUPLICATE_NAME, file, message);
    print(List.of(found.with(name.span(0, 0), "this is the other")), file);
    clash = true;
  }

  /** Prints what was found; what is wrong with a rule set only once. */
  private void print(List<Diagnostic> found, Path file) {
    String own = RecordFileFinder.shown(file);
    List<Diagnostic> fresh =
        found.stream()
            .filter(
                it ->
                    it.at().file().path().equals(own) || printed.add(it.at() + " " + it.message()))
            .toList();
    if (fresh.isEmpty()) {
      return;
    }
    progress.clear();
    terminal.err().print(DiagnosticFormatter.entries(fresh, terminal.colored()));
    errors += fresh.stream().filter(Diagnostic::isError).count();
    warnings += fresh.stream().filter(it -> !it.isError()).count();
    fresh.forEach(it -> files.add(it.at().file().path()));
  }

  private void say(String lines) {
    progress.clear();
    lines.lines().forEach(terminal::error);
  }

  /** Does what has to be done before the pages are put into place. */
  void keep() {
    keeping.forEach(Runnable::run);
  }

  /** Does what has to be done after that. */
  void clear() {
    clearing.forEach(Runnable::run);
  }

  /** Returns what the owners have to know, the first of it if it is much. */
  List<String> notes() {
    List<String> all = new ArrayList<>(notes);
    if (unsaid > 0) {
      all.add("note: and " + unsaid + " more of these; `judge --redact` says them of each record");
    }
    return all;
  }

  /** Says at the end whether something can be written, and what is wrong if nothing can. */
  boolean isFine() {
    progress.clear();
    if (errors + warnings > 0) {
      terminal.error(DiagnosticFormatter.count(errors, warnings, files.size()));
    }
    if (pages.isEmpty() && leftOut == 0) {
      terminal.error("error: " + wanted.folder() + ": there is no record in it or below");
      return false;
    }
    if (clash || leftOut > 0 && (!wanted.leaveOut() || pages.isEmpty())) {
      terminal.error(
          wanted.leaveOut() || clash
              ? "Nothing was written."
              : "Nothing was written; --skip-invalid lists the others all the same.");
      return false;
    }
    return true;
  }

  /** Says whether the program itself failed at a vehicle. */
  boolean hasFailed() {
    return failed;
  }

  ResultsView view() {
    return views.view();
  }

  String summary() {
    return String.join(" ", views.view().sentences());
  }

  /** Returns the rows of a standard, the highest likely score first, then in the order of paths. */
  Iterator<String> rows(int place) {
    int standard = views.order().get(place);
    return order.stream()
        .filter(row -> row.standard() == standard)
        .sorted(Comparator.comparingLong(ResultRow::likely).reversed())
        .map(row -> read(row.piece()))
        .iterator();
  }

  private String read(Spool.Piece piece) {
    try {
      return rows.read(piece);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  Spool lines() {
    return lines;
  }

  @Override
  public void close() throws IOException {
    progress.close();
    rows.close();
    lines.close();
  }
}
