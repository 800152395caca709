package assize.report.html;

import assize.report.view.GuideView;
import java.util.List;
import java.util.Map;

/** Prints a rule set as a book: one page, nothing loaded, no script. */
public final class HtmlGuide {
  private HtmlGuide() {}

  /**
   * Returns the page.
   *
   * @throws IllegalStateException if the finished page breaks a rule of {@link FinishedPage}
   */
  public static String render(GuideView book) {
    return Templates.page(
        "guide.ftlh",
        Map.of("book", book, "places", Places.of(book)),
        List.of("report.css", "print.css", "guide.css"),
        List.of());
  }
}
