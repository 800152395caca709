package assize.report.vehicle;

import static org.assertj.core.api.Assertions.assertThat;

import assize.report.html.Browser;
import assize.report.html.DemoReports;
import assize.report.vehicle.FilterChoices.Choice;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.Keys;

/** What is ticked is what is shown, with a script and without. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Tag("browser")
class FilterTest {
  /** Combinations that are tried on each page, from a fixed seed. */
  private static final int TRIES = 40;

  private Browser browser;
  private List<Path> reports = List.of();

  @BeforeAll
  void start(@TempDir Path folder, @TempDir Path profile) throws IOException {
    browser = Browser.start(profile);
    reports =
        Stream.concat(
                DemoReports.in(folder.resolve("demo")).stream(),
                Stream.of(ManyItems.in(folder.resolve("many"), 180)))
            .toList();
  }

  @AfterEach
  void scriptsAgain() {
    if (browser != null) {
      browser.scripts(true);
    }
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

  private void open(Path report, boolean scripts) {
    browser.scripts(scripts);
    browser.open(report);
    browser.show(1280, "screen", "light");
  }

  private List<String> shown(List<Choice> ticked) throws IOException {
    return browser.faults("choose.js", ticked.stream().map(Choice::id).toList());
  }

  @ParameterizedTest
  @MethodSource("reports")
  void everyChoiceShowsAsManyItemsAsItSays(Path report) throws IOException {
    open(report, false);
    FilterChoices page = FilterChoices.of(browser);
    assertThat(page.choices().stream().map(Choice::group).distinct())
        .containsExactly("Verdict", "Area", "Sources", "Hazards");
    assertThat(page.choices().stream().filter(it -> it.group().equals("Verdict"))).hasSize(7);
    for (Choice choice : page.choices()) {
      List<String> expected = page.expected(List.of(choice), "");
      assertThat(expected).as(choice.toString()).hasSize(choice.count());
      if (choice.count() == 0) {
        assertThat(browser.result("return " + element(choice.id()) + ".disabled;")).isEqualTo(true);
      } else {
        assertThat(shown(List.of(choice))).as(choice.toString()).isEqualTo(expected);
        assertThat(browser.spoken(".shown .tell"))
            .isEqualTo(choice.count() + " of " + page.items().size() + " items");
      }
    }
  }

  @ParameterizedTest
  @MethodSource("reports")
  void choicesWorkTogetherWithoutAScript(Path report) throws IOException {
    open(report, false);
    FilterChoices page = FilterChoices.of(browser);
    List<Choice> some = page.choices().stream().filter(it -> it.count() > 0).toList();
    Random random = new Random(report.getFileName().toString().hashCode());
    int none = 0;
    for (int i = 0; i < TRIES; i++) {
      List<Choice> ticked = new ArrayList<>();
      int boxes = 2 + random.nextInt(5);
      for (int box = 0; box < boxes; box++) {
        ticked.add(some.get(random.nextInt(some.size())));
      }
      ticked = ticked.stream().distinct().toList();
      List<String> expected = page.expected(ticked, "");
      assertThat(shown(ticked)).as(ticked.toString()).isEqualTo(expected);
      assertThat(browser.spoken(".shown .tell"))
          .as(ticked.toString())
          .isEqualTo(expected.size() + " of " + page.items().size() + " items");
      none += expected.isEmpty() ? 1 : 0;
    }
    assertThat(none).isBetween(1, TRIES - 10);
  }

  @ParameterizedTest
  @MethodSource("reports")
  void eachAreaSaysHowManyOfItsItemsAreShown(Path report) throws IOException {
    open(report, false);
    FilterChoices page = FilterChoices.of(browser);
    Choice meets = page.choices().get(0);
    assertThat(meets.words()).isEqualTo("correct");
    shown(List.of(meets));
    for (Choice area : page.choices()) {
      if (area.group().equals("Area")) {
        String mark = area.id().replace("pick-", ".");
        assertThat(browser.spoken(mark + " .here"))
            .isEqualTo(
                page.expected(List.of(meets, area), "").size()
                    + " of "
                    + area.count()
                    + " items shown here");
      }
    }
    shown(List.of(page.choices().stream().filter(it -> it.group().equals("Area")).toList().get(1)));
    assertThat(
            browser.texts(
                "return [...document.querySelectorAll('.area')].filter(a => a.checkVisibility())"
                    + ".map(a => a.classList[1]);"))
        .containsExactly("a-2");
  }

  @ParameterizedTest
  @MethodSource("reports")
  void wordsNarrowFurther(Path report) throws IOException {
    open(report, true);
    FilterChoices page = FilterChoices.of(browser);
    Choice meets = page.choices().get(0);
    for (List<Choice> ticked : List.of(List.<Choice>of(), List.of(meets))) {
      for (String words : List.of("drawing", "DRAWING  note", "email", "no such words")) {
        shown(ticked);
        browser.result(element("pick-words") + ".focus(); return 0;");
        browser.type(words);
        List<String> expected = page.expected(ticked, words);
        assertThat(seen()).as(words + " " + ticked).isEqualTo(expected);
        String told = expected.size() + " of " + page.items().size() + " items";
        assertThat(browser.spoken(".shown .tell")).isEqualTo(told);
        assertThat(browser.result("return " + element("pick-said") + ".textContent;"))
            .isEqualTo(told + " shown");
      }
    }
    browser.result(element("pick-words") + ".focus(); return 0;");
    browser.press(Keys.BACK_SPACE, "no such words".length());
    assertThat(seen()).hasSize(meets.count());
  }

  private List<String> seen() {
    return browser.texts(
        "return [...document.querySelectorAll('#items .item, #items .apart li')]"
            + ".filter(i => i.checkVisibility()).map(i => i.id);");
  }

  private static String element(String id) {
    return "document.getElementById('" + id + "')";
  }

  @Test
  void theKeyboardChoosesAndTakesBackAndSendsNothing() throws IOException {
    for (boolean scripts : List.of(false, true)) {
      open(reports.get(0), scripts);
      FilterChoices page = FilterChoices.of(browser);
      browser.requests();
      browser.result(element("pick-v-incorrect") + ".focus(); return 0;");
      browser.type(" ");
      Choice departs = page.choices().get(2);
      assertThat(seen()).isEqualTo(page.expected(List.of(departs), ""));
      browser.press(Keys.ENTER, 1);
      if (scripts) {
        browser.result(element("pick-words") + ".focus(); return 0;");
        browser.type("the");
        browser.press(Keys.ENTER, 1);
      }
      assertThat(seen())
          .isEqualTo(page.expected(List.of(departs), scripts ? "the" : ""))
          .isNotEmpty();
      browser.result("document.querySelector('.shown button').focus(); return 0;");
      browser.press(Keys.ENTER, 1);
      assertThat(seen()).hasSameSizeAs(page.items());
      assertThat(browser.texts("return [...document.querySelectorAll('#pick :checked')];"))
          .isEmpty();
      assertThat(browser.result("return " + element("pick-words") + ".value;")).isEqualTo("");
      assertThat(browser.result("return document.querySelector('.shown').checkVisibility();"))
          .isEqualTo(false);
      assertThat(browser.address()).isEqualTo(reports.get(0).toUri().toString());
      assertThat(browser.requests()).isEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("reports")
  void linksReachItemsThatAreNotShown(Path report) throws IOException {
    open(report, false);
    FilterChoices page = FilterChoices.of(browser);
    Choice apart = page.choices().get(5);
    assertThat(apart.words()).isEqualTo("not applicable");
    List<Choice> area = page.choices().stream().filter(it -> it.group().equals("Area")).toList();
    for (List<Choice> ticked : List.of(List.of(apart), List.of(area.get(area.size() - 1)))) {
      shown(ticked);
      for (String links : List.of("#costs a.title", "#hazards a")) {
        assertThat(browser.faults("jump.js", links)).as(ticked.toString()).isEmpty();
      }
    }
    shown(List.of(apart));
    String item = page.items().get(0).id();
    browser.result("location.hash = '#" + item + "'; return 0;");
    List<String> expected = new ArrayList<>(List.of(item));
    expected.addAll(page.expected(List.of(apart), ""));
    assertThat(seen()).containsExactlyInAnyOrderElementsOf(expected);
    assertThat(browser.spoken(".shown .tell"))
        .isEqualTo(expected.size() + " of " + page.items().size() + " items");
  }

  @ParameterizedTest
  @MethodSource("reports")
  void hazardsAndPaperKeepAll(Path report) throws IOException {
    open(report, true);
    FilterChoices page = FilterChoices.of(browser);
    shown(List.of(page.choices().get(5)));
    browser.result(element("pick-words") + ".focus(); return 0;");
    browser.type("no such words");
    assertThat(seen()).isEmpty();
    String hazards =
        "return [...document.querySelectorAll('#hazards dd, #hazards a')]"
            + ".filter(e => e.checkVisibility()).length;";
    assertThat((Long) browser.result(hazards)).isPositive();
    browser.show(Browser.A4_BETWEEN_MARGINS, "print", "light");
    assertThat(seen()).hasSameSizeAs(page.items());
    assertThat(
            browser.texts(
                "return [...document.querySelectorAll('#pick, .shown, .here')]"
                    + ".filter(e => e.checkVisibility()).map(e => e.className);"))
        .isEmpty();
    assertThat(
            browser.texts(
                "return [...document.querySelectorAll('.area details, .area .drawing')]"
                    + ".filter(e => !e.checkVisibility()).map(e => e.className);"))
        .isEmpty();
  }

  @Test
  void aThousandItemsAreNarrowedToo(@TempDir Path folder) throws IOException {
    open(ManyItems.in(folder, 1000), true);
    FilterChoices page = FilterChoices.of(browser);
    assertThat(page.items()).hasSize(1000);
    assertThat(page.choices().stream().filter(it -> it.group().equals("Area")))
        .hasSize(ManyItems.AREAS);
    List<Choice> ticked = List.of(page.choices().get(0), page.choices().get(3));
    assertThat(shown(ticked)).isEqualTo(page.expected(ticked, "")).hasSizeBetween(100, 900);
    assertThat(shown(List.of())).hasSize(1000);
  }
}
