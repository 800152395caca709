package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

class ResultsCommandTest {
  private static final Pattern ROW =
      Pattern.compile("<tr><th scope=\"row\">(?:<a href=\"(.*?)\">)?(.*?)(?:</a>)? <small>(.*?)<");
  private static final Pattern LIKELY =
      Pattern.compile("<td class=\"number\" data-by=\"(\\d+)\"><");

  @TempDir private Path base = Path.of("");
  private Path folder = Path.of("");
  private Path out = Path.of("");

  @BeforeEach
  void lay() throws IOException {
    folder = base.resolve("vehicles");
    out = base.resolve("out");
    CommandBench.copy(Path.of("src/test/resources/assize/cli/small"), folder);
    Files.delete(folder.resolve("wrong.yaml"));
  }

  private CommandResult results(Object... more) {
    List<Object> words = new ArrayList<>(List.of("results", folder, "--out", out));
    words.addAll(List.of(more));
    return CommandResult.of(words.toArray());
  }

  private String index() throws IOException {
    return Files.readString(out.resolve("results.html"));
  }

  /** Returns what the rows say of one thing, in the order of the page. */
  private List<String> rows(int group) throws IOException {
    List<String> found = new ArrayList<>();
    Matcher rows = ROW.matcher(index());
    while (rows.find()) {
      found.add(rows.group(group));
    }
    return found;
  }

  private void put(String path, String text) throws IOException {
    Path file = folder.resolve(path);
    Files.createDirectories(AtomicFileWriter.folderOf(file));
    Files.writeString(file, text);
  }

  private String record(String id) throws IOException {
    return Files.readString(folder.resolve("one.yaml")).replace("record: one", "record: " + id);
  }

  @Test
  void writesAReportEachAndAPageThatLeadsToThem() throws IOException {
    CommandResult ran = results();
    assertThat(ran.exit()).as(ran.err()).isZero();
    assertThat(ran.out())
        .isEqualTo(
            out.resolve("results.html") + ": 2 vehicles, judged by A small standard, edition 1.\n");
    assertThat(ran.err()).isEmpty();
    assertThat(CommandBench.content(out))
        .containsOnlyKeys("", "one.html", "two.html", "results.html");
    assertThat(rows(1)).containsExactlyInAnyOrder("one.html", "two.html");
    // by hand: the key is 6 points, on which drawing and guide disagree; the button is right
    assertThat(index()).contains("4 to 10</small>").contains(">1 <small>6 points</small>");
    Path judged = base.resolve("judged");
    assertThat(CommandResult.of("judge", folder.resolve("one.yaml"), "--out", judged).exit())
        .isZero();
    assertThat(out.resolve("one.html")).hasSameBinaryContentAs(judged.resolve("one.html"));
  }

  @Test
  void looksBelowButNotIntoHiddenFoldersNorThroughLinks() throws IOException {
    Path elsewhere = Files.createDirectories(base.resolve("elsewhere"));
    Files.writeString(elsewhere.resolve("outside.yaml"), record("outside"));
    Files.copy(folder.resolve("rules.yaml"), elsewhere.resolve("rules.yaml"));
    put("deep/er/three.yml", record("three"));
    Files.copy(folder.resolve("rules.yaml"), folder.resolve("deep/er/rules.yaml"));
    put(".hidden/four.yaml", record("four"));
    put(".five.yaml", record("five"));
    put("six.yaml.txt", record("six"));
    Files.createSymbolicLink(folder.resolve("linked"), elsewhere);
    Files.createSymbolicLink(folder.resolve("linked.yaml"), elsewhere.resolve("outside.yaml"));
    Files.createSymbolicLink(folder.resolve("circle"), folder);
    assertThat(results().exit()).isZero();
    assertThat(rows(3)).containsExactlyInAnyOrder("one", "three", "two");
    Path link = Files.createSymbolicLink(base.resolve("link"), folder);
    assertThat(CommandResult.of("results", link, "--out", base.resolve("again")).exit()).isZero();
    assertThat(base.resolve("again/results.html"))
        .hasSameBinaryContentAs(out.resolve("results.html"));
  }

