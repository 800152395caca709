package assize.report.vehicle;

import static org.assertj.core.api.Assertions.assertThat;

import assize.report.SampleJudgments;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PrintReferencesTest {
  @Test
  void itemsAreNumberedThroughTheReportAndDisputesApart() {
    ReportView report = ReportViewFactory.of(SampleJudgments.threeStretches());
    Map<String, String> places = HtmlReport.places(report);
    List<String> items = new ArrayList<>();
    report.areas().forEach(area -> area.items().forEach(item -> items.add(item.anchor())));
    assertThat(items).hasSizeGreaterThan(2);
    for (int i = 0; i < items.size(); i++) {
      assertThat(places).containsEntry(items.get(i), "" + (i + 1));
    }
    assertThat(places).containsEntry("items", "1–" + items.size());
    assertThat(report.disputes()).isNotEmpty();
    assertThat(places).containsEntry(report.disputes().get(0).anchor(), "D1");
    int before = report.disputes().size();
    for (int i = 0; i < report.idle().size(); i++) {
      assertThat(places).containsEntry(report.idle().get(i).anchor(), "D" + (before + i + 1));
    }
  }

  @Test
  void aReferenceNamesWhatStandsAtItsTarget() {
    Document page =
        Jsoup.parse(HtmlReport.render(ReportViewFactory.of(SampleJudgments.threeStretches())));
    assertThat(page.select("a[data-place]")).hasSizeGreaterThan(4);
    for (Element link : page.select("main a[href^=#item-], main a[href^=#dispute-]")) {
      Element target = page.getElementById(link.attr("href").substring(1));
      assertThat(target).isNotNull();
      if (target != null && target.normalName().equals("article")) {
        String heading = target.select("h3, h4").attr("data-place");
        assertThat(heading).as(target.id()).isNotBlank();
        assertThat(link.attr("data-place")).as(link.outerHtml()).isEqualTo(heading);
      }
    }
  }

  /** What stands at the head of each page is never part of the style. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "\"; } body { display: none } /*",
        "' } @import url(https://example.org/x.css); {",
        "\\22 ; } * { color: red } \\",
        "\" data-standard=\"other",
        "</style><style>* { color: red }",
        "\"><img src=x>",
        "a\nb\fc \\A d",
        "/* */ -->"
      })
  void aNameAtTheHeadOfEachPageCanNotLeaveIt(String hostile) {
    Document tame =
        Jsoup.parse(HtmlReport.render(ReportViewFactory.of(SampleJudgments.hostile(""))));
    Document page =
        Jsoup.parse(HtmlReport.render(ReportViewFactory.of(SampleJudgments.hostile(hostile))));
    Element root = page.select("html").get(0);
    assertThat(page.select("style")).hasSize(1);
    assertThat(page.select("style").get(0).data())
        .isEqualTo(tame.select("style").get(0).data())
        .contains("content: attr(data-vehicle)");
    assertThat(root.attr("data-vehicle"))
        .isEqualTo("The owner's dropside" + hostile.replace('\f', '\uFFFD'));
    assertThat(root.attributesSize()).isEqualTo(3);
  }
}
