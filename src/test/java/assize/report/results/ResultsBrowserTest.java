package assize.report.results;

import static org.assertj.core.api.Assertions.assertThat;

import assize.cli.ResultsFixture;
import assize.report.html.Browser;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/**
 * Results pages, opened from their files as a reader would: the demonstration's, and a longer one.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Tag("browser")
class ResultsBrowserTest {
  private static final double CONTRAST = 7;
  private static final double LETTERING = 10.5;
  private static final int VEHICLES = 60;

  private Browser browser;
  private Path demonstration = Path.of("");
  private Path many = Path.of("");

  @BeforeAll
  void start(@TempDir Path folder, @TempDir Path profile) throws IOException {
    browser = Browser.start(profile);
    demonstration = ResultsPages.of(Path.of("rules"), folder.resolve("demo"), "--no-reports");
    ResultsFixture.write(folder.resolve("many/first"), "1", 0, VEHICLES / 2);
    ResultsFixture.write(folder.resolve("many/second"), "2", VEHICLES / 2, VEHICLES);
    many = ResultsPages.of(folder.resolve("many"), folder.resolve("out"), "--no-reports");
  }

  @AfterAll
  void stop() {
    if (browser != null) {
      browser.close();
    }
  }

  private void open(Path page, int width) {
    browser.open(page);
    browser.show(width, "screen", "light");
  }

  private List<String> column(int table, int column) {
    return browser.texts(
        "return [...document.querySelectorAll('table.vehicles')[arguments[0]].tBodies[0].rows]"
            + ".map(r => r.cells[arguments[1]].dataset.by ?? r.cells[arguments[1]].firstChild.textContent.trim());",
        table,
        column);
  }

  private void click(int table, int column) {
    browser.result(
        "document.querySelectorAll('table.vehicles')[arguments[0]].tHead.rows[0]"
            + ".cells[arguments[1]].querySelector('button').click(); return 0;",
        table,
        column);
  }

  private String sorted(int table) {
    return browser
        .texts(
            "return [...document.querySelectorAll('table.vehicles')[arguments[0]].tHead.rows[0].cells]"
                + ".filter(h => h.hasAttribute('aria-sort'))"
                + ".map(h => h.textContent + ' ' + h.getAttribute('aria-sort'));",
            table)
        .toString();
  }

  @Test
  void nothingReachesPastThePage() throws IOException {
    List<String> faults = new ArrayList<>();
    for (Path page : List.of(demonstration, many)) {
      browser.open(page);
      for (int width : Browser.WIDTHS) {
        for (String theme : List.of("light", "dark")) {
          browser.show(width, "screen", theme);
          faults.addAll(browser.faults("sideways.js", width + " " + theme));
        }
      }
      browser.show(Browser.A4_BETWEEN_MARGINS, "print", "light");
      faults.addAll(browser.faults("sideways.js", "print"));
    }
    assertThat(faults).isEmpty();
  }

  @Test
  void textAndDrawingsCanBeRead() throws IOException {
    List<String> faults = new ArrayList<>();
    for (Path page : List.of(demonstration, many)) {
      browser.open(page);
      for (int width : Browser.WIDTHS) {
        browser.show(width, "screen", "light");
        faults.addAll(browser.faults("drawings.js", LETTERING, width + ""));
      }
    }
    for (int width : Browser.WIDTHS) {
      for (String theme : List.of("light", "dark")) {
        browser.show(width, "screen", theme);
        faults.addAll(browser.faults("contrast.js", CONTRAST, width + " " + theme));
      }
    }
    assertThat(faults).isEmpty();
  }

  @Test
  void nothingIsFetchedFromOutside() {
    browser.requests();
    open(many, 1280);
    click(0, 1);
    assertThat(browser.requests()).containsExactly(many.toUri().toString());
  }

  @Test
  void sortsByEachColumnBothWays() {
    open(many, 1280);
    assertThat(sorted(0)).isEqualTo("[Score descending]");
    for (int column : List.of(2, 3, 4, 5, 6, 7)) {
      click(0, column);
      List<Long> keys = keys(column);
      List<Long> wanted = new ArrayList<>(keys);
      Collections.sort(wanted);
      boolean up = sorted(0).contains("ascending");
      if (!up) {
        Collections.reverse(wanted);
      }
      assertThat(keys).as("column %d", column).isEqualTo(wanted);
      click(0, column);
      Collections.reverse(wanted);
      assertThat(keys(column)).as("column %d back", column).isEqualTo(wanted);
      assertThat(sorted(0).contains("ascending")).isEqualTo(!up);
    }
    assertThat(sorted(1)).isEqualTo("[Score descending]");
  }

  /** Returns the known keys; what is not known stands last, whichever way. */
  private List<Long> keys(int column) {
    List<String> texts = column(0, column);
    int known = (int) texts.stream().filter(it -> !it.isEmpty()).count();
    assertThat(texts.subList(known, texts.size())).allMatch(String::isEmpty);
    return texts.subList(0, known).stream().map(Long::valueOf).toList();
  }

  @Test
  void sortsNamesByTheNumbersInThemAndKeepsTheOrderOfEquals() {
    open(many, 1280);
    click(0, 0);
    assertThat(column(0, 0))
        .startsWith("The dropside of member 0", "The dropside of member 1")
        .endsWith("The dropside of member 29");
    List<String> before = column(0, 0);
    click(0, 1);
    assertThat(column(0, 0)).isEqualTo(before);
    assertThat(browser.texts("return [document.querySelector('.order').textContent];"))
        .containsExactly("Sorted by model, from A to Z.");
  }

  @Test
  void buttonsAreReachedByKey() {
    for (int width : List.of(1280, 390)) {
      open(many, width);
      browser.result("document.querySelector('.vehicles thead button').focus(); return 0;");
      browser.press(Keys.ENTER, 1);
      assertThat(sorted(0)).isEqualTo("[Vehicle ascending]");
      browser.press(Keys.TAB, 1);
      browser.press(Keys.SPACE, 1);
      assertThat(sorted(0)).isEqualTo("[Model ascending]");
    }
  }

  private String filtered(String words) {
    browser.result(
        "const i = document.querySelector('input'); i.value = arguments[0];"
            + "i.dispatchEvent(new Event('input')); return 0;",
        words);
    return String.valueOf(
        browser.result(
            "return new Promise(done => requestAnimationFrame(() => requestAnimationFrame(() =>"
                + " done(document.querySelector('output').textContent))));"));
  }

  private long shown() {
    return (Long)
        browser.result(
            "return [...document.querySelectorAll('.vehicles tbody tr')].filter(r => r.checkVisibility()).length;");
  }

  @Test
  void showsOnlyThoseWithAllTheWordsAndCountsThem() {
    for (int width : List.of(1280, 390)) {
      open(many, width);
      assertThat(filtered("MEMBER 59")).isEqualTo("1 of 60 vehicles");
      assertThat(shown()).isEqualTo(1);
      assertThat(filtered("v0001")).isEqualTo("10 of 60 vehicles");
      assertThat(shown()).isEqualTo(10);
      assertThat(filtered("v0001 nobody")).isEqualTo("0 of 60 vehicles");
      assertThat(shown()).isZero();
      assertThat(filtered(" ")).isEmpty();
      assertThat(shown()).isEqualTo(VEHICLES);
    }
  }

  @Test
  void readsWithoutAScript() {
    browser.cdp("Emulation.setScriptExecutionDisabled", Map.of("value", true));
    try {
      for (int width : List.of(1280, 320)) {
        open(many, width);
        assertThat(browser.result("return document.querySelectorAll('button, input').length;"))
            .isEqualTo(0L);
        assertThat(shown()).isEqualTo(VEHICLES);
        assertThat(browser.texts("return [document.querySelector('.order').innerText];").get(0))
            .isEqualToIgnoringCase("Sorted by likely score, the highest first.");
        List<Long> scores = column(0, 3).stream().map(Long::valueOf).toList();
        assertThat(scores).isSortedAccordingTo(Collections.reverseOrder());
      }
    } finally {
      browser.cdp("Emulation.setScriptExecutionDisabled", Map.of("value", false));
    }
  }
}
