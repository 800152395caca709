package assize.report.vehicle;

import static org.assertj.core.api.Assertions.assertThat;

import assize.report.html.Browser;
import assize.report.html.DemoReports;
import assize.report.html.Paper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every report of the demonstration, printed and read back by another program. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Tag("browser")
class PrintTest {
  /** A4 (ISO 216: 210 by 297 mm) and US letter (ANSI/ASME Y14.1: 8.5 by 11 in), from memory. */
  private static final List<Sheet> SHEETS =
      List.of(new Sheet("A4", 210 / 25.4, 297 / 25.4), new Sheet("letter", 8.5, 11));

  /** Items on a page at the least, over the whole report but a few pages before and after them. */
  private static final double ITEMS_ON_A_PAGE = 5;

  private static final int OTHER_PAGES = 12;

  /** How far down a page is filled at the least, other than the last. */
  private static final double FILLED = 0.33;

  /** Each item's heading with points and verdict, its hazards, and the last line of its sums. */
  private static final String ITEMS =
      "return [...document.querySelectorAll('article.item')].map(item => [item.querySelector('.head'),"
          + " ...item.querySelectorAll('.look, .hazard'), [...item.querySelectorAll('.sum li')].pop()]"
          + ".map(e => e.textContent).join('\\n--\\n'));";

  private static final String ON_EACH_PAGE =
      "const d = document.documentElement.dataset; return [d.vehicle, d.standard];";

  private Browser browser;
  private Path folder;
  private List<Path> reports = List.of();

  record Sheet(String name, double width, double height) {
    @Override
    public String toString() {
      return name;
    }
  }

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

  Stream<Arguments> printed() {
    return reports.stream()
        .flatMap(report -> SHEETS.stream().map(sheet -> Arguments.of(report, sheet)));
  }

  @ParameterizedTest
  @MethodSource("printed")
  void paperSaysAllThatTheScreenSaysAndCutsNoItem(Path report, Sheet sheet) throws Exception {
    browser.open(report);
    browser.show(1280, "", "light");
    List<String> said = browser.texts(Browser.read("said.js"));
    assertThat(said).hasSizeGreaterThan(500);
    Paper paper = print(sheet);
    String running = Paper.letters(String.join("", browser.texts(ON_EACH_PAGE)));
    List<String> pages = new ArrayList<>();
    List<String> raw = paper.pages();
    for (String page : raw) {
      String number = (pages.size() + 1) + " / " + raw.size();
      List<String> lines = page.lines().toList();
      assertThat(lines).contains(number);
      assertThat(lines.stream().map(Paper::letters)).contains(running);
      pages.add(
          lines.stream()
              .filter(line -> !line.equals(number))
              .map(Paper::letters)
              .filter(line -> !line.equals(running))
              .collect(Collectors.joining()));
    }
    String all = String.join("", pages);
    assertThat(said.stream().filter(text -> !all.contains(Paper.letters(text))).limit(20))
        .isEmpty();
    List<String> items = browser.texts(ITEMS);
    assertThat(items.stream().filter(item -> pages.stream().noneMatch(page -> holds(page, item))))
        .as("items that a page's end cuts in two")
        .isEmpty();
    assertThat(raw)
        .as(sheet + " for " + items.size() + " items")
        .hasSizeLessThanOrEqualTo((int) (items.size() / ITEMS_ON_A_PAGE) + OTHER_PAGES);
    List<Double> filled = paper.filled();
    assertThat(filled).hasSameSizeAs(raw);
    assertThat(filled.subList(0, filled.size() - 1))
        .as("how far down each page is filled")
        .allMatch(part -> part > FILLED);
  }

  @ParameterizedTest
  @MethodSource("printed")
  void whatIsForScreensStaysThere(Path report, Sheet sheet) throws Exception {
    browser.open(report);
    browser.show(1280, "", "light");
    String all = String.join("\n", print(sheet).pages());
    for (String words :
        List.of(
            "To the score",
            "To the top",
            "Show only some",
            "Show all",
            "Choose again",
            "How the points come about",
            "The same dates as a table",
            "Close, back to")) {
      assertThat(Paper.letters(all)).doesNotContain(Paper.letters(words));
    }
  }

  @ParameterizedTest
  @MethodSource("printed")
  void linksAreWrittenOut(Path report, Sheet sheet) throws Exception {
    browser.open(report);
    browser.show((int) (96 * sheet.width()), "print", "light");
    assertThat(browser.faults("references.js")).isEmpty();
    String title =
        browser.texts("return [document.querySelector('article.item h4').innerText]").get(0);
    String all = Paper.letters(String.join("\n", print(sheet).pages()));
    assertThat(all).contains(Paper.letters("1 " + title));
  }

  @Test
  void aDarkScreenPrintsLight() throws Exception {
    browser.open(reports.get(0));
    browser.show(1280, "", "light");
    List<Double> light = print(SHEETS.get(0)).grays();
    browser.show(1280, "", "dark");
    assertThat(print(SHEETS.get(0)).grays()).isEqualTo(light).allMatch(gray -> gray > 200);
  }

  /** Says whether a page has all parts of an item, in their order. */
  private static boolean holds(String page, String item) {
    int at = 0;
    for (String part : item.split("\n--\n", -1)) {
      String letters = Paper.letters(part);
      int found = page.indexOf(letters, at);
      if (found < 0) {
        return false;
      }
      at = found + letters.length();
    }
    return true;
  }

  private Paper print(Sheet sheet) throws IOException {
    return new Paper(folder, browser.print(sheet.width(), sheet.height()));
  }
}
