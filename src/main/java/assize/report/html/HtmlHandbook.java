package assize.report.html;

import assize.report.view.HandbookView;
import java.util.List;
import java.util.Map;

/** Prints a rule set as a handbook: one page, nothing loaded, no script. */
public final class HtmlHandbook {
  private HtmlHandbook() {}

  /**
   * Returns the page.
   *
   * @throws IllegalStateException if the finished page breaks a rule of {@link PageValidator}
   */
  public static String render(HandbookView book) {
    return Templates.page(
        "handbook.ftlh",
        Map.of("book", book, "places", PrintReferences.of(book)),
        List.of("report.css", "print.css", "handbook.css"),
        List.of());
  }
}
