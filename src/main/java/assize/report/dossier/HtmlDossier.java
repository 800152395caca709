package assize.report.dossier;

import assize.report.html.PageImage;
import assize.report.html.PageValidator;
import assize.report.html.Templates;
import java.util.List;
import java.util.Map;

/** Prints one dispute as a page of its own: nothing loaded, no link that leads out of it. */
public final class HtmlDossier {
  private HtmlDossier() {}

  /**
   * Returns the page.
   *
   * @param pictures what to show, by key
   * @throws IllegalStateException if the finished page breaks a rule of {@link PageValidator}
   */
  public static String render(DossierView view, Map<String, PageImage> pictures) {
    return Templates.page(
        "dossier/dossier.ftlh",
        Map.of("dossier", view, "pictures", pictures),
        List.of("html/report.css", "html/print.css", "dossier/dossier.css"),
        List.of());
  }
}
