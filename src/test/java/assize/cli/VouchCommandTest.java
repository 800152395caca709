package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import assize.share.Secret;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a masked number's fingerprint proves, and by which secret. */
class VouchCommandTest {
  private static final Pattern WORDS = Pattern.compile("opening words  (\\S+)");

  private static final String RULES =
      """
      rule_set: small
      name: A small standard
      edition: "1"
      models: {X1: {name: Dropside, built: 1932-03/1936-08}}
      sources: {guide: {kind: club guide, grade: C, title: Guide}}
      numbers:
        chassis: {name: Chassis number, series: [{prefix: L45-, models: [X1], from: {4000: 1934-01-01, 5000: 1935-01-01}}]}
        engine: {name: Engine number, series: [{prefix: E, models: [X1], from: {1: 1934-01-01, 9000: 1935-01-01}}]}
      colors: {black: {name: Black}}
      areas: {cab: {name: Cab, items: {lamp: {title: Lamp, points: 4, expect: {color: black}, source: guide}}}}
      """;

  private static final String RECORD =
      """
      record: truck
      rules: rules.yaml
      vehicle: {name: The truck, model: X1}
      numbers: {chassis: L45-4388, engine: E4711}
      built: {date: 1934-05, basis: plate}
      """;

  private Path folder = Path.of("");
  private Path record = Path.of("");
  private Path secret = Path.of("");

  @BeforeEach
  void lay(@TempDir Path folder) throws IOException {
    this.folder = folder;
    this.record = Files.writeString(folder.resolve("truck.yaml"), RECORD);
    this.secret = folder.resolve("truck.secret");
    Files.writeString(folder.resolve("rules.yaml"), RULES);
  }

  private Ran share() {
    return Ran.of("judge", record, "--redact", "--out", folder.resolve("out"));
  }

  private Path page() {
    return folder.resolve("out/truck-redacted.html");
  }

  private List<String> keys() {
    Ran ran = Ran.of("vouch", record);
    assertThat(ran.exit()).as(ran.err()).isZero();
    return WORDS.matcher(ran.out()).results().map(one -> one.group(1)).toList();
  }

  private void change(String was, String is) throws IOException {
    String page = Files.readString(page());
    assertThat(page).contains(was);
    Files.writeString(page(), page.replace(was, is));
  }

