package assize.report.dossier;

import static org.assertj.core.api.Assertions.assertThat;

import assize.judgment.Judgment;
import assize.report.SampleJudgments;
import assize.report.html.PageImage;
import assize.report.html.PageValidator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** One dispute as a page of its own. */
class HtmlDossierTest {
  private static final String PIXEL =
      "data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwAD"
          + "hgGAWjR9awAAAABJRU5ErkJggg==";

  private static List<DossierView> dossiers(Judgment judgment) {
    List<DossierView> all =
        judgment.items().stream()
            .map(one -> DossierViewFactory.of(judgment, one.item().id(), Map.of()))
            .flatMap(Optional::stream)
            .toList();
    assertThat(all).isNotEmpty();
    return all;
  }

  private static String page(DossierView view) {
    return HtmlDossier.render(view, Map.of("photo-1", new PageImage(PIXEL, 1, 1)));
  }

  @Test
  void everyPageIsFitToBeHandedOutAndLeadsNowhere() {
    for (DossierView view : dossiers(SampleJudgments.threeStretches())) {
      String html = page(view);
      assertThat(PageValidator.faults(html, "")).isEmpty();
      assertThat(html).doesNotContain("<script").isEqualTo(page(view));
      for (Element link : Jsoup.parse(html).select("a[href]")) {
        boolean inNotes = !link.parents().select(".notes").isEmpty();
        assertThat(inNotes || link.attr("href").startsWith("#")).as(link.outerHtml()).isTrue();
      }
    }
  }

  @Test
  void everyPositionIsToldInTheSameForm() {
    for (DossierView view : dossiers(SampleJudgments.oneStretch())) {
      Document page = Jsoup.parse(page(view));
      List<String> forms =
          page.select(".positions > li").stream()
              .filter(position -> !position.select(".testimony").isEmpty())
              .map(
                  position ->
                      position.children().stream().map(Element::className).toList().toString())
              .distinct()
              .toList();
      assertThat(page.select(".positions > li")).hasSizeGreaterThan(1);
      assertThat(forms).hasSize(1);
    }
  }

  @Test
  void endsWithLinesToSign() {
    Document page = Jsoup.parse(page(dossiers(SampleJudgments.oneStretch()).get(0)));
    Elements last = page.select("main > section:last-child");
    assertThat(last.select("h2").text()).isEqualTo("Seen and found complete by");
    assertThat(last.select("tbody th").eachText())
        .containsExactly("For one position", "For another", "A keeper of the standard");
    assertThat(last.select("tbody td").text()).isBlank();
  }

  @Test
  void ofAColorItSaysThatNoPhotoIsEvidence() {
    List<String> colored =
        dossiers(SampleJudgments.oneStretch()).stream()
            .filter(view -> view.parts().stream().anyMatch(part -> part.dispute().colored()))
            .filter(
                view ->
                    view.parts().stream().anyMatch(part -> !part.dispute().pictures().isEmpty()))
            .map(HtmlDossierTest::page)
            .toList();
    assertThat(colored).isNotEmpty();
    for (String html : colored) {
      assertThat(Jsoup.parse(html).select(".together").text())
          .contains("A photo, a screen or a print is never evidence of a color.");
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "\"><img src=x onerror=alert(1)>",
        "' onmouseover='alert(1)",
        "</style></title><svg onload=alert(1)>",
        "${dossier.head} <#include \"x\"> [=1]",
        "[a](javascript:alert(1)) ![b](https://example.org/x.png) <a href=\"#top\" id=top>",
        "<style>@import url(https://example.org/x.css)</style>"
      })
  void textThatPeopleWriteIsShownAndDoesNothing(String hostile) {
    for (DossierView view : dossiers(SampleJudgments.hostile(hostile))) {
      Document page = Jsoup.parse(HtmlDossier.render(view, Map.of()));
      assertThat(page.select("script, img, iframe, svg[onload], [onerror], [onmouseover]"))
          .isEmpty();
      assertThat(page.select("h1").text()).endsWith(hostile.replaceAll("\\s+", " ").strip());
      assertThat(page.select(".owner blockquote")).hasSize(page.select(".owner").size());
    }
  }
}
