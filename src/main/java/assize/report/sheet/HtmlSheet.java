package assize.report.sheet;

import assize.report.html.PageValidator;
import assize.report.html.Templates;
import java.util.List;
import java.util.Map;

/** Prints an inspection sheet as a page that is filled in on paper or, offline, on a screen. */
public final class HtmlSheet {
  private static final List<String> STYLES =
      List.of("html/report.css", "html/print.css", "sheet/sheet.css", "sheet/sheet-print.css");

  private static final List<String> SCRIPTS =
      List.of(
          "sheet/sheet-read.js",
          "sheet/sheet-write.js",
          "sheet/sheet-limits.js",
          "sheet/sheet-record.js",
          "sheet/sheet-fields.js",
          "sheet/sheet.js");

  private HtmlSheet() {}

  /**
   * Returns the page.
   *
   * @throws IllegalStateException if the finished page breaks a rule of {@link PageValidator}
   */
  public static String render(SheetView view) {
    return Templates.page(
        "sheet/sheet.ftlh",
        Map.of("sheet", view, "data", Templates.markup(new SheetData(view).json())),
        STYLES,
        SCRIPTS);
  }
}
