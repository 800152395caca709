package assize.report.html;

import assize.report.view.SheetView;
import java.util.List;
import java.util.Map;

/** Prints a walk-round sheet as a page that is filled in on paper or, offline, on a screen. */
public final class HtmlSheet {
  private static final List<String> STYLES =
      List.of("html/report.css", "html/print.css", "html/sheet.css", "html/sheet-print.css");

  private static final List<String> SCRIPTS =
      List.of(
          "html/sheet-read.js",
          "html/sheet-write.js",
          "html/sheet-limits.js",
          "html/sheet-record.js",
          "html/sheet-fields.js",
          "html/sheet.js");

  private HtmlSheet() {}

  /**
   * Returns the page.
   *
   * @throws IllegalStateException if the finished page breaks a rule of {@link PageValidator}
   */
  public static String render(SheetView view) {
    return Templates.page(
        "html/sheet.ftlh",
        Map.of("sheet", view, "data", Templates.markup(new SheetData(view).json())),
        STYLES,
        SCRIPTS);
  }
}
