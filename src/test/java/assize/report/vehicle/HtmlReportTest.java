package assize.report.vehicle;

import static org.assertj.core.api.Assertions.assertThat;

import assize.judgment.Judgment;
import assize.report.SampleJudgments;
import assize.report.html.PageImage;
import assize.report.html.PageValidator;
import assize.ruleset.Scale;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class HtmlReportTest {
  private static final String ORDINARY =
      HtmlReport.render(ReportViewFactory.of(SampleJudgments.oneStretch()));

  private static final String PIXEL =
      "data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwAD"
          + "hgGAWjR9awAAAABJRU5ErkJggg==";

  static Stream<Judgment> judgments() {
    return Stream.of(
        SampleJudgments.oneStretch(),
        SampleJudgments.threeStretches(),
        SampleJudgments.by(Scale.Method.AREAS),
        SampleJudgments.by(Scale.Method.DEDUCTIONS));
  }

  private static Document page(Judgment judgment) {
    return Jsoup.parse(HtmlReport.render(ReportViewFactory.of(judgment)));
  }

  @ParameterizedTest
  @MethodSource("judgments")
  void everyPageIsFitToBeHandedOut(Judgment judgment) {
    String html = HtmlReport.render(ReportViewFactory.of(judgment));
    assertThat(Jsoup.parse(html).select("script")).hasSize(1);
    assertThat(PageValidator.faults(html, script(html))).isEmpty();
    assertThat(PageValidator.faults(html, "")).containsExactly("element <script>");
  }

  /** The one script that the page holds. */
  private static String script(String html) {
    return Jsoup.parse(html).expectFirst("script").data();
  }

  @ParameterizedTest
  @MethodSource("judgments")
  void sameJudgmentGivesSameBytes(Judgment judgment) {
    assertThat(HtmlReport.render(ReportViewFactory.of(judgment)))
        .isEqualTo(HtmlReport.render(ReportViewFactory.of(judgment)));
  }

  @Test
  void partsStandInTheOrderInWhichTheyAreRead() {
    Document page = page(SampleJudgments.threeStretches());
    assertThat(page.select("main > section").eachAttr("id"))
        .containsExactly(
            "remarks",
            "score",
            "costs",
            "disputed",
            "dissent",
            "not-shown",
            "departures",
            "areas",
            "steps",
            "items",
            "sum",
            "sources",
            "hazards",
            "papers",
            "files");
  }

  @Test
  void everyVerdictIsToldByWordAndShape() {
    Document page = page(SampleJudgments.threeStretches());
    assertThat(page.select(".verdict")).isNotEmpty();
    for (Element verdict : page.select(".verdict")) {
      String shape = verdict.select("use").attr("href").replace("#sign-", "");
      assertThat(verdict.text()).isEqualTo(shape.replace('-', ' '));
    }
  }

  @Test
  void everyDrawingHasItsWords() {
    Document page = page(SampleJudgments.threeStretches());
    assertThat(page.select("svg.drawing")).hasSizeGreaterThan(6);
    for (Element drawing : page.select("svg.drawing")) {
      assertThat(drawing.select("> title").text()).isNotBlank();
      assertThat(drawing.select("> desc").text()).isNotBlank();
    }
  }

  @Test
  void hazardsAreNeverFoldedAway() {
    Document page = page(SampleJudgments.threeStretches());
    assertThat(page.select("#item-bed-color .hazard").text()).contains("Old paint may hold lead.");
    assertThat(page.select("[id='hazard-lead.20.paint']")).hasSize(1);
    assertThat(page.select("details .hazard")).isEmpty();
  }

  @Test
  void aSourceThatOnlyRepeatsIsNamedAsSuch() {
    Document page = page(SampleJudgments.oneStretch());
    assertThat(page.select("#disputed .positions").text())
        .contains("The same guide, reprinted D (only repeats: Guide for restorers)");
  }

  @Test
  void aPictureIsShownWithItsWordsWhereThereIsOne() {
    Map<String, PageImage> pictures = Map.of("photo-1", new PageImage(PIXEL, 1, 1));
    String html = HtmlReport.render(ReportViewFactory.of(SampleJudgments.oneStretch()), pictures);
    Elements images = Jsoup.parse(html).select("img");
    assertThat(images).hasSize(1);
    assertThat(images.attr("alt")).startsWith("Horn button, before cleaning");
    assertThat(page(SampleJudgments.oneStretch()).select("img")).isEmpty();
    assertThat(page(SampleJudgments.oneStretch()).select("p.evidence").text())
        .contains("photos/horn-button.png");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "\"><img src=x onerror=alert(1)>",
        "' onmouseover='alert(1)",
        "</style></title><svg onload=alert(1)>",
        "${report.head} <#include \"x\"> [=1]",
        "&lt;b&gt; &amp; </details>",
        "[a](javascript:alert(1)) ![b](https://example.org/x.png) <a href=\"#top\" id=score>",
        "<style>@import url(https://example.org/x.css)</style>"
      })
  void textThatPeopleWriteIsShownAndDoesNothing(String hostile) {
    Judgment judgment = SampleJudgments.hostile(hostile);
    String html = HtmlReport.render(ReportViewFactory.of(judgment));
    Document page = Jsoup.parse(html);
    assertThat(page.select("script")).hasSize(1);
    assertThat(PageValidator.faults(html, script(ORDINARY))).isEmpty();
    assertThat(page.select("img, iframe, svg[onload], [onerror], [onmouseover]")).isEmpty();
    assertThat(page.select("h1").text()).isEqualTo(shown("The owner's dropside" + hostile));
    assertThat(page.select("#item-horn-button h4").text())
        .isEqualTo(shown("Horn button" + hostile));
    assertThat(page.select(".masthead .facts").text()).contains(shown("X-4388" + hostile));
    assertThat(page.select("#files dt").text()).contains(shown("record.yaml" + hostile));
    assertThat(page.select("svg.drawing text").eachText()).contains(shown("Works Fresh" + hostile));
  }

  /** As jsoup gives text: runs of white space are one blank. */
  private static String shown(String text) {
    return text.replaceAll("\\s+", " ").strip();
  }

  @Test
  void controlCharactersBecomeVisible() {
    String html =
        HtmlReport.render(ReportViewFactory.of(SampleJudgments.hostile("\u0007\u202Eabc\uD800")));
    assertThat(html).contains("\uFFFD\uFFFDabc\uFFFD").doesNotContain("\u202E");
  }

  @Test
  void aPageIsRefusedForEachFault() {
    String script = script(ORDINARY);
    assertThat(PageValidator.faults(ORDINARY, script)).isEmpty();
    for (String fault :
        List.of(
            "<script>1</script>",
            "<p id=\"score\">again</p>",
            "<a href=\"#nowhere\">x</a>",
            "<a href=\"https://example.org\">no rel</a>",
            "<a href=\"javascript:alert(1)\">x</a>",
            "<img src=\"https://example.org/x.png\" alt=\"x\">",
            "<img src=\"data:image/png;base64,AAAA\" alt=\"\">",
            "<p onclick=\"x\">x</p>",
            "<p style=\"color:red\">x</p>",
            "<iframe></iframe>",
            "<h1>Second</h1>",
            "<style>p { background: url(x) }</style>",
            "<input type=\"text\">",
            "<input type=\"submit\">",
            "<input type=\"checkbox\" name=\"x\">",
            "<button>x</button>",
            "<button type=\"submit\">x</button>",
            "<form action=\"https://example.org\"></form>",
            "<form name=\"x\"></form>",
            "<select></select>",
            "<textarea></textarea>",
            "<link rel=\"stylesheet\" href=\"x.css\">")) {
      assertThat(PageValidator.faults(ORDINARY.replace("</main>", fault + "</main>"), script))
          .as(fault)
          .isNotEmpty();
    }
    assertThat(
            PageValidator.faults(ORDINARY.replace("default-src 'none'", "default-src *"), script))
        .isNotEmpty();
  }
}