  @Test
  void saysWhatIsProvedAndUnderWhichCondition() {
    share();
    Ran yes = Ran.of("vouch", page(), "l45-4388", keys().get(0));
    assertThat(yes.exit()).as(yes.err()).isZero();
    assertThat(yes.out())
        .startsWith("yes: the letters and digits L454388 are ")
        .contains("masks as Chassis number L45-4xxx\n")
        .contains("only if you had this page before you asked")
        .contains("whoever has the secret can make such a page today")
        .contains("Nothing else in the page is proved");
    Ran json = Ran.of("vouch", page(), "--json", "L45-4388", keys().get(0));
    assertThat(json.json().get("letters").stringValue()).isEqualTo("L454388");
    assertThat(json.json().get("as").stringValue()).isEqualTo("Chassis number L45-4xxx");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"L4-54-388", "L45-4-388", "L45 4388", "L454388", "L45-4388.", "L45-43★88"})
  void saysNoToANumberThatIsWrittenOtherwiseThanThePageShows(String number) {
    share();
    Ran no = Ran.of("vouch", page(), number, keys().get(0));
    assertThat(no.exit()).isEqualTo(1);
    assertThat(no.out()).isEmpty();
    assertThat(no.err())
        .startsWith("no: the letters and digits L454388 give a fingerprint of this page")
        .contains("the page shows Chassis number L45-4xxx beside it");
  }

  @ParameterizedTest
  @CsvSource({
    "L45-4\ud83d\ude42388, \ud83d\ude42",
    "L45-4\u200b388, <U+200B>",
    "L45-4\u001b[1m388, <U+001B>"
  })
  void refusesANumberWithWhatNoNumberHas(String number, String shown) {
    share();
    Ran refused = Ran.of("vouch", page(), number, keys().get(0));
    assertThat(refused.exit()).isEqualTo(1);
    assertThat(refused.out()).isEmpty();
    assertThat(refused.err()).contains("the number has " + shown + " in it, which no number has");
    assertThat(Ran.of("vouch", page(), "-", keys().get(0)).err())
        .contains("neither letters nor digits");
  }

  @Test
  void saysNoWhereThePageShowsAnotherNumberBesideTheFingerprint() throws IOException {
    share();
    change("L45-4xxx", "K12-9xxx");
    Ran no = Ran.of("vouch", page(), "L45-4388", keys().get(0));
    assertThat(no.exit()).isEqualTo(1);
    assertThat(no.err())
        .startsWith("no: ")
        .contains("the page shows Chassis number K12-9xxx beside it")
        .contains("somebody changed the page");
    assertThat(Ran.of("vouch", page(), "K12-9388", keys().get(0)).err()).startsWith("no: ");
  }

  @Test
  void saysNoWhereOneFingerprintStandsBesideTwoNumbers() throws IOException {
    share();
    String page = Files.readString(page());
    Matcher seal = Pattern.compile("seal\"[^>]*>([0-9a-f]{64})<").matcher(page);
    List<String> both = seal.results().map(one -> one.group(1)).toList();
    assertThat(both).hasSize(2);
    Files.writeString(page(), page.replace(both.get(1), both.get(0)));
    Ran no = Ran.of("vouch", page(), "L45-4388", keys().get(0));
    assertThat(no.err()).startsWith("no: ").contains("one fingerprint for two numbers");
  }

  @Test
  void refusesAPageWhosePartOnNumbersCanBeHidden() throws IOException {
    share();
    change("<section id=\"left-out\"", "<section hidden id=\"left-out\"");
    Ran refused = Ran.of("vouch", page(), "L45-4388", keys().get(0));
    assertThat(refused.exit()).isEqualTo(1);
    assertThat(refused.err())
        .contains("truck-redacted.html: this is no copy for others as Assize writes it: line ")
        .contains("within something that can hide it");
  }

  /** A terminal is steered by none of these, and nothing is written backward. */
  @Test
  void showsWhatAPageSaysWithoutObeyingIt() throws IOException {
    share();
    String steering = "\u001b]0;a\u0007\u009b31m\u202e\u2066\u200f\r";
    change("Chassis number: <strong>", "A" + steering + ": <strong>");
    change("E4xxx", "E4" + steering);
    for (String number : List.of("L45-4388", "E4711")) {
      for (boolean json : List.of(false, true)) {
        List<Object> words = new ArrayList<>(List.of("vouch", page(), number));
        words.add(keys().get(number.startsWith("L") ? 0 : 1));
        words.addAll(json ? List.of("--json") : List.of());
        Ran ran = Ran.of(words.toArray());
        assertThat(ran.exit()).isEqualTo(number.startsWith("L") ? 0 : 1);
        assertThat((ran.out() + ran.err()).replace("\n", "").codePoints())
            .noneMatch(c -> Character.getType(c) == Character.CONTROL)
            .noneMatch(c -> Character.getType(c) == Character.FORMAT);
        assertThat(ran.out() + ran.err()).containsIgnoringCase(json ? "\\u202e" : "<U+202E>");
      }
    }
    Ran no = Ran.of("vouch", page(), "L45-4389", keys().get(0));
    assertThat(no.err()).startsWith("no: ").contains("<U+001B>").doesNotContain("\u001b");
  }

  /** It would fill this heap several times over if it were held. */
  @Tag("slow")
  @Test
  void readsAPageInLittleMemory() throws Exception {
    share();
    String page = Files.readString(page());
    int body = page.indexOf("<main>") + "<main>".length();
    Path large = folder.resolve("large.html");
    try (BufferedWriter out = Files.newBufferedWriter(large)) {
      out.write(page.substring(0, body));
      repeat(out, "<p>", "a", "</p>");
      repeat(out, "<img alt=\"a\" src=\"data:image/png;base64,", "A", "\">");
      repeat(out, "", "<br>", "");
      repeat(out, "<p ", "a=b c ", "></p>");
      repeat(out, "<script>", "a</", "</script>");
      out.write(page.substring(body));
    }
    List<String> line = new ArrayList<>();
    line.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    line.addAll(List.of("-XX:TieredStopAtLevel=1", "-Xmx24m"));
    line.addAll(List.of("-cp", System.getProperty("java.class.path", ""), "assize.cli.Main"));
    line.addAll(List.of("vouch", large.toString(), "L45-4388", keys().get(0)));
    Process process = new ProcessBuilder(line).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(said).isZero();
    assertThat(said).contains("yes: ");
  }

  private static void repeat(BufferedWriter out, String start, String piece, String end)
      throws IOException {
    out.write(start);
    String many = piece.repeat(100_000 / piece.length());
    for (int i = 0; i < 250; i++) {
      out.write(many);
    }
    out.write(end);
  }

  @Test
  void saysWhichSecretIsUsedAndSinceWhenForEachCopy() throws IOException {
    assertThat(share().err()).contains("truck.secret is new");
    Secret made = read(secret);
    Ran again = share();
    assertThat(again.err())
        .contains(
            "note: "
                + secret
                + " (made "
                + made.made().orElseThrow()
                + ", mark "
                + made.mark()
                + ") masks the numbers: whoever has had this file can find them out")
        .contains("assize vouch " + record + " --new-secret")
        .doesNotContain("was made for the record");
    assertThat(Ran.of("vouch", record).out()).contains(", mark " + made.mark() + ")");
  }

  private static Secret read(Path file) throws IOException {
    return Secret.read(Files.readString(file)).toOptional().orElseThrow();
  }

  /** A friend's folder, with the friend's secret, is used for copies of one's own. */
  @Test
  void makesANewSecretAndStillVouchesByTheOneBefore() throws IOException {
    share();
    String before = Files.readString(secret);
    List<String> keys = keys();
    Path old = folder.resolve("old.html");
    Files.copy(page(), old);

    Ran renewed = Ran.of("vouch", record, "--new-secret");
    assertThat(renewed.exit()).as(renewed.err()).isZero();
    Path kept = SecretFile.earlier(record, Secret.read(before).toOptional().orElseThrow());
    assertThat(Files.readString(kept)).isEqualTo(before);
    assertThat(read(secret)).isNotEqualTo(read(kept));
    assertThat(renewed.out())
        .contains("truck.secret (made ", "mark " + read(secret).mark(), "is new")
        .contains("Keep " + kept, "assize judge " + record + " --redact");

    share();
    List<String> both = keys();
    assertThat(both).hasSize(4).endsWith(keys.toArray(String[]::new));
    assertThat(Ran.of("vouch", old, "L45-4388", both.get(2)).out()).startsWith("yes: ");
    assertThat(Ran.of("vouch", page(), "L45-4388", both.get(0)).out()).startsWith("yes: ");
    assertThat(Ran.of("vouch", page(), "L45-4388", both.get(2)).err()).startsWith("no: ");
    assertThat(Ran.of("vouch", record).out()).contains("secret         " + kept);

    Files.delete(secret);
    assertThat(keys()).isEqualTo(keys);
    Files.writeString(kept, "secret:\n");
    Ran damaged = Ran.of("vouch", record);
    assertThat(damaged.exit()).isEqualTo(1);
    assertThat(damaged.err()).contains(kept + ": this secret is damaged");
  }

  @Test
  void losesNoSecretWhereANewOneCanNotBeMade() throws IOException {
    assertThat(renewed().out()).contains("is new: keep it").doesNotContain("Keep ");
    assertThat(share().err()).doesNotContain("is new");
    Files.writeString(SecretFile.earlier(record, read(secret)), "A person's own.\n");
    Map<String, String> before = Bench.content(folder);
    Ran taken = Ran.of("vouch", record, "--new-secret");
    assertThat(taken.exit()).isEqualTo(3);
    assertThat(taken.err()).contains("a file stands there already; move it away");
    assertThat(Ran.of("vouch", page(), "L45-4388", "AAAAA", "--new-secret").exit()).isEqualTo(2);
    assertThat(Bench.content(folder)).isEqualTo(before);
  }

  @Test
  void aLinkThatLeadsNowhereIsNamedAndKept() throws IOException {
    Path stick = folder.resolve("stick/truck.secret");
    Files.createSymbolicLink(secret, Path.of("stick/truck.secret"));
    for (Ran ran : List.of(share(), Ran.of("vouch", record), renewed())) {
      assertThat(ran.exit()).isEqualTo(1);
      assertThat(ran.err())
          .contains("truck.secret: this is a link to " + stick + ", and no file is there")
          .contains("put the secret back there, or delete the link to begin a new one");
    }
    assertThat(secret).isSymbolicLink();
    assertThat(folder.resolve("out")).doesNotExist();

    Files.createDirectory(folder.resolve("stick"));
    Files.writeString(stick, Secret.random("truck", LocalDate.EPOCH).file("truck.yaml"));
    assertThat(share().err()).contains("truck.secret (a link to " + stick + ", made 1970-01-01");
    String before = Files.readString(stick);
    assertThat(renewed().exit()).isZero();
    assertThat(secret).isRegularFile();
    assertThat(Files.readString(stick)).isEqualTo(before);
    assertThat(SecretFile.earlier(record, read(stick))).isSymbolicLink();
    Files.delete(secret);
    Files.createSymbolicLink(secret, secret);
    assertThat(share().err()).contains("this is a link to " + secret + ", and no file is there");
  }

  private Ran renewed() {
    return Ran.of("vouch", record, "--new-secret");
  }

  @Test
  void whatIsNoSecretIsNamedAndKept() throws IOException {
    Files.createDirectory(secret);
    for (Ran ran : List.of(share(), Ran.of("vouch", record), renewed())) {
      assertThat(ran.exit()).isEqualTo(1);
      assertThat(ran.err()).contains("truck.secret: a folder stands where the secret belongs");
    }
    Files.delete(secret);
    Files.createFile(secret);
    for (Ran ran : List.of(share(), Ran.of("vouch", record), renewed())) {
      assertThat(ran.exit()).isEqualTo(1);
      assertThat(ran.err()).contains("truck.secret: this secret is damaged: it is empty; put it");
    }
    assertThat(secret).isEmptyFile();
    assertThat(folder.resolve("out")).doesNotExist();
  }

  @Test
  void vouchesForEarlierCopiesWhenTheRecordIsNamedOtherwise() throws IOException {
    share();
    List<String> before = keys();
    Files.writeString(record, RECORD.replace("record: truck", "record: lorry"));
    assertThat(keys()).isEqualTo(before);
    assertThat(Ran.of("vouch", page(), "L45-4388", before.get(0)).out()).startsWith("yes: ");
    String said = "was made for the record \"truck\", and this one is \"lorry\"";
    assertThat(share().err()).contains(said).contains("if this is another vehicle, make a new");
    assertThat(Ran.of("vouch", record).err()).contains(said);
    Path renamed = folder.resolve("out/lorry-redacted.html");
    assertThat(Ran.of("vouch", renamed, "L45-4388", before.get(0)).out()).startsWith("yes: ");
  }

  /** The first version wrote neither the record's name nor the day. */
  @Test
  void asksForTheNameThatASecretOfTheFirstVersionLacks() throws IOException {
    share();
    String file = Files.readString(secret);
    String first = file.replaceAll("(?m)^(record|made): .*\n", "");
    assertThat(first).isNotEqualTo(file);
    List<String> before = keys();
    Files.writeString(secret, first);
    assertThat(keys()).as("by the record's own name").isEqualTo(before);
    assertThat(Ran.of("vouch", page(), "L45-4388", before.get(0)).out()).startsWith("yes: ");
    String said = "truck.secret does not say for which record it was made; add the line `record: ";
    assertThat(share().err())
        .contains(said + "truck`")
        .contains("it does not say when it was made");
    assertThat(Files.readString(secret)).isEqualTo(first);

    Files.writeString(record, RECORD.replace("record: truck", "record: lorry"));
    assertThat(keys()).as("as it was in the first version").isNotEqualTo(before);
    assertThat(Ran.of("vouch", record).err()).contains(said + "lorry` to it, or the name that");
    Files.writeString(secret, "record: truck\n" + first);
    assertThat(keys()).isEqualTo(before);
  }
}
