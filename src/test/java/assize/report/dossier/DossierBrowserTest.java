package assize.report.dossier;

import static org.assertj.core.api.Assertions.assertThat;

import assize.cli.Main;
import assize.cli.Terminal;
import assize.report.html.Browser;
import assize.report.html.Paper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Dossiers of the demonstration, opened from their files and printed. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Tag("browser")
class DossierBrowserTest {
  /** WCAG 2.2, success criterion 1.4.6, contrast (enhanced), for text of any size. */
  private static final double CONTRAST = 7;

  /** The fewest texts that a dossier has. */
  private static final int TEXTS = 200;

  /** A4 (ISO 216: 210 by 297 mm) in inches. */
  private static final double WIDTH = 210 / 25.4;

  private static final double HEIGHT = 297 / 25.4;

  /** Three sheets, printed on both sides. */
  private static final int MOST_PAGES = 6;

  private Browser browser;
  private Path folder;

  @BeforeAll
  void start(@TempDir Path folder, @TempDir Path profile) {
    this.folder = folder;
    browser = Browser.start(profile);
    dossier("rules/l45-4388.yaml", "bed-color", "cab-gloss");
    dossier("rules/q-1187.yaml", "tank-lining-color", "primary-chaincase");
  }

  private void dossier(String record, String... items) {
    List<String> words = new ArrayList<>(List.of("dossier", record));
    words.addAll(List.of(items));
    words.addAll(List.of("--out", folder.toString()));
    ByteArrayOutputStream messages = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(messages, true, StandardCharsets.UTF_8);
    int exit = Main.run(new Terminal(stream, stream, false), words.toArray(String[]::new));
    assertThat(exit).as(messages.toString(StandardCharsets.UTF_8)).isZero();
  }

  @AfterAll
  void stop() {
    if (browser != null) {
      browser.close();
    }
  }

  List<Path> dossiers() {
    return List.of(
        folder.resolve("l45-4388-bed-color.html"),
        folder.resolve("l45-4388-cab-gloss.html"),
        folder.resolve("q-1187-tank-lining-color.html"),
        folder.resolve("q-1187-primary-chaincase.html"));
  }

  @ParameterizedTest
  @MethodSource("dossiers")
  void opensAtEveryWidth(Path dossier) throws IOException {
    browser.open(dossier);
    List<String> faults = new ArrayList<>();
    for (String theme : List.of("light", "dark")) {
      for (int width : Browser.WIDTHS) {
        browser.show(width, "screen", theme);
        faults.addAll(browser.faults("sideways.js", width + " " + theme));
        faults.addAll(browser.faults("contrast.js", CONTRAST, width + " " + theme, TEXTS));
      }
    }
    browser.show(Browser.A4_BETWEEN_MARGINS, "print", "light");
    faults.addAll(browser.faults("sideways.js", "print"));
    faults.addAll(browser.faults("contrast.js", CONTRAST, "print", TEXTS));
    assertThat(faults).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("dossiers")
  void printsWithAllThatItSays(Path dossier) throws IOException, InterruptedException {
    browser.open(dossier);
    browser.show(1280, "", "light");
    List<String> said =
        browser.texts(
            "return [...document.querySelectorAll('h1, h2, h3, dd, .accepts, .stand,"
                + " .testimony td div, .working td, .working th, .unheard li, figcaption,"
                + " blockquote p, .signatures th')].map(e => e.textContent);");
    assertThat(said).hasSizeGreaterThan(60);
    List<String> pages = new Paper(folder, browser.print(WIDTH, HEIGHT)).pages();
    String paper = Paper.letters(String.join("\n", pages));
    assertThat(said.stream().filter(text -> !paper.contains(Paper.letters(text))).distinct())
        .isEmpty();
    assertThat(pages.stream().filter(page -> !page.isBlank())).hasSizeLessThanOrEqualTo(MOST_PAGES);
  }
}
