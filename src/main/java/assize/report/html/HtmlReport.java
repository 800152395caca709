package assize.report.html;

import assize.report.view.ReportView;
import java.util.List;
import java.util.Map;

/** Prints a finished report as one page: nothing loaded, all of it readable offline. */
public final class HtmlReport {
  private HtmlReport() {}

  /** Returns the page without any picture. */
  public static String render(ReportView view) {
    return render(view, Map.of());
  }

  /**
   * Returns the page.
   *
   * @param pictures what to show for a piece of evidence, by its name in the record
   * @throws IllegalStateException if the finished page breaks a rule of {@link PageValidator}
   */
  public static String render(ReportView view, Map<String, PageImage> pictures) {
    return page(view, pictures).text();
  }

  /**
   * Does the same, as a page that is not held whole.
   *
   * @throws IllegalStateException if the finished page breaks a rule of {@link PageValidator}
   */
  public static Page page(ReportView view, Map<String, PageImage> pictures) {
    return Page.of(
        pictures,
        brief ->
            Templates.page(
                "html/report.ftlh",
                Map.of("report", view, "pictures", brief, "places", PrintReferences.of(view)),
                List.of("html/report.css", "html/filter.css", "html/print.css"),
                AreaFilterCss.of(view.areas().size()),
                List.of("html/filter.js")));
  }
}
