package assize.report.vehicle;

import assize.report.html.Page;
import assize.report.html.PageImage;
import assize.report.html.PageValidator;
import assize.report.html.PrintReferences;
import assize.report.html.Templates;
import assize.report.view.DisputeView;
import assize.report.view.ItemView;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Prints a finished report as one page: nothing loaded, all of it readable offline. */
public final class HtmlReport {
  private static final String DISPUTE = "D";

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
                "vehicle/report.ftlh",
                Map.of("report", view, "pictures", brief, "places", places(view)),
                List.of("html/report.css", "vehicle/filter.css", "html/print.css"),
                AreaFilterCss.of(view.areas().size()),
                List.of("vehicle/filter.js")));
  }

  /** Returns the places of all items, disputes, areas and their sections, by anchor. */
  static Map<String, String> places(ReportView report) {
    PrintReferences all = new PrintReferences();
    int items = 0;
    for (AreaView area : report.areas()) {
      List<String> anchors = area.items().stream().map(ItemView::anchor).toList();
      items = all.number(area.anchor(), "", items, anchors);
    }
    all.range("items", "", 1, items);
    int disputed = all.number("disputed", DISPUTE, 0, anchors(report.disputes()));
    List<String> others = new ArrayList<>(anchors(report.idle()));
    others.addAll(anchors(report.settled()));
    all.number("dissent", DISPUTE, disputed, others);
    return all.places();
  }

  private static List<String> anchors(List<DisputeView> disputes) {
    return disputes.stream().map(DisputeView::anchor).toList();
  }
}
