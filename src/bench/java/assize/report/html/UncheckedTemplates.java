package assize.report.html;

import java.util.Map;

/** Pages as {@link Templates} prints them before they are checked. */
public final class UncheckedTemplates {
  private UncheckedTemplates() {}

  /** Prints a page. */
  public static String page(
      String template, Map<String, Object> model, String style, String script) {
    return Templates.unchecked(template, model, style, script);
  }
}
