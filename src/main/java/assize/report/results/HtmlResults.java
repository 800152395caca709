package assize.report.results;

import assize.report.html.PageValidator;
import assize.report.html.Templates;
import java.io.IOException;
import java.io.Writer;
import java.util.Iterator;
import java.util.List;
import java.util.Map;

/**
 * Prints a results page in pieces: each row by itself, and the page around them, so that thousands
 * of vehicles need no more memory than a few.
 */
public final class HtmlResults {
  /** How many rows of each table are looked at together with the whole page. */
  private static final int LOOKED_AT = 3;

  private final String script = Templates.resources(List.of("results/results.js"));

  /** Rows of one standard's table, as {@link #row} printed them. */
  @FunctionalInterface
  public interface Rows {
    /** Returns the rows in their order; {@code standard} counts from 0 as in the view. */
    Iterator<String> of(int standard);
  }

  /**
   * Returns one row.
   *
   * @throws IllegalStateException if it breaks a rule of {@link PageValidator}
   */
  public static String row(ResultsRowView row) {
    String html = Templates.part("results/results-row.ftlh", Map.of("row", row));
    PageValidator.checkRow(html);
    return html;
  }

  /**
   * Writes the page.
   *
   * @throws IllegalStateException if it breaks a rule of {@link PageValidator}
   */
  public void write(ResultsView view, Rows rows, Writer out) throws IOException {
    String frame =
        Templates.page(
            "results/results.ftlh",
            Map.of("results", view),
            List.of("html/report.css", "html/print.css", "results/results.css"),
            List.of("results/results.js"));
    PageValidator.checkResults(sample(frame, view, rows), script);
    int from = 0;
    for (int i = 0; i < view.standards().size(); i++) {
      int at = frame.indexOf(place(i));
      out.write(frame, from, at - from);
      for (Iterator<String> all = rows.of(i); all.hasNext(); ) {
        out.write(all.next());
        out.write('\n');
      }
      from = at + place(i).length();
    }
    out.write(frame, from, frame.length() - from);
  }

  /** Where a table's rows go; nobody's text can hold it, since a page escapes the {@code <}. */
  private static String place(int standard) {
    return "<!--rows " + standard + "-->";
  }

  private static String sample(String frame, ResultsView view, Rows rows) {
    String page = frame;
    for (int i = 0; i < view.standards().size(); i++) {
      StringBuilder some = new StringBuilder();
      Iterator<String> all = rows.of(i);
      for (int row = 0; row < LOOKED_AT && all.hasNext(); row++) {
        some.append(all.next()).append('\n');
      }
      page = page.replace(place(i), some);
    }
    return page;
  }
}
