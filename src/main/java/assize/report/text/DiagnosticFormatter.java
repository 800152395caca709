package assize.report.text;

import assize.diagnostic.Diagnostic;
import assize.diagnostic.RelatedLocation;
import assize.diagnostic.Severity;
import assize.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Prints what is wrong: each with its line and carets under the place. */
public final class DiagnosticFormatter {
  private static final String BOLD = "\u001B[1m";
  private static final String RED = "\u001B[1;31m";
  private static final String YELLOW = "\u001B[1;33m";
  private static final String BLUE = "\u001B[34m";
  private static final String PLAIN = "\u001B[0m";

  private final boolean colored;

  private DiagnosticFormatter(boolean colored) {
    this.colored = colored;
  }

  /**
   * Prints diagnostics in the order of file and line, and how many there are.
   *
   * @param colored true for a terminal that shows colors
   * @return lines, each with its end; nothing where there is no diagnostic
   */
  public static String print(List<Diagnostic> diagnostics, boolean colored) {
    return diagnostics.isEmpty() ? "" : entries(diagnostics, colored) + count(diagnostics) + "\n";
  }

  /** Prints diagnostics in the order of file and line, and not how many there are. */
  public static String entries(List<Diagnostic> diagnostics, boolean colored) {
    DiagnosticFormatter printer = new DiagnosticFormatter(colored);
    StringBuilder out = new StringBuilder();
    diagnostics.stream().sorted().forEach(it -> out.append(printer.print(it)).append('\n'));
    return out.toString();
  }

  /** Prints one diagnostic. */
  private String print(Diagnostic it) {
    StringBuilder out = new StringBuilder();
    Severity severity = it.code().severity();
    out.append(
            paint(
                severity == Severity.ERROR ? RED : YELLOW,
                severity.word() + "[" + it.code().id() + "]"))
        .append(paint(BOLD, ": " + TerminalEscaper.of(it.message())))
        .append('\n');
    place(out, it.at(), it.hint().orElse(""));
    for (RelatedLocation label : it.related()) {
      place(out, label.at(), label.words());
    }
    return out.toString();
  }

  private void place(StringBuilder out, Span at, String words) {
    boolean shown = !at.file().text().isEmpty();
    String number = shown ? at.file().margin(at.line()) : "";
    String margin = " ".repeat(number.length());
    out.append(paint(BLUE, " -->"))
        .append(' ')
        .append(TerminalEscaper.of(shown ? at.toString() : at.file().path()))
        .append('\n');
    if (!shown) {
      if (!words.isEmpty()) {
        out.append(paint(BLUE, "  = ")).append(TerminalEscaper.of(words)).append('\n');
      }
      return;
    }
    Excerpt excerpt = Excerpt.of(at);
    out.append(paint(BLUE, number + " | ")).append(excerpt.line()).append('\n');
    out.append(paint(BLUE, margin + " | "))
        .append(" ".repeat(excerpt.before()))
        .append(paint(RED, "^".repeat(excerpt.width())))
        .append(words.isEmpty() ? "" : " " + TerminalEscaper.of(words))
        .append('\n');
  }

  private static String count(List<Diagnostic> diagnostics) {
    long errors = diagnostics.stream().filter(Diagnostic::isError).count();
    long warnings = diagnostics.size() - errors;
    long files = diagnostics.stream().map(it -> it.at().file().path()).distinct().count();
    return count(errors, warnings, files);
  }

  /** Returns how much was found, as in {@code "2 errors and 1 warning in 3 files"}. */
  public static String count(long errors, long warnings, long files) {
    List<String> parts = new ArrayList<>();
    if (errors > 0) {
      parts.add(number(errors, "error"));
    }
    if (warnings > 0) {
      parts.add(number(warnings, "warning"));
    }
    return String.join(" and ", parts) + " in " + number(files, "file");
  }

  /** Returns a count with its noun, as in {@code "1 file"}. */
  public static String number(long count, String what) {
    return String.format(Locale.ROOT, "%d %s%s", count, what, count == 1 ? "" : "s");
  }

  private String paint(String color, String text) {
    return colored ? color + text + PLAIN : text;
  }
}
