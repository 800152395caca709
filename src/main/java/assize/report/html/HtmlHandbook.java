package assize.report.html;

import assize.report.view.HandbookView;
import java.util.List;
import java.util.Map;

/** Prints a rule set as a book: one page, nothing loaded, no script. */
public final class HtmlHandbook {
  private HtmlHandbook() {}

  /**
   * Returns the page.
   *
   * @throws IllegalStateException if the finished page breaks a rule of {@link PageValidator}
   */
  public static String render(HandbookView book) {
    return Templates.page(
        "html/guide.ftlh",
        Map.of("book", book, "places", PrintReferences.of(book)),
        List.of("html/report.css", "html/print.css", "html/guide.css"),
        List.of());
  }
}
