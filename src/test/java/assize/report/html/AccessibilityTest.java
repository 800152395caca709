package assize.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.Keys;

/**
 * Every kind of page, for everybody.
 *
 * <p>Success criteria are those of WCAG 2.2; its rules are run by axe-core 4.14.1, all of them,
 * best practices and the triple-A ones included.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Tag("browser")
class AccessibilityTest {
  private static final Path AXE = Path.of("src/test/resources/axe/axe.min.js");

  /** Success criterion 1.4.11, contrast of what is not text. */
  private static final double LINES = 3;

  /** Success criterion 1.4.12, text spacing; lettering within a drawing is part of a picture. */
  private static final String SPACING =
      "const s = document.styleSheets[0];"
          + "s.insertRule(':not(svg *) { line-height: 1.5 !important; letter-spacing: 0.12em !important;"
          + " word-spacing: 0.16em !important; }', s.cssRules.length);"
          + "s.insertRule('svg { letter-spacing: 0 !important; word-spacing: 0 !important; }',"
          + " s.cssRules.length);"
          + "s.insertRule('p { margin-bottom: 2em !important; }', s.cssRules.length); return 0;";

  private Browser browser;
  private List<Path> pages = List.of();
  private String axe = "";

  @BeforeAll
  void start(@TempDir Path folder, @TempDir Path profile) throws IOException {
    browser = Browser.start(profile);
    pages = Pages.in(folder.resolve("demo"));
    axe = Files.readString(AXE);
  }

  @AfterAll
  void stop() {
    if (browser != null) {
      browser.close();
    }
  }

  List<Path> pages() {
    return pages;
  }

  /** Pages with a table of contents, which the first stop skips. */
  List<Path> pagesWithContents() throws IOException {
    return pagesWith("<nav ");
  }

  /** Pages on which something is drawn. */
  List<Path> pagesWithDrawings() throws IOException {
    return pagesWith("class=\"drawing ");
  }

  private List<Path> pagesWith(String markup) throws IOException {
    List<Path> found = new ArrayList<>();
    for (Path page : pages) {
      if (Files.readString(page).contains(markup)) {
        found.add(page);
      }
    }
    return found;
  }

  private void foldOut() {
    browser.texts("document.querySelectorAll('details').forEach(d => d.open = true); return [];");
  }

  @ParameterizedTest
  @MethodSource("pages")
  void noRuleOfAxeIsBroken(Path page) throws IOException {
    List<String> faults = new ArrayList<>();
    for (int width : List.of(1280, 390)) {
      for (String theme : List.of("light", "dark")) {
        browser.open(page);
        browser.layOut();
        browser.show(width, "screen", theme);
        browser.texts(axe + "; return [];");
        browser.laterFaults("axe-run.js").stream()
            .map(fault -> width + " " + theme + ": " + fault)
            .forEach(faults::add);
      }
    }
    assertThat(faults).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("pages")
  void whatAFingerHasToHitIsLargeEnough(Path page) throws IOException {
    browser.open(page);
    browser.layOut();
    List<String> faults = new ArrayList<>();
    for (int width : Browser.WIDTHS) {
      browser.show(width, "screen", "light");
      faults.addAll(browser.faults("targets.js", Integer.toString(width)));
    }
    assertThat(faults).isEmpty();
  }

  /** Success criteria 1.4.4 (text twice as large), 1.4.10 (320 pixels) and 1.4.12. */
  @ParameterizedTest
  @MethodSource("pages")
  void largeAndWideTextStaysOnThePage(Path page) throws IOException {
    List<String> faults = new ArrayList<>();
    browser.open(page);
    browser.layOut();
    foldOut();
    for (int width : Browser.WIDTHS) {
      browser.show(width, "screen", "light");
      faults.addAll(browser.faults("sideways.js", Integer.toString(width)));
    }
    browser.show(640, "screen", "light");
    browser.result("document.documentElement.style.fontSize = '200%'; return 0;");
    faults.addAll(browser.faults("sideways.js", "twice as large"));
    browser.result("document.documentElement.style.fontSize = ''; return 0;");
    browser.result(SPACING);
    for (int width : List.of(1280, 320)) {
      browser.show(width, "screen", "light");
      faults.addAll(browser.faults("sideways.js", "spaced out at " + width));
    }
    assertThat(faults).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("pages")
  void theFocusIsSeenWhereverItIs(Path page) throws IOException {
    browser.open(page);
    foldOut();
    browser.texts(
        "const first = document.querySelector('#pick input:enabled'); if (first) first.click();"
            + " return [];");
    List<String> faults = new ArrayList<>();
    for (int width : List.of(1280, 390)) {
      browser.show(width, "screen", "light");
      faults.addAll(browser.faults("focus.js", Integer.toString(width)));
    }
    assertThat(faults).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("pagesWithContents")
  void theFirstStopLeadsPastTheHead(Path page) {
    browser.open(page);
    browser.show(1280, "screen", "light");
    browser.press(Keys.TAB, 1);
    assertThat(browser.texts("return [document.activeElement.className];")).containsExactly("skip");
    assertThat(
            browser.result(
                "const box = document.activeElement.getBoundingClientRect();"
                    + "return box.width > 24 && box.height > 24 && box.left >= 0 && box.top >= 0;"))
        .isEqualTo(true);
    browser.press(Keys.ENTER, 1);
    assertThat(
            browser.texts(
                "const skip = document.querySelector('.skip');"
                    + "return [':target', skip.hash].map(s => document.querySelector(s).id);"))
        .hasSize(2)
        .satisfies(ids -> assertThat(ids.get(0)).isEqualTo(ids.get(1)));
  }

  @ParameterizedTest
  @MethodSource("pagesWithDrawings")
  void drawingsAreReadInTheReadersOwnColors(Path page) throws IOException {
    browser.open(page);
    List<String> faults = new ArrayList<>();
    for (String theme : List.of("light", "dark")) {
      browser.show(
          1280, "screen", Map.of("prefers-color-scheme", theme, "forced-colors", "active"));
      faults.addAll(browser.faults("forced.js", theme));
    }
    browser.show(1280, "screen", Map.of("forced-colors", "none"));
    assertThat(faults).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("pages")
  void moreContrastReachesTheLines(Path page) throws IOException {
    browser.open(page);
    List<String> faults = new ArrayList<>();
    for (String theme : List.of("light", "dark")) {
      browser.show(
          1280, "screen", Map.of("prefers-color-scheme", theme, "prefers-contrast", "more"));
      faults.addAll(browser.faults("hairlines.js", LINES));
    }
    assertThat(faults).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("pages")
  void nothingMoves(Path page) throws IOException {
    browser.open(page);
    browser.show(1280, "screen", "light");
    assertThat(browser.faults("motion.js")).isEmpty();
  }
}
