package assize.report.html;

import assize.report.view.SheetView;
import java.util.List;
import java.util.Map;

/** Prints an inspection sheet as a page that is filled in on paper or, offline, on a screen. */
public final class HtmlSheet {
  private static final List<String> STYLES =
      List.of("report.css", "print.css", "sheet.css", "sheet-print.css");

  private static final List<String> SCRIPTS =
      List.of(
          "sheet-read.js",
          "sheet-write.js",
          "sheet-limits.js",
          "sheet-record.js",
          "sheet-fields.js",
          "sheet.js");

  private HtmlSheet() {}

  /**
   * Returns the page.
   *
   * @throws IllegalStateException if the finished page breaks a rule of {@link PageValidator}
   */
  public static String render(SheetView view) {
    return Templates.page(
        "sheet.ftlh",
        Map.of("sheet", view, "data", Templates.markup(new SheetData(view).json())),
        STYLES,
        SCRIPTS);
  }
}
