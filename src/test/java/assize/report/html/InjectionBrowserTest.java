package assize.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import org.assertj.core.api.Condition;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pages of a stranger's files in a browser that runs scripts: nothing runs, nothing is loaded. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Tag("browser")
class InjectionBrowserTest {
  private Browser browser;

  @BeforeAll
  void start(@TempDir Path profile) {
    browser = Browser.start(profile);
  }

  @AfterAll
  void stop() {
    if (browser != null) {
      browser.close();
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 11, 23})
  void eachFieldWithAnotherAttack(int first, @TempDir Path folder) throws IOException {
    List<InjectionStrings> all = InjectionStrings.all();
    open(folder, number -> all.get((number + first) % all.size()).text());
  }

  @Test
  void allAttacksInEachField(@TempDir Path folder) throws IOException {
    String all =
        InjectionStrings.all().stream()
            .map(InjectionStrings::text)
            .collect(Collectors.joining("\n\n"));
    open(folder, number -> all);
  }

  /** Names that continue others, or that pages and their scripts have themselves. */
  private static final List<String> NAMES =
      List.of(
          ("x x-title x-desc x-dates x-dates-narrow x-narrow title X x-2 1 1-1 item-x area-x items"
                  + " areas top data desk where picker forget words pick-words sources constructor"
                  + " toString hasOwnProperty valueOf prototype length id name color part-number"
                  + " source-x evidence-x dispute-x hazard-x numbers-x altering-item standard-1"
                  + " record judgment null true no 0 00 x--x e e-title")
              .split(" "));

  @ParameterizedTest
  @ValueSource(ints = {0, 5, 13, 29})
  void namesThatArePutTogetherStayApart(int first, @TempDir Path folder) throws IOException {
    InjectionPages stranger =
        InjectionPages.named(folder, number -> NAMES.get((number + first) % NAMES.size()));
    assertThat(stranger.fields()).hasSizeBetween(30, NAMES.size());
    open(stranger);
  }

  private void open(Path folder, IntFunction<String> texts) throws IOException {
    open(InjectionPages.in(folder, texts));
  }

  private void open(InjectionPages stranger) throws IOException {
    Map<String, Path> pages = stranger.pages();
    assertThat(pages)
        .containsKeys("report", "copy", "results", "sheet", "handbook", "changes")
        .hasKeySatisfying(startingWith("dossier: "))
        .hasKeySatisfying(startingWith("dossier, shared: "));
    for (Path page : pages.values()) {
      browser.requests();
      browser.complaints();
      browser.open(page);
      assertThat(browser.faults("harmless.js")).as(page.toString()).isEmpty();
      assertThat(browser.complaints()).as(page.toString()).isEmpty();
      assertThat(browser.requests())
          .as(page.toString())
          .isNotEmpty()
          .allMatch(it -> it.equals(page.toUri().toString()) || it.startsWith("data:image/"));
      assertThat(browser.address()).isEqualTo(page.toUri().toString());
    }
  }

  private static Condition<String> startingWith(String kind) {
    return new Condition<>(it -> it.startsWith(kind), "a page of the kind " + kind);
  }

  /** What is looked for here is seen where it is. */
  @Test
  void aPageThatRunsSomethingIsNoticed(@TempDir Path folder) throws IOException {
    for (String attack :
        List.of("<b onclick=alert(1)>x</b>", "<iframe></iframe>", "<a href='javascript:x'>x</a>")) {
      Path page = folder.resolve("page.html");
      Files.writeString(page, "<!DOCTYPE html><style></style><p id=x>" + attack + "</p>");
      browser.open(page);
      assertThat(browser.faults("harmless.js")).hasSize(1);
    }
    Path page = folder.resolve("page.html");
    Files.writeString(
        page,
        "<!DOCTYPE html><meta http-equiv=Content-Security-Policy content=\"default-src 'none'\">"
            + "<img src=x.png onerror='x()'>");
    browser.requests();
    browser.complaints();
    browser.open(page);
    assertThat(browser.complaints()).isNotEmpty();
  }
}
