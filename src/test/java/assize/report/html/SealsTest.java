package assize.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import assize.judge.Judge;
import assize.judgment.Judgment;
import assize.redaction.RedactedJudgment;
import assize.report.SampleJudgments;
import assize.report.redacted.RedactionsViewFactory;
import assize.report.vehicle.HtmlReport;
import assize.text.Parsed;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SealsTest {
  private static final String HASH = "ab".repeat(32);
  private static final String PAGE = page();
  private static final String PART = "<section id=\"left-out\"";

  private static String page() {
    Judgment own = SampleJudgments.oneStretch();
    RedactedJudgment copy = RedactedJudgment.of(Judge.by(own.rules()), own, Optional.empty());
    RedactionsViewFactory.Shared shared =
        RedactionsViewFactory.of(copy, copy.masking().ofWords(), Map.of("chassis", HASH), Map.of());
    return HtmlReport.render(
        shared.view(),
        Map.of(
            shared.pictures().apply("photo-1"), new PageImage("data:image/png;base64,AAAA", 1, 1)));
  }

  private static Parsed<List<Seals.NumberHash>> read(String page) {
    try {
      return Seals.of(new StringReader(page));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<Seals.NumberHash> seals(String page) {
    return read(page).toOptional().orElseThrow();
  }

  private static String refusal(String page) {
    return read(page).match(List::toString, bad -> bad.reason());
  }

  @Test
  void readsNumberAndHash() {
    assertThat(seals(PAGE)).containsExactly(new Seals.NumberHash("chassis", "X-4xxx", HASH));
    assertThat(seals(PAGE.replace("chassis: <strong>X-4xxx", "A &amp; &#x202e;: <strong>&lt;4xxx")))
        .containsExactly(new Seals.NumberHash("A & \u202e", "<4xxx", HASH));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "record: a\n", "<!DOCTYPE html><html><body><p>A page</p></body></html>"})
  void findsNoneInWhatIsNoCopy(String page) {
    assertThat(seals(page)).isEmpty();
  }

  /** What is shown has to be what is read. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "<!--PART-->| a comment",
        "<p><!-- a --></p>PART| a comment",
        "<div hidden>PART</div>| can hide it",
        "<div style=\"display:none\">PART</div>| can hide it",
        "<div hidden/>PART</div>| can hide it",
        "<details>PART</details>| can hide it",
        "<svg>PART</svg>| can hide it",
        "<template>PART</template>| an element <template>",
        "<textarea><x a=\"</textarea><noscript>\"></x></textarea>PART| an element <textarea>",
        "PARTPART| a second part on masked numbers",
        "PART<section id='left-out'></section>| a second part on masked numbers",
        "PART<p id=left-out></p>| a second part on masked numbers",
        "PART<p id='left&#45;out'></p>| a name with an & in it",
        "<script>a<!--<script></script>PART--></script>| a comment within <script>",
        "<div><object></div>PART| an element <object>",
        "<div><canvas></div>PART| ends nothing",
        "</main><main hidden>PART| can hide it",
        "</main></div><div class=\"page\" inert><main>PART| can hide it",
        "</main></div><div class=\"page\" class=\"a\"><main>PART| can hide it"
      })
  void refusesAPartThatCanBeHidden(String around, String reason) {
    int start = PAGE.indexOf(PART);
    int end = PAGE.indexOf("</section>", start) + "</section>".length();
    String part = PAGE.substring(start, end);
    String changed =
        PAGE.substring(0, start) + around.strip().replace("PART", part) + PAGE.substring(end);
    assertThat(refusal(changed)).startsWith("line ").endsWith(reason);
  }

  /** In an attribute or a script it is no part of the page. */
  @ParameterizedTest
  @ValueSource(
      strings = {"<p title='PART'></p>", "<script>PART</script>", "<p title=\"PART'\"></p>"})
  void findsNoneWhereNoneIsShown(String around) {
    int start = PAGE.indexOf(PART);
    int end = PAGE.indexOf("</section>", start) + "</section>".length();
    String part = PAGE.substring(start, end).replace('"', '`');
    String changed = PAGE.substring(0, start) + around.replace("PART", part) + PAGE.substring(end);
    assertThat(seals(changed)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "<strong>X-4xxx</strong>, <strong>Y-9xxx<i hidden>X-4xxx</i></strong>, <i hidden=> within",
    "<strong>X-4xxx</strong>, <strong>Y-9xxx</strong><strong>X-4xxx</strong>, <strong> within",
    "<strong>X-4xxx</strong>, <em>Y-9xxx</em><strong>X-4xxx</strong>, <em> within",
    "<strong>X-4xxx</strong>, <strong hidden>X-4xxx</strong>, <strong hidden=> within",
    "<strong>X-4xxx</strong>, '', within",
    "<strong>X-4xxx</strong>, <strong></strong>, within",
    "<dd class=\"sha256 seal\", </div><div><dd class=\"sha256 seal\", or no number beside it",
    "abab</dd>, aba</dd>, no hash",
    "abab</dd>, abab<b></b></dd>, <b> within"
  })
  void refusesNumbersThatAreNotAsTheyAreWritten(String was, String is, String reason) {
    String changed = PAGE.replace(was, is);
    assertThat(changed).isNotEqualTo(PAGE);
    assertThat(refusal(changed)).contains(reason);
  }

  @Test
  void refusesMoreNumbersAndDeeperElementsThanTheLimits() {
    Matcher one =
        Pattern.compile("<div><dt>chassis: <strong>.*?</div>", Pattern.DOTALL).matcher(PAGE);
    assertThat(one.find()).isTrue();
    String number = one.group();
    assertThat(seals(PAGE.replace(number, number.repeat(1000)))).hasSize(1000);
    assertThat(refusal(PAGE.replace(number, number.repeat(1001)))).contains("more than 1000");
    // html, body, the page and main stand around
    String main = "<main>";
    for (int deep : new int[] {96, 97}) {
      String changed = PAGE.replace(main, main + "<b>".repeat(deep) + "</b>".repeat(deep));
      assertThat(read(changed).toOptional().isPresent()).isEqualTo(deep == 96);
    }
    assertThat(seals(PAGE.replace("X-4xxx", "X".repeat(2000))).get(0).masked()).hasSize(1000);
  }
}
