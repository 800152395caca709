package assize.report.vehicle;

import assize.report.html.PageValidator;
import assize.report.html.Templates;
import assize.report.html.UncheckedTemplates;
import java.util.List;
import java.util.Map;

/** A report's page before it is checked, to be measured apart. */
public final class Unchecked {
  private static final String STYLE =
      Templates.resources(List.of("html/report.css", "vehicle/filter.css", "html/print.css"));
  private static final String SCRIPT = Templates.resources(List.of("vehicle/filter.js"));

  private Unchecked() {}

  /** Prints a page as {@link HtmlReport} does, with no picture. */
  public static String report(ReportView view) {
    return UncheckedTemplates.page(
        "vehicle/report.ftlh",
        Map.of("report", view, "pictures", Map.of(), "places", HtmlReport.places(view)),
        STYLE + AreaFilterCss.of(view.areas().size()),
        SCRIPT);
  }

  /** Checks a report's page. */
  public static void check(String html) {
    PageValidator.check(html, SCRIPT);
  }
}
