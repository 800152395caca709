package assize.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every report of the demonstration, printed on A4 and read back by another program. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PrintTest {
  /** Words that stand on a page at the least, other than on the last: no paper is wasted. */
  private static final int WORDS = 100;

  /** Each item's heading with points and verdict, and the last line of its sums. */
  private static final String ITEMS =
      "return [...document.querySelectorAll('article.item')].map(item =>"
          + " item.querySelector('.head').textContent + '\\n--\\n'"
          + " + [...item.querySelectorAll('.sum li')].pop().textContent);";

  private Browser browser;
  private Path folder;
  private List<Path> reports = List.of();

  @BeforeAll
  void start(@TempDir Path folder, @TempDir Path profile) throws IOException {
    this.folder = folder;
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

  @ParameterizedTest
  @MethodSource("reports")
  void paperSaysAllThatTheScreenSays(Path report) throws IOException, InterruptedException {
    browser.open(report);
    browser.show(1280, "", "light");
    List<String> expected =
        browser.texts(
            "document.querySelectorAll('details').forEach(d => d.open = true);"
                + "const said = [...document.querySelectorAll('h1, h2, h3, h4, .figure .great, .caution, dd,"
                + " details li, details td, .why, .look, figcaption')].map(e => e.textContent);"
                + "document.querySelectorAll('details').forEach(d => d.open = false);"
                + "return said;");
    assertThat(expected).hasSizeGreaterThan(300);
    List<String> pages = pages(browser.print());
    String all = pages.stream().map(PrintTest::letters).collect(Collectors.joining());
    assertThat(expected.stream().filter(text -> !all.contains(letters(text))).distinct().limit(20))
        .isEmpty();
    List<String> split = new ArrayList<>();
    for (String item : browser.texts(ITEMS)) {
      String[] ends = item.split("\n--\n", -1);
      if (pages.stream().map(PrintTest::letters).noneMatch(page -> holds(page, ends))) {
        split.add(ends[0]);
      }
    }
    assertThat(split).as("items that a page's end cuts in two").isEmpty();
    for (String page : pages.subList(0, pages.size() - 1)) {
      assertThat(page.split("\\s+")).as(page).hasSizeGreaterThan(WORDS);
    }
  }

  /** Says whether a page has an item from its title to the last line of its sums. */
  private static boolean holds(String page, String[] ends) {
    int head = page.indexOf(letters(ends[0]));
    return head >= 0 && page.indexOf(letters(ends[1]), head) >= 0;
  }

  /** Reads a PDF's text, page by page, without the page numbers at its foot. */
  private List<String> pages(byte[] pdf) throws IOException, InterruptedException {
    Path reader = Browser.needed("pdftotext").orElseThrow();
    Path file = Files.write(folder.resolve("report.pdf"), pdf);
    Path text = folder.resolve("report.txt");
    Process process =
        new ProcessBuilder(
                reader.toString(), "-raw", "-enc", "UTF-8", file.toString(), text.toString())
            .inheritIO()
            .start();
    assertThat(process.waitFor()).isZero();
    return Stream.of(Files.readString(text, StandardCharsets.UTF_8).split("\f"))
        .map(page -> page.replaceFirst("\\n\\d+ / \\d+\\s*$", ""))
        .toList();
  }

  /**
   * Leaves out what only sets type: blanks, ligatures, capitals and the hyphens of broken lines.
   */
  private static String letters(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFKC)
        .toLowerCase(java.util.Locale.ROOT)
        .replaceAll("[\\s\\p{Cf}-]+", "");
  }
}
