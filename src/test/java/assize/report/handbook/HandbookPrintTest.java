package assize.report.handbook;

import static org.assertj.core.api.Assertions.assertThat;

import assize.report.html.Browser;
import assize.report.html.Paper;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** The motorcycle's handbook, printed and read back by another program. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Tag("browser")
class HandbookPrintTest {
  /** A4 (ISO 216: 210 by 297 mm), from memory, in inches. */
  private static final double WIDE = 210 / 25.4;

  private static final double TALL = 297 / 25.4;

  private final RuleSet rules =
      RuleSetReader.read(Path.of("rules/quillhurst-q.yaml")).value().orElseThrow();
  private Browser browser;
  private List<String> pages = List.of();
  private List<String> references = List.of();

  @BeforeAll
  void print(@TempDir Path folder, @TempDir Path profile) throws Exception {
    browser = Browser.start(profile);
    Path book = folder.resolve("book.html");
    Files.writeString(book, HtmlHandbook.render(HandbookViewFactory.of(rules)));
    browser.open(book);
    browser.show(1280, "", "dark");
    pages = new Paper(folder, browser.print(WIDE, TALL)).pages();
    browser.show((int) (96 * WIDE), "print", "light");
    references = browser.faults("references.js");
  }

  @AfterAll
  void stop() throws IOException {
    if (browser != null) {
      browser.close();
    }
  }

  @Test
  void theStandardIsNamedOnEveryPage() {
    assertThat(pages).hasSizeGreaterThan(10);
    for (int i = 0; i < pages.size(); i++) {
      String page = Paper.letters(pages.get(i));
      assertThat(page)
          .contains(Paper.letters(rules.name()))
          .contains(Paper.letters("edition 2, February 2026"))
          .contains((i + 1) + "/" + pages.size());
    }
  }

  @Test
  void everyItemIsThereWithItsNumber() {
    String all = Paper.letters(String.join("\n", pages));
    List<String> titles = rules.items().map(item -> item.title()).toList();
    for (int i = 0; i < titles.size(); i++) {
      assertThat(all).contains(Paper.letters((i + 1) + " " + titles.get(i)));
    }
  }

  @Test
  void linksAreWrittenOutAsNumbers() {
    assertThat(references).isEmpty();
  }

  @Test
  void whatIsForScreensStaysThere() {
    assertThat(Paper.letters(String.join("\n", pages)))
        .doesNotContain(Paper.letters("To the rules"))
        .doesNotContain(Paper.letters("To the top"));
  }
}
