package assize.report.changes;

import assize.report.html.PageValidator;
import assize.report.html.Templates;
import java.util.List;
import java.util.Map;

/** Prints what changed between two editions: one page, nothing loaded, no script. */
public final class HtmlChanges {
  private HtmlChanges() {}

  /**
   * Returns the page.
   *
   * @throws IllegalStateException if the finished page breaks a rule of {@link PageValidator}
   */
  public static String render(ChangesView changes) {
    return Templates.page(
        "changes/changes.ftlh",
        Map.of("changes", changes),
        List.of("html/report.css", "html/print.css", "handbook/handbook.css"),
        List.of());
  }
}
