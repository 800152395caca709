package assize.report.vehicle;

import static org.assertj.core.api.Assertions.assertThat;

import assize.cli.Main;
import assize.cli.Terminal;
import assize.report.html.Browser;
import assize.report.html.DemoReports;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;

/**
 * A photo fills the window when it is clicked, and goes back to its place, with no script at all.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Tag("browser")
class EnlargedPhotoTest {
  /** WCAG 2.2, success criterion 2.5.8, target size (minimum), in CSS pixels. */
  private static final double TARGET = 24;

  private static final String FIGURE = "document.querySelector('#items figure.photo')";

  private static final String ITEM = FIGURE + ".closest('article')";

  private Browser browser;
  private Path report = Path.of("");
  private Path beside = Path.of("");

  @BeforeAll
  void start(@TempDir Path folder, @TempDir Path profile) throws IOException {
    browser = Browser.start(profile);
    report =
        DemoReports.in(folder.resolve("demo")).stream()
            .filter(it -> it.endsWith("l45-4388.html"))
            .findFirst()
            .orElseThrow();
    Path out = folder.resolve("beside");
    ByteArrayOutputStream messages = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(messages, true, StandardCharsets.UTF_8);
    int exit =
        Main.run(
            new Terminal(stream, stream, false),
            "judge",
            folder.resolve("demo/l45-4388.yaml").toString(),
            "--out=" + out,
            "--photos=folder");
    assertThat(exit).as(messages.toString(StandardCharsets.UTF_8)).isZero();
    beside = out.resolve("l45-4388.html");
  }

  @AfterAll
  void stop() {
    if (browser != null) {
      browser.close();
    }
  }

  private String text(String script) {
    return String.valueOf(browser.result("return String(" + script + ");"));
  }

  private double number(String script) {
    return Double.parseDouble(text(script));
  }

  /** Clicks as a mouse or a finger would, on the middle of something. */
  private void click(String element) {
    browser.result(element + ".scrollIntoView({block: 'center'}); return true;");
    double x = number("(r => r.left + r.width / 2)(" + element + ".getBoundingClientRect())");
    double y = number("(r => r.top + r.height / 2)(" + element + ".getBoundingClientRect())");
    for (String type : List.of("mousePressed", "mouseReleased")) {
      browser.cdp(
          "Input.dispatchMouseEvent",
          Map.of("type", type, "x", x, "y", y, "button", "left", "clickCount", 1));
    }
  }

  private double height(String element) {
    return number(element + ".getBoundingClientRect().height");
  }

  @ParameterizedTest
  @ValueSource(ints = {1280, 390})
  void fillsTheWindowWhenItIsClickedAndGoesBack(int width) {
    browser.cdp("Emulation.setScriptExecutionDisabled", Map.of("value", true));
    try {
      browser.open(report);
      browser.show(width, "screen", "light");
      double small = height(FIGURE + ".querySelector('img')");
      assertThat(number(FIGURE + ".querySelector('.enlarge').getBoundingClientRect().width"))
          .isGreaterThan(TARGET);
      assertThat(text("getComputedStyle(" + FIGURE + ".querySelector('.close')).display"))
          .isEqualTo("none");
      click(FIGURE + ".querySelector('img')");
      assertThat(text("location.hash.slice(1) === " + FIGURE + ".id")).isEqualTo("true");
      assertThat(
              text(
                  "(r => [r.left, r.top, r.right - innerWidth, r.bottom - innerHeight])"
                      + "("
                      + FIGURE
                      + ".getBoundingClientRect())"))
          .isEqualTo("0,0,0,0");
      assertThat(height(FIGURE + ".querySelector('img')")).isGreaterThanOrEqualTo(small);
      assertThat(
              text(
                  "(r => r.left >= 0 && r.top >= 0 && r.right <= innerWidth"
                      + " && r.bottom <= innerHeight)("
                      + FIGURE
                      + ".querySelector('img')"
                      + ".getBoundingClientRect())"))
          .isEqualTo("true");
      assertThat(
              text(
                  FIGURE + ".contains(document.elementFromPoint(innerWidth / 2, innerHeight / 2))"))
          .isEqualTo("true");
      assertThat(height(FIGURE + ".querySelector('.close')")).isGreaterThanOrEqualTo(TARGET);
      click(FIGURE + ".querySelector('.close')");
      assertThat(text("location.hash")).isEqualTo("#" + text(ITEM + ".id"));
      assertThat(text("getComputedStyle(" + FIGURE + ").position")).isEqualTo("static");
      assertThat(number("" + ITEM + ".getBoundingClientRect().top")).isBetween(-2.0, 450.0);
    } finally {
      browser.cdp("Emulation.setScriptExecutionDisabled", Map.of("value", false));
    }
  }

  @Test
  void worksByKeyboard() {
    browser.open(report);
    browser.show(1280, "screen", "dark");
    browser.result(FIGURE + ".querySelector('.enlarge').focus(); return true;");
    browser.press(Keys.ENTER, 1);
    assertThat(text("getComputedStyle(" + FIGURE + ").position")).isEqualTo("fixed");
    browser.press(Keys.TAB, 1);
    assertThat(text("document.activeElement.className")).isEqualTo("close");
    browser.press(Keys.ENTER, 1);
    assertThat(text("getComputedStyle(" + FIGURE + ").position")).isEqualTo("static");
  }

  @Test
  void inPrintNothingIsEnlarged() {
    browser.open(report);
    browser.show(1280, "screen", "light");
    click(FIGURE + ".querySelector('img')");
    browser.show(Browser.A4_BETWEEN_MARGINS, "print", "light");
    assertThat(text("getComputedStyle(" + FIGURE + ").position")).isEqualTo("static");
    assertThat(text("getComputedStyle(" + FIGURE + ".querySelector('.close')).display"))
        .isEqualTo("none");
  }

  @Test
  void eachPhotoIsInThePageOnceAndLinkedToFromElsewhere() {
    browser.open(report);
    List<String> sources = browser.texts("return [...document.images].map(i => i.src);");
    assertThat(sources).hasSizeGreaterThan(6).doesNotHaveDuplicates();
    assertThat(
            browser.texts(
                "return [...document.querySelectorAll('.elsewhere a')].map(a => a.hash)"
                    + ".filter(h => !document.getElementById(h.slice(1)));"))
        .isEmpty();
    assertThat(
            number(
                "document.querySelectorAll('#papers .elsewhere').length"
                    + " + document.querySelectorAll('#items .elsewhere').length"))
        .isPositive();
  }

  @Test
  void photosBesideThePageAreShownAndNothingElseIsAskedFor() throws IOException {
    browser.requests();
    browser.open(beside);
    browser.show(1280, "screen", "light");
    List<String> unseen =
        browser.texts(
            "document.querySelectorAll('img').forEach(i => { i.loading = 'eager'; });"
                + "return Promise.all([...document.images].map(i => i.decode().then(() => '',"
                + " () => i.src))).then(all => all.filter(it => it));");
    assertThat(unseen).isEmpty();
    Set<String> files;
    try (Stream<Path> all = Files.list(beside.resolveSibling("l45-4388-photos"))) {
      files = all.map(it -> it.toUri().toString()).collect(Collectors.toSet());
    }
    assertThat(files).hasSizeGreaterThan(6);
    assertThat(browser.requests())
        .contains(beside.toUri().toString())
        .containsAll(files)
        .allMatch(url -> url.equals(beside.toUri().toString()) || files.contains(url));
  }
}
