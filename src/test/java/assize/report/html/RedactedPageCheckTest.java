package assize.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import assize.judge.Judge;
import assize.judgment.Judgment;
import assize.redaction.RedactedJudgment;
import assize.redaction.TextMasker;
import assize.report.SampleJudgments;
import assize.report.redacted.RedactionsViewFactory;
import assize.report.vehicle.HtmlReport;
import assize.report.vehicle.ReportView;
import assize.report.vehicle.ReportViewFactory;
import java.io.IOException;
import java.net.IDN;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RedactedPageCheckTest {
  private static final TextMasker MASK = TextMasker.of(List.of("X-4388"), List.of("Mill Lane"));

  private static List<RedactedPageCheck.Fault> faults(String html) {
    return RedactedPageCheck.faults(html, MASK::text, bytes -> List.of());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<p>Number X-4388</p>",
        "<p>4<em>38</em><a href='#b'>8</a></p>",
        "<p>43<br>88</p>",
        "<p>4&#51;88</p>",
        "<p>４３８８</p>",
        "<p>Behind mill&nbsp;lane</p>",
        "<!-- 4388 -->",
        "<p title='in Mill Lane'>there</p>",
        "<p id='source-mill.20.lane'>there</p>",
        "<p data-label='x4388'>there</p>",
        "<img alt='4388' src='data:image/png;base64,AAAA'>",
        "<svg><title>4388</title><text x='4388'>there</text></svg>",
        "<svg><path d='url(4388)'/></svg>",
        "<p class='sha256'>4388</p>",
        "<p>" + "4388" + "00000000000000000000000000000000000000000000000000000000000</p>"
      })
  void findsWhatTheMaskWouldChange(String planted) {
    assertThat(faults("<h1>A page</h1>" + planted)).hasSize(1);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<p>Number X-4xxx in xxx</p>",
        "<p>43</p><p>88</p>",
        "<table><tr><td>43</td><td>88</td></tr></table>",
        "<p class='is-4388'>there</p>",
        "<svg viewBox='0 0 43 88'><path d='M4 388L4388 1'/><rect fill='#438800' x='4388'/></svg>",
        "<dd class='sha256'>4388aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa</dd>",
        "<img alt='there' width='4388' src='data:image/png;base64,4388'>",
        "<style>.a { width: 4388px }</style>"
      })
  void leavesNothingElse(String harmless) {
    assertThat(faults("<h1>A page</h1>" + harmless)).isEmpty();
  }

  private static List<RedactedPageCheck.Fault> written(String html, String number) {
    return RedactedPageCheck.faults(
        "<h1>A page</h1>" + html,
        TextMasker.of(List.of(number), List.of())::text,
        bytes -> List.of());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "7      | <p>frame 7</p>",
        "12     | <p>1<a href='#b'>2</a></p>",
        "12     | <p><a href='http://a.example/%31%32'>there</a></p>",
        "101    | <li>1&shy;01</li>",
        "101    | <td>１01</td>",
        "X-4388 | <h2>X-43</h2><blockquote>88</blockquote>",
        "X-4388 | <table><tr><td>X-43</td><td>88</td></tr></table>",
        "X-4388 | <p>X-43</p><hr><ul><li>88</li></ul>",
        "4388   | <div class='notes'><p>Number 43</p><h4>88</h4></div>",
        "4388   | <div class='notes'><ul><li>43</li><li>88</li></ul></div>",
        "X-4388 | <a href='http://a.example/x%2D%34%33%38%38'>there</a>",
        "X-4388 | <a href='http://a.example/X&amp;#52;388'>there</a>",
      })
  void findsWhatAPersonWrote(String number, String html) {
    assertThat(written(html, number)).as(html).isNotEmpty();
  }

  @Test
  void findsANumberInTheNameOfAHost() {
    String host = IDN.toASCII("x४३८८");
    assertThat(host).startsWith("xn--").doesNotContain("4388");
    assertThat(faults("<h1>A page</h1><a href='http://" + host + ".example'>there</a>"))
        .isNotEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "7      | <p>of 17 and 70</p>",
        "12     | <table><tr><td>1</td><td>2</td></tr></table>",
        "101    | <p>xxx of 1010</p>",
        "4388   | <p>43</p><p>88</p>",
      })
  void leavesWhatIsSomethingElse(String number, String html) {
    assertThat(written(html, number)).as(html).isEmpty();
  }

  /** Where a fault is, is not looked for in all that stands around it. */
  @Test
  void namesThePlaceOfManyFaults() {
    String list = "<li>4388</li>".repeat(40_000);
    assertThat(faults("<h1>A page</h1><section><h2>A part</h2><ul>" + list + "</ul></section>"))
        .hasSize(40_000)
        .allMatch(fault -> fault.where().equals("“A part”"));
  }

  @Test
  void findsAReportWhoseMaskWasSpoiled() {
    ReportView plain = ReportViewFactory.of(SampleJudgments.oneStretch());
    assertThat(faults(HtmlReport.render(plain))).isNotEmpty();
    Judgment own = SampleJudgments.oneStretch();
    RedactedJudgment copy = RedactedJudgment.of(Judge.by(own.rules()), own, Optional.empty());
    RedactionsViewFactory.Shared masked =
        RedactionsViewFactory.of(
            copy, copy.masking().ofWords(), Map.of("chassis", "ab".repeat(32)), Map.of());
    PageImage picture = new PageImage("data:image/png;base64,AAAA", 1, 1);
    String page =
        HtmlReport.render(masked.view(), Map.of(masked.pictures().apply("photo-1"), picture));
    assertThat(faults(page)).isEmpty();
    assertThat(SealsTest.seals(page))
        .containsExactly(new Seals.NumberHash("chassis", "X-4xxx", "ab".repeat(32)));
    assertThat(faults(page.replaceFirst("X-4xxx", "X-4388"))).hasSize(1);
    assertThat(SealsTest.seals(HtmlReport.render(plain))).isEmpty();
  }

  @Test
  void tellsWhatAPictureHoldsBesideThePicture() {
    String page = "<h1>A page</h1><img alt='a' src='data:image/png;base64,AAAA'>";
    assertThat(RedactedPageCheck.faults(page, MASK::text, bytes -> List.of("a place")))
        .containsExactly(new RedactedPageCheck.Fault("“A page”", "a picture holds a place"));
  }

  /** A number that a page names of itself is no number of a vehicle. */
  @Test
  void everyNumberInTheTemplatesIsKnownToTheSearch() throws IOException {
    Path templates = Path.of("src/main/resources/assize/report");
    try (Stream<Path> all = Files.walk(templates)) {
      for (Path one : all.filter(it -> it.toString().endsWith(".ftlh")).toList()) {
        String said =
            Files.readString(one)
                .replaceAll("(?s)<#--.*?-->", "")
                .replaceAll("\\$\\{[^}]*}", "")
                .replaceAll("(?s)<[^>]*>", "");
        assertThat(RedactedPageCheck.OWN.matcher(said).replaceAll("§"))
            .as(one.toString())
            .doesNotContainPattern("[0-9]{3}|[0-9]+-[0-9]");
      }
    }
  }
}
