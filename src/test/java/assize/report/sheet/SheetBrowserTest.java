package assize.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import assize.aspect.Aspect;
import assize.aspect.Colors;
import assize.aspect.Finding;
import assize.record.Observation;
import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.report.html.Browser;
import assize.report.html.Paper;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;

/** Inspection sheets of the demonstration, filled in from a file, without a network. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Tag("browser")
class SheetBrowserTest {
  private static final String LEFT = "return document.querySelector('.tally-left').textContent;";
  private static final String TOLD = "return document.querySelector('.told').textContent;";

  /** What the browser says when a page is about to go: whether it asks first (HTML, 7.4). */
  private static final String WARNS =
      "const leave = new Event('beforeunload', {cancelable: true});"
          + "window.dispatchEvent(leave); return leave.defaultPrevented;";

  private Browser browser;
  private Path folder = Path.of("");
  private Sheets sheets;

  @BeforeAll
  void start(@TempDir Path folder, @TempDir Path profile) throws IOException {
    this.folder = folder;
    browser = Browser.start(profile);
    sheets = Sheets.in(folder.resolve("demo"));
    browser.saveInto(sheets.folder());
  }

  @AfterAll
  void stop() {
    if (browser != null) {
      browser.close();
    }
  }

  @BeforeEach
  void forget() {
    browser.open(sheets.ofTruck());
    browser.result("localStorage.clear(); return 0;");
  }

  private String told() {
    return String.valueOf(browser.result(TOLD));
  }

  /** A file is read while the page goes on: asks until it has said so. */
  private void awaitTold(String part) {
    for (int asked = 0; asked < 10_000 && !told().contains(part); asked++) {
      Thread.onSpinWait();
    }
    assertThat(told()).contains(part);
  }

  private String left() {
    return String.valueOf(browser.result(LEFT));
  }

  @ParameterizedTest
  @ValueSource(ints = {1280, 390})
  void aSheetFilledInIsARecordThatIsJudged(int width) throws IOException, InterruptedException {
    browser.show(width, "screen", "light");
    browser.open(sheets.fresh());
    browser.requests();
    RuleSet rules = RuleSetReader.read(sheets.rules()).value().orElseThrow();
    VehicleRecord known = RecordReader.read(sheets.truck(), rules).value().orElseThrow();
    Map<String, Map<String, Object>> half = new LinkedHashMap<>();
    Map<String, Map<String, Object>> rest = new LinkedHashMap<>();
    known
        .observations()
        .forEach((id, one) -> (half.size() < 80 ? half : rest).put(id, Sheets.answers(one)));
    assertThat(browser.faults("fill-in.js", half)).isEmpty();
    String before = left();
    browser.reload();
    assertThat(left()).isEqualTo(before);
    awaitTold("here again");
    assertThat(browser.faults("fill-in.js", rest)).isEmpty();
    assertThat(browser.result(WARNS)).isEqualTo(true);
    Path saved = sheets.save(browser);
    assertThat(browser.result(WARNS)).isEqualTo(false);
    assertThat(browser.requests()).allMatch(it -> it.startsWith("file:") || it.startsWith("blob:"));
    assertThat(sheets.judge(saved)).isEqualTo("");
    VehicleRecord written = RecordReader.read(saved, rules).value().orElseThrow();
    assertThat(findings(written)).isEqualTo(findings(known));
    assertThat(notes(written)).isEqualTo(notes(known));
    Files.delete(saved);
  }

  private static Map<String, Map<Aspect, Finding>> findings(VehicleRecord record) {
    Map<String, Map<Aspect, Finding>> found = new TreeMap<>();
    record.observations().forEach((id, one) -> found.put(id, plain(one)));
    return found;
  }

  /** A sheet has no field for the light in which a color was matched, nor for who did. */
  private static Map<Aspect, Finding> plain(Observation one) {
    Map<Aspect, Finding> found = new HashMap<>(one.findings());
    found.computeIfPresent(
        Aspect.COLOR,
        (aspect, it) ->
            it instanceof Colors.Found color
                ? new Colors.Found(
                    color.chip(),
                    color.lab(),
                    color.uncertainty(),
                    Optional.empty(),
                    Optional.empty())
                : it);
    return found;
  }

  private static Map<String, String> notes(VehicleRecord record) {
    Map<String, String> notes = new TreeMap<>();
    record.observations().forEach((id, one) -> one.note().ifPresent(it -> notes.put(id, it)));
    return notes;
  }

  @Test
  void aRecordThatNothingWasChangedInIsSavedAsItWas() throws IOException, InterruptedException {
    for (Path record : sheets.records()) {
      browser.open(sheets.of(record));
      Path saved = sheets.save(browser);
      assertThat(saved.getFileName()).isEqualTo(record.getFileName());
      assertThat(saved).hasSameBinaryContentAs(sheets.original(record));
    }
  }

  @Test
  void aSavedRecordIsOpenedAgainAndOnlyWhatIsChangedChanges()
      throws IOException, InterruptedException {
    browser.open(sheets.fresh());
    String note = "Two\nlines: #1";
    browser.faults(
        "fill-in.js",
        Map.of("frame-rivets", Map.of("count", "30", "note", note), "spring-date", code("C3")));
    Path saved = sheets.save(browser);
    String text = Files.readString(saved).replace("\n", "\r\n");
    String byHand = "\uFEFF# our own remark\r\n" + text.replace("count: 30", "count:   30 # twice");
    Path changed = Files.writeString(folder.resolve("by-hand.yaml"), byHand);
    browser.result("localStorage.clear(); return 0;");
    browser.reload();
    assertThat(left()).doesNotContain("in part");
    browser.choose("#picker", changed);
    awaitTold("by-hand.yaml is open.");
    assertThat(value("spring-date", "date_code")).isEqualTo("C3");
    assertThat(value("frame-rivets", "count")).isEqualTo("30");
    browser.faults("fill-in.js", Map.of("spring-date", code("0042")));
    Path again = sheets.save(browser, "by-hand.yaml");
    assertThat(Files.readString(again))
        .isEqualTo(byHand.replace("date_code: C3", "date_code: \"0042\""));
  }

  private static Map<String, String> code(String typed) {
    return Map.of("date_code", typed);
  }

  private String value(String item, String aspect) {
    return String.valueOf(
        browser.result(
            "return document.querySelector('[data-item=\"' + arguments[0] + '\"] [data-aspect=\"'"
                + " + arguments[1] + '\"] input').value;",
            item,
            aspect));
  }

  @Test
  void whatTheSheetCannotReadIsRefusedWithItsLine() throws IOException {
    browser.open(sheets.fresh());
    browser.faults("fill-in.js", Map.of("spring-date", code("C3")));
    Path odd = folder.resolve("odd.yaml");
    Files.writeString(odd, "record: odd\nrules: x\nvehicle: &all {name: Odd}\n");
    browser.choose("#picker", odd);
    browser.click(".sure button:last-child");
    awaitTold("odd.yaml was not opened");
    assertThat(told())
        .contains("odd.yaml was not opened and is unchanged. Line 3: an anchor stands here")
        .endsWith("assize sheet odd.yaml");
    assertThat(value("spring-date", "date_code")).isEqualTo("C3");
    Files.write(odd, "record: r\u00e9cord\n".getBytes(StandardCharsets.ISO_8859_1));
    browser.choose("#picker", odd);
    browser.click(".sure button:last-child");
    awaitTold("not text in UTF-8");
    assertThat(value("spring-date", "date_code")).isEqualTo("C3");
  }

  @Test
  void nothingThatIsNotInAFileGoesWithoutAsking() throws IOException {
    browser.open(sheets.fresh());
    assertThat(browser.result(WARNS)).isEqualTo(false);
    browser.faults("fill-in.js", Map.of("spring-date", code("C3")));
    assertThat(browser.result(WARNS)).isEqualTo(true);
    browser.choose("#picker", sheets.original(sheets.truck()));
    browser.click(".sure button:nth-of-type(1)");
    assertThat(value("spring-date", "date_code")).isEqualTo("C3");
    browser.choose("#picker", sheets.original(sheets.truck()));
    browser.click(".sure button:nth-of-type(2)");
    awaitTold("l45-4388.yaml is open.");
    assertThat(browser.result(WARNS)).isEqualTo(false);
  }

  @Test
  void whatIsKeptCanBeForgotten() throws IOException {
    browser.open(sheets.fresh());
    assertThat(kept())
        .contains("kept in this browser", "Forget", "other pages that you open from files");
    browser.faults("fill-in.js", Map.of("spring-date", code("C3")));
    browser.click("#forget");
    browser.click(".sure button:last-child");
    assertThat(value("spring-date", "date_code")).isEmpty();
    browser.reload();
    assertThat(value("spring-date", "date_code")).isEmpty();
    assertThat(browser.result("return localStorage.length;")).isEqualTo(0L);
  }

  private String kept() {
    return String.valueOf(browser.result("return document.querySelector('.kept').textContent;"));
  }

  /** What is kept in the browser, names and values, as any page opened from a file reads it. */
  private Map<String, String> readByAnotherPage() throws IOException {
    Path other = folder.resolve("other.html");
    Files.writeString(other, "<!DOCTYPE html><html lang=en><title>Another page</title><p>Hello");
    browser.open(other);
    Map<String, String> kept = new TreeMap<>();
    Map<?, ?> all = (Map<?, ?>) browser.result("return {...localStorage};");
    all.forEach((name, value) -> kept.put(String.valueOf(name), String.valueOf(value)));
    return kept;
  }

  @Test
  void onlyAnswersAreKeptAndNothingOfTheRecord() throws IOException {
    Path page = sheets.ofTruck();
    browser.open(page);
    browser.faults("fill-in.js", Map.of("spring-date", code("C3-new")));
    String digest = String.valueOf(browser.result("return digestOf(" + DATA + ".text);"));
    Map<String, String> kept = readByAnotherPage();
    assertThat(kept.keySet()).singleElement().asString().endsWith(":answers-to:" + digest);
    assertThat(kept.values())
        .containsExactly(
            "{\"answers\":{\"sheet\":{},\"items\":{\"spring-date\":{\"date_code\":\"C3-new\"}}},"
                + "\"saved\":\"{\\\"sheet\\\":{},\\\"items\\\":{}}\"}");
    browser.open(page);
    awaitTold("here again");
    assertThat(value("spring-date", "date_code")).isEqualTo("C3-new");
  }

  private static final String DATA = "JSON.parse(document.getElementById('data').textContent)";

  @Test
  void anAnswerThatIsTakenBackLeavesNothing() throws IOException {
    browser.open(sheets.fresh());
    browser.faults("fill-in.js", Map.of("spring-date", code("C3")));
    browser.faults("fill-in.js", Map.of("spring-date", code("")));
    assertThat(readByAnotherPage()).isEmpty();
  }

  @Test
  void answersToARecordThatWasOpenedWaitForItAndAreNotMixedWithOthers() throws IOException {
    Path opened = sheets.original(sheets.truck());
    browser.open(sheets.fresh());
    browser.choose("#picker", opened);
    awaitTold("l45-4388.yaml is open.");
    browser.faults("fill-in.js", Map.of("spring-date", code("D4")));
    browser.reload();
    assertThat(isShown("#waiting")).isTrue();
    assertThat(value("spring-date", "date_code")).isEmpty();
    browser.faults("fill-in.js", Map.of("frame-rivets", Map.of("count", "7")));
    assertThat(browser.result("return document.getElementById('use').disabled;")).isEqualTo(true);
    browser.choose("#picker", opened);
    browser.click("#desk .sure:not(#waiting) button:nth-of-type(2)");
    awaitTold("l45-4388.yaml is open. Your answers to it from before are here again.");
    assertThat(value("spring-date", "date_code")).isEqualTo("D4");
    assertThat(value("frame-rivets", "count")).isEqualTo("32");
    assertThat(isShown("#waiting")).isFalse();
    assertThat(browser.result(WARNS)).isEqualTo(true);
    browser.reload();
    browser.click("#use");
    assertThat(value("spring-date", "date_code")).isEqualTo("D4");
    assertThat(isShown("#waiting")).isFalse();
    browser.reload();
    assertThat(value("spring-date", "date_code")).isEqualTo("D4");
    assertThat(readByAnotherPage()).hasSize(1);
  }

  private boolean isShown(String selector) {
    return Boolean.TRUE.equals(
        browser.result("return !document.querySelector(arguments[0]).hidden;", selector));
  }

  /** What 0.1.0 kept before: answers under a key, the whole record under another. */
  @Test
  void recordsThatAnEarlierVersionKeptGoAndNoAnswerWithThem() throws IOException {
    Path page = sheets.fresh();
    browser.open(page);
    String other = "assize-sheet:" + "0".repeat(64) + ":";
    browser.result(
        """
        const answers = {sheet: {}, items: {'spring-date': {date_code: 'E5'}}};
        const keep = (key, text, saved) => {
          localStorage.setItem(key, JSON.stringify({answers, saved: JSON.stringify(saved)}));
          localStorage.setItem(key + ':record', JSON.stringify({text, marked: false, file: 'a.yaml'}));
        };
        const page = JSON.parse(document.getElementById('data').textContent);
        keep(page.key, page.text, {sheet: {}, items: {}});
        keep(arguments[0] + 'saved', 'a private note', answers);
        keep(arguments[0] + 'due', 'answers that are in no file', {sheet: {}, items: {}});
        return 0;
        """,
        other);
    browser.reload();
    awaitTold("here again");
    assertThat(value("spring-date", "date_code")).isEqualTo("E5");
    assertThat(browser.result(WARNS)).isEqualTo(true);
    assertThat(readByAnotherPage().keySet())
        .hasSize(3)
        .contains(other + "due", other + "due:record")
        .anyMatch(it -> it.contains(":answers-to:"));
  }

  @Test
  void answersToAnotherTextThatAnEarlierVersionKeptWait() {
    browser.open(sheets.fresh());
    browser.result(
        """
        const answers = {sheet: {}, items: {'spring-date': {date_code: 'E5'}}};
        const {key} = JSON.parse(document.getElementById('data').textContent);
        localStorage.setItem(key, JSON.stringify({answers, saved: '{}'}));
        localStorage.setItem(key + ':record', JSON.stringify({text: 'record: a', file: 'a.yaml'}));
        return 0;
        """);
    browser.reload();
    assertThat(isShown("#waiting")).isTrue();
    assertThat(value("spring-date", "date_code")).isEmpty();
    browser.click("#use");
    assertThat(value("spring-date", "date_code")).isEqualTo("E5");
  }

  /** Any page from a file can write there too. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "{sheet: {}, items: {'a: b\\nprivate': {note: 'x'}}}",
        "{sheet: {}, items: {'spring-date': {date_code: {asIs: '}\\nprivate: []'}}}}",
        "{sheet: {}, items: {'spring-date': {'a: b\\nprivate': 'x'}}}",
        "{sheet: {by: {inBraces: 1}}, items: {}}",
        "{sheet: {}, items: {'frame-paint': {color: {chip: 'x'}}}}",
        "{sheet: {}, items: {'frame-paint': null}}",
        "{}",
        "7"
      })
  void whatIsKeptAndIsNoAnswerIsNotTaken(String kept) throws IOException, InterruptedException {
    Path record = sheets.truck();
    browser.open(sheets.of(record));
    browser.faults("fill-in.js", Map.of("spring-date", code("C3")));
    assertThat(
            browser.result(
                "const [key] = Object.keys(localStorage); localStorage.setItem(key, JSON.stringify("
                    + "{answers: "
                    + kept
                    + ", saved: ''})); return Object.keys(localStorage).length;"))
        .isEqualTo(1L);
    browser.result("window.dispatchEvent(new StorageEvent('storage', {key: null})); return 0;");
    browser.reload();
    assertThat(browser.result(WARNS)).isEqualTo(false);
    assertThat(sheets.save(browser)).hasSameBinaryContentAs(sheets.original(record));
  }

  @Test
  void whatTheProgramWouldRefuseIsSaidAtTheFieldAndNotSaved()
      throws IOException, InterruptedException {
    browser.open(sheets.fresh());
    browser.faults("fill-in.js", Map.of("frame-rivets", Map.of("note", "n")));
    // As pasting does, which a browser cuts where a field has a greatest length.
    String paste =
        "const note = document.querySelector('[data-item=frame-rivets] details.fill textarea');"
            + "note.focus(); note.select();"
            + "document.execCommand('insertText', false, 'x'.repeat(arguments[0]));"
            + "return note.value.length;";
    assertThat(browser.result(paste, 65_537)).isEqualTo(65_537L);
    assertThat(doubts("frame-rivets"))
        .containsExactly(
            "A text may have at most 65536 characters; this one has 65537. Shorten it.");
    browser.click(".bar .main");
    assertThat(told()).startsWith("Nothing was saved").contains("item ", "note", "65537");
    assertThat(browser.result(WARNS)).isEqualTo(true);
    assertThat(focused()).contains("rivets");
    assertThat(browser.result(paste, 65_536)).isEqualTo(65_536L);
    assertThat(doubts("frame-rivets")).isEmpty();
    Path saved = sheets.save(browser);
    assertThat(sheets.judge(saved)).isEmpty();
    browser.faults("fill-in.js", Map.of("frame-rivets", Map.of("count", "1000001")));
    assertThat(doubts("frame-rivets")).containsExactly("Write a whole number, at most 1000000.");
    browser.faults(
        "fill-in.js",
        Map.of("spring-date", Map.of("photo", Map.of("file", "", "caption", "The left one"))));
    assertThat(doubts("spring-date")).containsExactly("Write the name of the photo’s file.");
  }

  private List<String> doubts(String item) {
    return browser.texts(
        "return [...document.querySelectorAll('[data-item=\"' + arguments[0] + '\"] .doubt')]"
            + ".map(it => it.textContent).filter(it => it !== '');",
        item);
  }

  @Test
  void aRecordThatWouldBeTooLargeToReadIsNeitherSavedNorOpened() throws IOException {
    browser.open(sheets.fresh());
    Path large = folder.resolve("large.yaml");
    String head = "record: t\nrules: tarrowby-type-l\nvehicle: {name: T, model: L45}\n";
    String text = head + "#".repeat(4 * 1024 * 1024 - head.length() - 1) + "\n";
    Files.writeString(large, text);
    browser.choose("#picker", large);
    awaitTold("large.yaml is open.");
    browser.faults("fill-in.js", Map.of("spring-date", code("C3")));
    browser.click(".bar .main");
    assertThat(told()).startsWith("Nothing was saved").contains("more than 4 MiB");
    Files.writeString(large, text + "\n");
    browser.choose("#picker", large);
    browser.click("#desk .sure:not(#waiting) button:nth-of-type(2)");
    awaitTold("large.yaml was not opened: it has more than 4 MiB");
    assertThat(value("spring-date", "date_code")).isEqualTo("C3");
  }

  @Test
  void whereNothingMayBeKeptThePageSaysSoAndSavesAllTheSame(@TempDir Path profile)
      throws IOException, InterruptedException {
    Map<String, Object> strict = Map.of("profile.default_content_setting_values.cookies", 2);
    try (Browser closed = Browser.start(profile, strict)) {
      closed.saveInto(folder.resolve("demo"));
      closed.open(sheets.fresh());
      assertThat(closed.texts("return [document.querySelector('.kept').textContent];").get(0))
          .startsWith("This browser does not let a page from a file keep anything.");
      closed.faults("fill-in.js", Map.of("spring-date", code("C3")));
      assertThat(closed.result(WARNS)).isEqualTo(true);
      Path saved = sheets.save(closed);
      assertThat(Files.readString(saved)).contains("  spring-date:\n    date_code: C3\n");
      assertThat(sheets.judge(saved)).isEmpty();
    }
  }

  @Test
  void withoutAScriptTheSheetIsWhatPaperIs() {
    browser.scripts(false);
    try {
      browser.open(sheets.ofTruck());
      browser.show(390, "screen", "light");
      assertThat(
              browser.result(
                  "return [...document.querySelectorAll('.paper, .still')].every(it =>"
                      + " it.checkVisibility()) && document.querySelectorAll('.paper').length > 200"
                      + " && document.querySelector('.bar') === null;"))
          .isEqualTo(true);
    } finally {
      browser.scripts(true);
    }
  }

  @Test
  void aPhotoIsNotedByItsFileAndADepartureByItsReason() throws IOException, InterruptedException {
    browser.open(sheets.fresh());
    Map<String, Object> told =
        Map.of(
            "photo", Map.of("file", "photos/horn-button.png", "caption", "Left: \"C3\""),
            "departure", Map.of("reason", "safety", "explanation", "So it is safe."));
    assertThat(browser.faults("fill-in.js", Map.of("spring-date", told))).isEmpty();
    Path saved = sheets.save(browser);
    assertThat(Files.readString(saved))
        .contains(
            "evidence:\n  photo-1:\n    photo: photos/horn-button.png\n"
                + "    caption: \"Left: \\\"C3\\\"\"\n")
        .contains(
            "  spring-date:\n    evidence: [photo-1]\n    departure:\n      reason: safety\n"
                + "      explanation: So it is safe.\n");
    assertThat(sheets.judge(saved)).isEmpty();
  }

  @Test
  void noControlCouldSendAnything() throws IOException {
    Path page = sheets.ofTruck();
    assertThat(Files.readString(page))
        .doesNotContain("innerHTML", "outerHTML", "insertAdjacentHTML", "document.write")
        .doesNotContain("eval(", "Function(", "fetch(", "XMLHttpRequest", "sendBeacon");
    browser.open(page);
    assertThat(
            browser.texts(
                "document.querySelectorAll('details').forEach(it => it.open = true);"
                    + "return [...new Set([...document.querySelectorAll("
                    + "'form, input, button, textarea, select')].map(it => it.localName + ' ' +"
                    + " it.type + (it.name && it.type !== 'radio' ? ' named' : '') +"
                    + " (it.form ? ' in a form' : '')))].sort();"))
        .containsExactly(
            "button button", "input file", "input radio", "input text", "textarea textarea");
  }

  @Test
  void theNextItemAndAnyNumberAreAJumpAway() throws IOException {
    browser.open(sheets.fresh());
    browser.show(390, "screen", "light");
    int all =
        ((Number) browser.result("return document.querySelectorAll('.item').length;")).intValue();
    assertThat(left()).isEqualTo(all + " of " + all + " left");
    browser.faults("fill-in.js", Map.of("frame-paint", Map.of("finish", "stove-enamel")));
    assertThat(left()).isEqualTo(all - 1 + " of " + all + " left, 1 in part");
    assertThat(browser.texts("return [document.querySelector('[data-area=chassis]').textContent];"))
        .allMatch(it -> it.matches("15 of 16 left"));
    browser.click(".keys button");
    assertThat(focused()).startsWith("2 ");
    browser.click("#where");
    browser.type("12");
    browser.press(Keys.ENTER, 1);
    assertThat(focused()).startsWith("12 ");
    assertThat(
            browser.result(
                "const box = document.activeElement.getBoundingClientRect();"
                    + "return box.top >= 0 && box.bottom < innerHeight;"))
        .isEqualTo(true);
    browser.click("#where");
    browser.type("999");
    browser.press(Keys.ENTER, 1);
    awaitTold("no item 999");
  }

  private String focused() {
    return String.valueOf(browser.result("return document.activeElement.textContent;"));
  }

  @Test
  void onPaperEachItemHasItsNumberAndItsHazardsOnOnePage() throws Exception {
    browser.open(sheets.fresh());
    browser.show(1280, "", "light");
    Paper paper = new Paper(folder, browser.print(210 / 25.4, 297 / 25.4));
    List<String> pages = paper.pages();
    List<String> items =
        browser.texts(
            "return [...document.querySelectorAll('.item')].map(item => [item.querySelector('h3'),"
                + " ...item.querySelectorAll('.look, .hazard, .aspect > legend')].map(it => it.textContent)"
                + ".join('\\n--\\n'));");
    assertThat(items).hasSizeGreaterThan(150);
    assertThat(
            items.stream()
                .filter(item -> pages.stream().noneMatch(page -> holds(page, item)))
                .map(item -> item.lines().findFirst().orElse("")))
        .as("items that a page's end cuts in two")
        .isEmpty();
    for (int i = 0; i < pages.size(); i++) {
      String page = Paper.letters(pages.get(i));
      assertThat(page)
          .contains(Paper.letters("Test truck"))
          .contains(Paper.letters("Tarrowby Type L light truck"))
          .contains(Paper.letters((i + 1) + " / " + pages.size()));
    }
    assertThat(String.join("", pages)).doesNotContain("Forget", "Next", "Clear");
  }

  /** Says whether a page has all parts of an item, in whatever order it is drawn. */
  private static boolean holds(String page, String item) {
    String letters = Paper.letters(page);
    return item.lines()
        .filter(part -> !part.equals("--"))
        .allMatch(part -> letters.contains(Paper.letters(part)));
  }
}
