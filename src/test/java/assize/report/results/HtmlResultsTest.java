package assize.report.results;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import assize.Pinned;
import assize.report.html.PageValidator;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The results page of the demonstration, but for its style and script, is pinned. */
class HtmlResultsTest {
  private static final Path PINNED =
      Path.of("src/test/resources/assize/report/results/results-main.html");

  @TempDir private Path folder = Path.of("");

  @Tag("pinned")
  @Test
  void isTheDemonstrationsAsPinned() throws IOException {
    Document page = Jsoup.parse(Files.readString(ResultsPages.of(Path.of("rules"), folder)));
    page.outputSettings().prettyPrint(false);
    String main = page.select(".page").outerHtml() + "\n";
    Pinned.equal(PINNED, main);
  }

  @Test
  void leadsToEachReportAndNowhereElse() throws IOException {
    Path index = ResultsPages.of(Path.of("rules"), folder);
    Document page = Jsoup.parse(Files.readString(index));
    assertThat(page.select("tbody th a")).hasSize(3);
    for (Element link : page.select("a[href]")) {
      String href = link.attr("href");
      assertThat(href.startsWith("#") || Files.exists(folder.resolve(href))).as(href).isTrue();
    }
    for (Element row : page.select(".vehicles tbody tr")) {
      String report = Files.readString(folder.resolve(row.select("a").attr("href")));
      Document read = Jsoup.parse(report);
      assertThat(read.select("h1").text()).isEqualTo(row.select("a").text());
      assertThat(read.select(".brief-score strong").text())
          .isEqualTo(row.select("td:nth-child(4) strong").text());
    }
  }

  @Test
  void aRowThatLeadsAwayOrHoldsMoreIsRefused() {
    for (String cell :
        new String[] {
          "<a href=\"https://example.org/\">x</a>",
          "<a href=\"../x.html\">x</a>",
          "<a href=\"javascript:x.html\">x</a>",
          "<img src=\"x.png\" alt=\"x\">",
          "<b onclick=\"x()\">x</b>",
          "<b id=\"x\">x</b>",
          "<h2>x</h2>",
          "</td></tr><tr><td>"
        }) {
      assertThatThrownBy(() -> PageValidator.checkRow("<tr><td>" + cell + "</td></tr>"))
          .as(cell)
          .isInstanceOf(IllegalStateException.class);
    }
    PageValidator.checkRow("<tr><td><a href=\"l45-4388.html\">x</a></td></tr>");
  }
}
