package assize.report.vehicle;

import static org.assertj.core.api.Assertions.assertThat;

import assize.report.html.Browser;
import assize.report.html.DemoReports;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.Keys;

/** Every report of the demonstration, opened from its file as a reader would. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Tag("browser")
class BrowserTest {
  /** WCAG 2.2, success criterion 1.4.6, contrast (enhanced), for text of any size. */
  private static final double CONTRAST = 7;

  /** The smallest lettering of a drawing in CSS pixels; common practice, no source. */
  private static final double LETTERING = 10.5;

  private Browser browser;
  private List<Path> reports = List.of();

  @BeforeAll
  void start(@TempDir Path folder, @TempDir Path profile) throws IOException {
    browser = Browser.start(profile);
    reports = DemoReports.in(folder.resolve("demo"));
  }

  @AfterAll
  void stop() {
    if (browser != null) {
      browser.close();
    }
  }

  List<Path> reports() {
    return reports;
  }

  @Test
  void theDemonstrationHasItsReports() {
    assertThat(reports).hasSizeGreaterThanOrEqualTo(3);
  }

  @ParameterizedTest
  @MethodSource("reports")
  void nothingReachesPastThePage(Path report) throws IOException {
    browser.open(report);
    List<String> faults = new ArrayList<>();
    for (int width : Browser.WIDTHS) {
      for (String theme : List.of("light", "dark")) {
        browser.show(width, "screen", theme);
        faults.addAll(browser.faults("sideways.js", width + " " + theme));
      }
    }
    browser.show(Browser.A4_BETWEEN_MARGINS, "print", "light");
    faults.addAll(browser.faults("sideways.js", "print"));
    assertThat(faults).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("reports")
  void drawingsCanBeRead(Path report) throws IOException {
    browser.open(report);
    List<String> faults = new ArrayList<>();
    for (int width : Browser.WIDTHS) {
      browser.show(width, "screen", "light");
      faults.addAll(browser.faults("drawings.js", LETTERING, width + ""));
    }
    browser.show(Browser.A4_BETWEEN_MARGINS, "print", "light");
    faults.addAll(browser.faults("drawings.js", LETTERING, "print"));
    assertThat(faults).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("reports")
  void textStandsOutFromWhatIsBehindIt(Path report) throws IOException {
    browser.open(report);
    List<String> faults = new ArrayList<>();
    for (String theme : List.of("light", "dark")) {
      for (int width : List.of(1280, 390)) {
        browser.show(width, "screen", theme);
        faults.addAll(browser.faults("contrast.js", CONTRAST, width + " " + theme));
      }
    }
    browser.show(Browser.A4_BETWEEN_MARGINS, "print", "dark");
    faults.addAll(browser.faults("contrast.js", CONTRAST, "print"));
    assertThat(faults).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("reports")
  void nothingIsFetchedFromOutside(Path report) {
    browser.requests();
    browser.open(report);
    browser.result("window.scrollTo(0, document.body.scrollHeight); return document.readyState;");
    List<String> requests = browser.requests();
    assertThat(requests).anyMatch(url -> url.startsWith("file:"));
    assertThat(requests)
        .allMatch(url -> url.equals(report.toUri().toString()) || url.startsWith("data:image/"));
    assertThat(
            browser.texts(
                "return [...document.images].filter(i => !i.naturalWidth).map(i => i.alt);"))
        .isEmpty();
  }

  @ParameterizedTest
  @MethodSource("reports")
  void nothingNeedsAScript(Path report) {
    browser.cdp("Emulation.setScriptExecutionDisabled", Map.of("value", true));
    try {
      browser.open(report);
      browser.show(1280, "screen", "light");
      assertThat(browser.result("return document.getElementById('pick-by-words').hidden;"))
          .isEqualTo(true);
      assertThat(
              browser.texts(
                  "return [...document.querySelectorAll('main > section, article, h1, h2, h3, h4')]"
                      + ".filter(e => !e.checkVisibility({visibilityProperty: true, opacityProperty: true})"
                      + " || e.textContent.trim().length < 2).map(e => e.outerHTML.slice(0, 80));"))
          .isEmpty();
      assertThat(
              browser.texts(
                  "return [...document.querySelectorAll('main > section')].map(s => s.id);"))
          .contains("score", "costs", "disputed", "items", "sum", "sources", "hazards", "files");
    } finally {
      browser.cdp("Emulation.setScriptExecutionDisabled", Map.of("value", false));
    }
  }

  @ParameterizedTest
  @MethodSource("reports")
  void everySignAndDrawingHasItsWord(Path report) throws IOException {
    browser.open(report);
    browser.show(1280, "screen", "light");
    assertThat(browser.faults("words.js")).isEmpty();
    assertThat((Long) browser.result("return document.querySelectorAll('.verdict').length;"))
        .isGreaterThan(60);
  }

  @ParameterizedTest
  @MethodSource("reports")
  void linksJumpToWhatTheyName(Path report) throws IOException {
    browser.open(report);
    for (int width : List.of(1280, 320)) {
      browser.show(width, "screen", "light");
      assertThat(browser.faults("jump.js", "nav.contents a")).isEmpty();
      assertThat(browser.faults("jump.js", "#costs a.title, #departures a.title, #areas th a"))
          .isEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("reports")
  void theKeyboardReachesEverythingInOrder(Path report) {
    browser.open(report);
    browser.show(1280, "screen", "light");
    Long stops =
        (Long)
            browser.result(
                "window.stops = [...document.querySelectorAll('a[href], summary, input:enabled, button')]"
                    + ".filter(e => e.checkVisibility());"
                    + "window.reached = [];"
                    + "document.addEventListener('focusin', e => reached.push(stops.indexOf(e.target)));"
                    + "return stops.length;");
    browser.press(Keys.TAB, stops.intValue());
    assertThat(browser.result("return reached.length;")).isEqualTo(stops);
    assertThat(
            browser.texts(
                "return reached.filter((at, i) => at !== i).map(at => at < 0 ? 'elsewhere' : stops[at].outerHTML);"))
        .isEmpty();
    for (String open : List.of("true", "false")) {
      browser.result("document.querySelector('.item summary').focus(); return 0;");
      browser.press(Keys.ENTER, 1);
      assertThat(browser.texts("return [document.querySelector('.item details').open];"))
          .containsExactly(open);
    }
  }
}