  @Test
  void keepsEditionsApart() throws IOException {
    ResultsFixture.write(folder.resolve("second"), "2", 0, 3);
    ResultsFixture.write(folder.resolve("third"), "2", 3, 5);
    Files.writeString(
        folder.resolve("third/rules.yaml"),
        "# differs\n" + Files.readString(folder.resolve("third/rules.yaml")));
    assertThat(results().exit()).isZero();
    assertThat(index())
        .contains("7 vehicles, judged by 3 standards or editions.")
        .contains("A score by one of them says nothing of a score by another")
        .contains("Another text of this edition was used for other vehicles")
        .contains("<small>edition 1</small></h2>", "<small>edition 2</small></h2>");
    assertThat(index().split("<table class=\"vehicles\">")).hasSize(4);
    assertThat(rows(3).subList(0, 2)).containsExactlyInAnyOrder("one", "two");
    assertThat(rows(3).subList(5, 7)).containsExactlyInAnyOrder("v00003", "v00004");
  }

  @Test
  void saysAllThatIsWrongAndWritesNothing() throws IOException {
    put("a/wrong.yaml", record("wrong").replace("nickel", "nickle"));
    Files.copy(folder.resolve("rules.yaml"), folder.resolve("a/rules.yaml"));
    put("z-wrong.yaml", record("worse").replace("nickel", "gold").replace("X1}", "X9}"));
    put("empty-file.yaml", "");
    Files.write(folder.resolve("binary.yaml"), new byte[] {(byte) 0xff, (byte) 0xfe, 0});
    Map<String, String> before = CommandBench.content(base);
    CommandResult ran = results("--json", base.resolve("lines.json"));
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err())
        .containsSubsequence(
            "error[unknown-finish]",
            "nickle",
            "a/wrong.yaml:",
            "error[not-utf8]",
            "binary.yaml",
            "z-wrong.yaml",
            "4 errors in 3 files",
            "--skip-invalid");
    assertThat(CommandBench.content(base)).isEqualTo(before);
  }

  @Test
  void leavesOutWhatIsFaultyAndSaysSo() throws IOException {
    put("wrong.yaml", record("wrong").replace("nickel", "nickle").replace("chrome", "crome"));
    CommandResult ran = results("--skip-invalid");
    assertThat(ran.exit()).isZero();
    assertThat(ran.err()).contains("error[unknown-finish]").contains("2 errors in 1 file");
    assertThat(ran.out()).contains("2 vehicles").contains("1 record has errors and is left out");
    assertThat(index())
        .contains("<li><span>wrong.yaml</span><span class=\"points\">2 problems</span>");
    assertThat(CommandBench.content(out))
        .containsOnlyKeys("", "one.html", "two.html", "results.html");
  }

  @Test
  void saysAFaultOfARuleSetOnceAndLeavesOutAllWhoNeedIt() throws IOException {
    ResultsFixture.write(folder.resolve("sub"), "2", 0, 40);
    Path rules = folder.resolve("sub/rules.yaml");
    Files.writeString(rules, Files.readString(rules).replace("finish: nickel", "finish: nickle"));
    CommandResult ran = results("--skip-invalid");
    assertThat(ran.exit()).isZero();
    assertThat(ran.err().split("unknown-finish", -1)).hasSize(1 + 2);
    assertThat(rows(3)).containsExactlyInAnyOrder("one", "two");
    assertThat(index()).contains("40 records have errors and are left out");
  }

  @Test
  void doesNotGuessWhichOfTwoOfOneNameIsRight() throws IOException {
    put("x/again.yaml", record("One"));
    Files.copy(folder.resolve("rules.yaml"), folder.resolve("x/rules.yaml"));
    for (Object[] more : new Object[][] {{}, {"--skip-invalid"}, {"--no-reports"}, {"--json"}}) {
      CommandResult ran = results(more);
      assertThat(ran.exit()).isEqualTo(1);
      assertThat(ran.out()).isEmpty();
      assertThat(ran.err())
          .contains("error[duplicate-name]", "x/again.yaml", folder.resolve("one.yaml") + "\n");
      assertThat(out).doesNotExist();
    }
  }

  @Test
  void keepsTheNameOfTheResultsPage() throws IOException {
    put("index.yaml", record("results"));
    assertThat(results().exit()).isEqualTo(1);
    Files.delete(folder.resolve("index.yaml"));
    for (String name : List.of("results.html", "one.html")) {
      CommandResult ran = results("--json", out.resolve(name));
      assertThat(ran.exit()).isEqualTo(1);
      assertThat(ran.err()).contains("name another").contains("--json");
      assertThat(out).doesNotExist();
    }
  }

  @Test
  void saysWhereThereIsNothing() throws IOException {
    Path empty = Files.createDirectory(base.resolve("empty"));
    assertThat(CommandResult.of("results", empty, "--out", out).err())
        .contains("there is no record in it");
    assertThat(CommandResult.of("results", base.resolve("none"), "--out", out).err())
        .contains("there is no such folder");
    assertThat(CommandResult.of("results", empty, "--out", out).exit()).isEqualTo(1);
    assertThat(CommandResult.of("results").exit()).isEqualTo(2);
    assertThat(results("--json=x.yaml").exit()).isEqualTo(2);
    assertThat(out).doesNotExist();
    Files.writeString(out, "in the way");
    assertThat(results().exit()).isEqualTo(3);
  }

  @Test
  void writesTheResultsPageAlone() throws IOException {
    assertThat(results("--no-reports").exit()).isZero();
    assertThat(CommandBench.content(out)).containsOnlyKeys("", "results.html");
    assertThat(index()).doesNotContain(".html\"").contains("The first");
  }

  @Test
  void givesTheSameLinesAsJudge() throws IOException {
    String wanted =
        CommandResult.of(
                "judge", folder.resolve("one.yaml"), folder.resolve("two.yaml"), "--json", "-")
            .out();
    CommandResult ran = results("--json");
    assertThat(ran.exit()).isZero();
    assertThat(ran.out()).isEqualTo(wanted);
    assertThat(out).doesNotExist();
    Path lines = base.resolve("lines.json");
    assertThat(results("--json", lines).exit()).isZero();
    assertThat(lines).hasContent(wanted);
    assertThat(out.resolve("results.html")).exists();
  }

  @Test
  void judgesByAnotherRuleSetAndAsOfADay() throws IOException {
    Path other = base.resolve("other.yaml");
    Files.writeString(
        other, Files.readString(folder.resolve("rules.yaml")).replace("name: A small", "name: B"));
    assertThat(results("--rules", other, "--as-of", "2026-01-01").exit()).isZero();
    assertThat(index()).contains("judged by B standard");
  }

  @Tag("slow")
  @Test
  void listsThousandsInOrder() throws IOException {
    folder = base.resolve("many");
    int many = 2000;
    ResultsFixture.write(folder, "1", 0, many);
    CommandResult ran = results("--no-reports", "--json", base.resolve("lines.json"));
    assertThat(ran.exit()).as(ran.err()).isZero();
    List<String> ids = rows(3);
    List<Long> likely = new ArrayList<>();
    Matcher matcher = LIKELY.matcher(index());
    while (matcher.find()) {
      likely.add(Long.parseLong(matcher.group(1)));
    }
    assertThat(ids).hasSize(many);
    assertThat(likely).hasSize(many).isSortedAccordingTo(Comparator.reverseOrder());
    assertThat(likely.stream().distinct().count()).isGreaterThan(3);
    for (int i = 1; i < many; i++) {
      if (likely.get(i).equals(likely.get(i - 1))) {
        assertThat(ids.get(i)).isGreaterThan(ids.get(i - 1));
      }
    }
    try (var lines = Files.lines(base.resolve("lines.json"))) {
      assertThat(lines.map(CommandResult::json).map(it -> it.get("record").stringValue()))
          .containsExactlyElementsOf(
              IntStream.range(0, many).mapToObj(ResultsFixture::id).toList());
    }
    Map<String, String> before = CommandBench.content(out);
    assertThat(results("--no-reports").exit()).isZero();
    assertThat(CommandBench.content(out)).isEqualTo(before);
  }

  @Tag("slow")
  @Test
  void clearsWhatAKilledRunLeft() throws Exception {
    Process gone =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-version")
            .start();
    long started = gone.info().startInstant().map(java.time.Instant::toEpochMilli).orElse(0L);
    gone.waitFor();
    Files.createDirectories(out);
    Files.writeString(out.resolve(".assize-" + gone.pid() + "-" + started + "-3.part"), "half a");
    assertThat(results().exit()).isZero();
    assertThat(CommandBench.content(out))
        .containsOnlyKeys("", "one.html", "two.html", "results.html");
  }

  @Test
  void showsNoTextAsMarkup() throws IOException {
    String evil = "<script>alert(1)</script><!--rows 0-->\" onclick=x";
    put("evil.yaml", record("evil").replace("The first", "'" + evil.replace("'", "''") + "'"));
    put("<b>.yaml", record("bad").replace("nickel", "nickle"));
    assertThat(results("--skip-invalid").exit()).isZero();
    assertThat(index())
        .contains("&lt;script&gt;alert(1)&lt;/script&gt;&lt;!--rows 0--&gt;&quot; onclick=x")
        .contains("&lt;b&gt;.yaml")
        .doesNotContain("<!--rows");
  }

  @Test
  void takesTheDemonstration() throws IOException {
    CommandResult ran = CommandResult.of("results", "rules", "--out", out);
    assertThat(ran.exit()).as(ran.err()).isZero();
    assertThat(rows(3)).containsExactly("q-1187", "l45-4388", "l41-half-recorded");
    List<JsonNode> lines = CommandResult.of("results", "rules", "--json").jsonLines();
    assertThat(lines.stream().map(it -> it.get("record").stringValue()))
        .containsExactly("l41-half-recorded", "l45-4388", "q-1187");
  }

  /** Puts two photos into the folder, a good one and one that is cut off. */
  private void photos() throws IOException {
    Files.createDirectories(folder.resolve("photos"));
    byte[] good = Files.readAllBytes(Path.of("rules/photos/horn-button.png"));
    Files.write(folder.resolve("photos/good.png"), good);
    Files.write(folder.resolve("photos/cut.png"), Arrays.copyOf(good, good.length / 2));
  }

  private static String showing(String record, String photo) {
    return record.replace("{finish: nickel}", "{finish: nickel, evidence: [shown]}")
        + "evidence:\n  shown: {photo: photos/"
        + photo
        + ", caption: The button}\n";
  }

  @Test
  void leavesOutARecordWhosePhotoCanNotBeShownAndWritesNothingOfIt() throws IOException {
    photos();
    put("three.yaml", showing(record("three"), "good.png"));
    put("four.yaml", showing(record("four"), "cut.png"));
    assertThat(results().exit()).isEqualTo(1);
    assertThat(out).doesNotExist();
    CommandResult ran = results("--skip-invalid");
    assertThat(ran.exit()).isZero();
    assertThat(ran.err()).contains("error[photo-cannot-be-shown]").contains("four.yaml");
    assertThat(CommandBench.content(out))
        .containsOnlyKeys("", "one.html", "two.html", "three.html", "results.html");
    assertThat(rows(3)).doesNotContain("four").contains("three");
    assertThat(index()).contains("<li><span>four.yaml</span>");
    Path whole = base.resolve("whole");
    ran = CommandResult.of("results", folder, "--out", whole, "--skip-bad-photos");
    assertThat(ran.exit()).isZero();
    assertThat(ran.err()).contains("warning[photo-left-out]");
    assertThat(whole.resolve("four.html")).content().contains("It can’t be shown");
  }

  @Test
  void putsPhotosBesideThePagesAndTakesOldOnesAway() throws IOException {
    photos();
    put("three.yaml", showing(record("three"), "good.png"));
    assertThat(results("--photos", "folder").exit()).isZero();
    Path beside = out.resolve("three-photos");
    assertThat(beside).isDirectoryContaining("glob:**.png");
    assertThat(out.resolve("one-photos")).doesNotExist();
    String page = Files.readString(out.resolve("three.html"));
    assertThat(page).contains("src=\"three-photos/").doesNotContain("base64,iVBOR");
    Path judged = base.resolve("judged");
    CommandResult.of("judge", folder.resolve("three.yaml"), "--photos", "folder", "--out", judged);
    assertThat(out.resolve("three.html")).hasSameBinaryContentAs(judged.resolve("three.html"));
    Files.writeString(beside.resolve("mine.txt"), "stays");
    assertThat(results("--photos", "embed").exit()).isZero();
    assertThat(CommandBench.content(beside)).containsOnlyKeys("", "mine.txt");
  }

  @Test
  void writesCopiesForOthersAndAResultsPage() throws IOException {
    put(
        "x1-160.yaml",
        record("x1-160").replace("The first", "Number X1-160").replace("X1-150", "X1-160"));
    Files.writeString(
        folder.resolve("x1-160.yaml"),
        Files.readString(folder.resolve("x1-160.yaml")) + "private_words: [Mill Lane]\n");
    put("mill-lane.yaml", record("wrong").replace("nickel", "nickle"));
    CommandResult ran = results("--redact", "--skip-invalid");
    assertThat(ran.exit()).as(ran.err()).isZero();
    assertThat(ran.err()).contains("one.secret is new").contains("x1-160.secret is new");
    assertThat(CommandBench.content(out))
        .containsOnlyKeys(
            "",
            "one-redacted.html",
            "two-redacted.html",
            "x1-xxx-redacted.html",
            "results-redacted.html");
    String index = Files.readString(out.resolve("results-redacted.html"));
    assertThat(index)
        .contains("A copy for others", "href=\"x1-xxx-redacted.html\"", "Number X1-xxx")
        .contains("1 record has errors and is left out.")
        .doesNotContain("x1-160", "X1-160", "mill-lane");
    Path judged = base.resolve("judged");
    CommandResult.of("judge", folder.resolve("one.yaml"), "--redact", "--out", judged);
    assertThat(out.resolve("one-redacted.html"))
        .hasSameBinaryContentAs(judged.resolve("one-redacted.html"));
    assertThat(results("--redact", "--photos", "folder").exit()).isEqualTo(2);
  }

  @Test
  void doesNotLetTwoCopiesHaveOneName() throws IOException {
    put("a.yaml", record("x1-151").replace("X1-150", "X1-151"));
    put("b.yaml", record("x1-152").replace("X1-150", "X1-152"));
    CommandResult ran = results("--redact", "--skip-invalid");
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.err()).contains("another record's copy is named", "b.yaml", "a.yaml");
    assertThat(out).doesNotExist();
    assertThat(folder.resolve("a.secret")).doesNotExist();
  }

  @Test
  void leavesOutACopyThatWouldShowWhatItShouldNot() throws IOException {
    put(
        "three.yaml",
        record("three")
            .replace("X1-150", "X1-160")
            .replace("{finish: nickel}", "{finish: nickel, note: 'X1-[1](http://a.example)60'}"));
    CommandResult ran = results("--redact", "--skip-invalid");
    assertThat(ran.exit()).as(ran.err()).isZero();
    assertThat(ran.err()).contains("error: ", "still shows what it should not", "three.yaml");
    assertThat(CommandBench.content(out))
        .containsOnlyKeys("", "one-redacted.html", "two-redacted.html", "results-redacted.html");
    assertThat(folder.resolve("three.secret")).doesNotExist();
  }
}
