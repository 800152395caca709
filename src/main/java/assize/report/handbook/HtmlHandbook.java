package assize.report.handbook;

import assize.report.html.PageValidator;
import assize.report.html.PrintReferences;
import assize.report.html.Templates;
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
        "handbook/handbook.ftlh",
        Map.of("book", book, "places", places(book)),
        List.of("html/report.css", "html/print.css", "handbook/handbook.css"),
        List.of());
  }

  /** Returns the places of all items of a handbook, and of its areas. */
  private static Map<String, String> places(HandbookView book) {
    PrintReferences all = new PrintReferences();
    int items = 0;
    for (HandbookAreaView area : book.areas()) {
      List<String> anchors = area.items().stream().map(HandbookItemView::anchor).toList();
      items = all.number(area.anchor(), "", items, anchors);
    }
    all.range("items", "", 1, items);
    return all.places();
  }
}
