package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import assize.record.Observation;
import assize.record.Secret;
import assize.record.VehicleRecord;
import assize.redaction.RedactedJudgment;
import assize.redaction.TextMasker;
import assize.report.html.Seals;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plants numbers, private words and private texts everywhere, and looks for them in the copy. */
class RedactCommandTest {
  private static final String NUMBER = "TB7-48391";

  /** Each is private, and stands in the record only where it is. */
  private static final List<String> SECRETS =
      List.of(
          "secretnotes",
          "secretjudge",
          "secretnote",
          "secretby",
          "secretmatched",
          "secretwhy",
          "secretbecause",
          "secretcaption",
          "secret-paper",
          "secretmeter",
          "7.3.1999");

  private static final String RULES =
      """
      rule_set: planted-tb7-60412
      name: A standard for TB7 60412
      edition: "1 of TB7/60412"
      maker: The maker of 60412
      purpose: To judge tb760412
      models:
        X1: {name: Dropside TB7-60412, production: 1932-03/1936-08}
      plants:
        west: Secretplant
      markets:
        home: Secretmarket
      sources:
        drawing-60412: {kind: drawing, grade: A, title: Drawing of TB7-60412, held_by: Mill Lane, notes: "In *Mill* Lane, TB7-60412"}
        guide: {kind: club guide, grade: C, title: Guide 60412}
      number_tables:
        chassis: {name: Number like TB7-60412, series: [{prefix: TB7-, models: [X1], first_numbers: {48000: 1934-01-01, 49000: 1935-01-01}, last: {number: 49100, built: 1935-12-31}}]}
      colors:
        black: {name: Black as TB7-60412}
      finishes:
        nickel-60412: {name: nickel of 60412}
        chrome: {name: chromium plate}
      areas:
        cab-60412:
          name: Cab of TB7-60412
          items:
            button-tb7-60412:
              title: Button of TB7-60412
              points: 4
              look: Look at ＴＢ７ ４８３９１
              notes: "Not **60**412, says mill-lane"
              claims:
                - {source: drawing-60412, cite: sheet TB7.60412, says: {finish: nickel-60412}}
                - {source: guide, cite: page 60412, says: {finish: chrome}}
            lamp:
              title: Lamp
              points: 4
              expect: {color: black}
              source: guide
      """;

  private static final String RECORD =
      """
      record: truck-tb7-48391
      rules: rules.yaml
      edition: "1 of TB7/60412"
      vehicle: {name: The truck TB7 48391, model: X1, notes: secretnotes}
      numbers: {chassis: TB7-48391}
      built: {date: 1934-05, basis: plate of TB7-48391}
      plant: west
      market: home
      inspected: {by: secretjudge, on: 1999-03-07}
      private: [notes, inspected, plant, market]
      private_words: [Mill Lane]
      evidence:
        plate-48391: {photo: photos/tb7-48391.png, caption: Plate of TB7-48391 in Mill Lane, by: Mill Lane 3}
        paper: {document: secret-paper.txt, caption: secretcaption, private: yes}
        meter: {measurement: secretmeter}
      traces:
        - {item: button-tb7-60412, grade: B, says: {finish: chrome}, where: Behind plate 48391, evidence: [plate-48391, paper]}
      observations:
        button-tb7-60412:
          finish: chrome
          note: secretnote
          by: secretby
          on: 1999-03-07
          departure: {reason: TB7-48391, explanation: secretwhy}
          owner_view:
            expects: {finish: chrome}
            reason: secretbecause
          evidence: [meter, paper]
          private: yes
        lamp:
          color: {chip: black, light: daylight in Mill Lane, by: secretmatched}
          note: "Came with `TB7-48391` from\\u00A0MILL-LANE, [48391](http://example.org/TB7-48391)"
          evidence: [plate-48391]
          private: [by]
      """;

  private Path folder = Path.of("");
  private Path record = Path.of("");
  private Path out = Path.of("");

  @BeforeEach
  void lay(@TempDir Path folder) throws IOException {
    this.folder = folder;
    this.record = folder.resolve("truck.yaml");
    this.out = folder.resolve("out");
    Files.createDirectory(folder.resolve("photos"));
    Files.copy(Path.of("rules/photos/horn-button.png"), folder.resolve("photos/tb7-48391.png"));
    Files.writeString(folder.resolve("secret-paper.txt"), "A paper.\n");
    Files.writeString(folder.resolve("rules.yaml"), RULES);
    Files.writeString(record, RECORD);
  }

  private CommandResult share(Object... more) {
    List<Object> words = new java.util.ArrayList<>(List.of("judge", record, "--redact"));
    words.addAll(List.of("--out", out));
    words.addAll(List.of(more));
    return CommandResult.of(words.toArray());
  }

  private String page() throws IOException {
    return Files.readString(out.resolve("truck-tb7-48xxx-redacted.html"));
  }

  /** The page's bytes but for what is hexadecimal or Base64: digests and pictures. */
  private static String searchable(String page) {
    return page.replaceAll("sha256-[A-Za-z0-9+/=]+", "")
        .replaceAll("\\b[0-9a-f]{64}\\b", "")
        .replaceAll("base64,[A-Za-z0-9+/=]+", "")
        .replaceAll("(?s)<(style|script)>.*?</\\1>", "")
        .replaceAll("(?s)<svg.*?</svg>", "");
  }

  @Test
  void nothingPlantedIsLeftInAnyByte() throws IOException {
    CommandResult ran = share("--json", out.resolve("all.json"));
    assertThat(ran.exit()).as(ran.err()).isZero();
    assertThat(CommandBench.content(out))
        .containsOnlyKeys("", "all.json", "truck-tb7-48xxx-redacted.html");
    String page = searchable(page());
    String json = Files.readString(out.resolve("all.json"));
    for (String text : List.of(page, Jsoup.parse(page()).text(), json)) {
      String folded = text.replaceAll("[^A-Za-z0-9]", "").toLowerCase(java.util.Locale.ROOT);
      assertThat(text).doesNotContain("48391").doesNotContainIgnoringCase("mill");
      assertThat(folded).doesNotContain("48391").doesNotContain("milllane");
      SECRETS.forEach(secret -> assertThat(text).doesNotContainIgnoringCase(secret));
    }
    assertThat(page).doesNotContain("Secretplant").doesNotContain("Secretmarket");
    assertThat(page).doesNotContain("7 March 1999").doesNotContain("1999");
    assertThat(page).contains("TB7-48xxx", "The copy for others", "What this copy leaves out");
    assertThat(CommandResult.json(json).get("redacted").booleanValue()).isTrue();
    assertThat(CommandResult.json(json).get("record").stringValue()).isEqualTo("truck-tb7-48xxx");
  }

  @Test
  void verdictsAndPointsAreThoseOfTheReport() {
    CommandResult shared = share("--json", "-");
    CommandResult own = CommandResult.of("judge", record, "--json", "-");
    assertThat(shared.json().get("score")).isEqualTo(own.json().get("score"));
    for (int i = 0; i < own.json().get("items").size(); i++) {
      for (String name : List.of("verdict", "agreement", "low", "likely", "high", "possible")) {
        assertThat(shared.json().get("items").get(i).get(name))
            .isEqualTo(own.json().get("items").get(i).get(name));
      }
    }
    assertThat(SecretFile.of(record)).as("JSON alone has no hash").doesNotExist();
  }

  @Test
  void eachWordThatCanBePrivateIsLeftOutOfTheJudgment() {
    InputLoader.Judged judged = judged();
    RedactedJudgment copy = judged.copy();
    String left = copy.judgment().vehicle().toString();
    SECRETS.stream()
        .filter(it -> !it.startsWith("7."))
        .forEach(secret -> assertThat(left).doesNotContain(secret));
    assertThat(left).doesNotContain("west").doesNotContain("1999");
    assertThat(copy.omissions().stream().flatMap(it -> it.what().stream()).distinct())
        .containsExactlyInAnyOrderElementsOf(
            java.util.stream.Stream.concat(
                    VehicleRecord.SECRETS.stream(), Observation.SECRETS.stream())
                .map(Secret::spoken)
                .toList());
    assertThat(copy.evidence()).isEqualTo(2);
    assertThat(copy.judgment().vehicle().files().get(0).sha256()).isEmpty();
    assertThat(copy.judgment().score()).isEqualTo(judged.judgment().score());
  }

  private InputLoader.Judged judged() {
    java.io.PrintStream nowhere = new java.io.PrintStream(new java.io.ByteArrayOutputStream());
    Map<Path, InputLoader.Judged> judged =
        new InputLoader(new Terminal(nowhere, nowhere, false))
            .judge(List.of(record), Optional.empty(), Optional.empty())
            .orElseThrow();
    return judged.values().iterator().next();
  }

  @Test
  void theSecretIsMadeOnceAndGivesTheSameBytes() throws IOException {
    CommandResult first = share();
    Map<String, String> before = CommandBench.content(folder);
    assertThat(first.err()).contains("truck.secret is new").contains("photos/tb7-48391.png");
    assertThat(before).containsKey("truck.secret");
    CommandResult again = share();
    assertThat(again.err()).doesNotContain("is new");
    assertThat(CommandBench.content(folder)).isEqualTo(before);
    String secret = Files.readString(SecretFile.of(record));
    assertThat(page()).doesNotContain(secret.lines().reduce("", (a, b) -> b).substring(8));
  }

  @Test
  void aDamagedSecretIsAnErrorAndStays() throws IOException {
    share();
    Path secret = SecretFile.of(record);
    String damaged = Files.readString(secret).replaceFirst("(secret: .)(.)", "$1$2$2");
    Files.writeString(secret, damaged);
    Map<String, String> before = CommandBench.content(folder);
    CommandResult ran = share();
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.err()).contains("truck.secret: this secret is damaged");
    assertThat(CommandResult.of("prove", record).exit()).isEqualTo(1);
    assertThat(CommandBench.content(folder)).isEqualTo(before);
  }

  @Test
  void nothingIsWrittenWhereTheMaskCanNotSeeThrough() throws IOException {
    Files.writeString(
        record, RECORD.replace("Came with", "Came with 48[391](http://a.example) or"));
    Map<String, String> before = CommandBench.content(folder);
    CommandResult ran = share();
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.err())
        .contains("still shows what it should not")
        .contains("in “Lamp”: “Came with 48xxx or")
        .contains("Nothing was written")
        .doesNotContain("48391 or");
    assertThat(CommandBench.content(folder)).isEqualTo(before);
  }

  @Test
  void theReportWithoutShareIsAsItWas() throws IOException {
    CommandResult.of("judge", record, "--out", out);
    Map<String, String> before = CommandBench.content(out);
    share();
    CommandResult.of("judge", record, "--out", out);
    assertThat(CommandBench.content(out)).containsAllEntriesOf(before);
    assertThat(before.get("truck-tb7-48391.html")).contains(NUMBER).doesNotContain("left-out");
  }

  @Test
  void theDossierForOthersShowsNothingPlanted() throws IOException {
    CommandResult ran = CommandResult.of("dossier", record, "--redact", "--out", out);
    assertThat(ran.exit()).as(ran.err()).isZero();
    assertThat(ran.err()).contains("look at each of these photos").contains("tb7-48391.png");
    String name = "truck-tb7-48xxx-button-tb7-60412-redacted.html";
    assertThat(CommandBench.content(out)).containsOnlyKeys("", name);
    assertThat(SecretFile.of(record)).as("it bears no hash").doesNotExist();
    String whole = Files.readString(out.resolve(name));
    for (String text : List.of(searchable(whole), Jsoup.parse(whole).text())) {
      String folded = text.replaceAll("[^A-Za-z0-9]", "").toLowerCase(java.util.Locale.ROOT);
      assertThat(folded).doesNotContain("48391").doesNotContain("milllane");
      SECRETS.forEach(secret -> assertThat(text).doesNotContainIgnoringCase(secret));
      assertThat(text).doesNotContain("Secretplant").doesNotContain("Secretmarket");
      assertThat(text).contains("The copy for others", "Plate of TB7-48xxx");
    }
  }

  @Test
  void theDossierForOthersIsRefusedWhereTheMaskCanNotSeeThrough() throws IOException {
    Files.writeString(
        record, RECORD.replace("Came with", "Came with 48[391](http://a.example) or"));
    CommandResult ran = CommandResult.of("dossier", record, "--redact", "--out", out);
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.err()).contains("still shows what it should not").doesNotContain("48391 or");
    assertThat(out).doesNotExist();
  }

  /** Masked there, a number that the standard names would be known to be the vehicle's. */
  @Test
  void theStandardsOwnWordsAreLeftAlone() throws IOException {
    Files.writeString(
        folder.resolve("rules.yaml"), RULES.replace("Guide 60412", "Guide to TB7-48391 and 48391"));
    assertThat(share().exit()).isZero();
    assertThat(page()).contains("Guide to TB7-48391 and 48391", "Plate of TB7-48xxx");
  }

  @Test
  void aNumberMayBeOneThatThePageNamesItself() throws IOException {
    Files.writeString(record, RECORD.replace("[Mill Lane]", "[Mill Lane, \"1804\", \"1976\"]"));
    assertThat(share().err()).doesNotContain("still shows");
    assertThat(CommandResult.of("dossier", record, "--redact", "--out", out).err())
        .doesNotContain("still shows");
  }

  @Test
  void refusesTwoCopiesOfOneName() throws IOException {
    Path other = folder.resolve("other.yaml");
    Files.writeString(other, RECORD.replace("48391", "48392"));
    Files.copy(folder.resolve("photos/tb7-48391.png"), folder.resolve("photos/tb7-48392.png"));
    CommandResult ran = CommandResult.of("judge", record, other, "--redact", "--out", out);
    assertThat(ran.exit()).as(ran.err()).isEqualTo(1);
    assertThat(ran.err()).contains("another record's copy is named truck-tb7-48xxx-redacted.html");
    assertThat(out).doesNotExist();
  }

  @Test
  void provesTheNumberAndNoOther() throws IOException {
    share();
    Path page = out.resolve("truck-tb7-48xxx-redacted.html");
    CommandResult owner = CommandResult.of("prove", record);
    assertThat(owner.exit()).isZero();
    assertThat(owner.out()).contains(NUMBER, "masked TB7-48xxx");
    String words =
        owner.out().lines().filter(it -> it.contains("proof code")).findFirst().orElse("");
    String[] groups = words.replaceAll(".*proof code +", "").split("-");
    String key = String.join("-", groups);
    CommandResult yes = CommandResult.of("verify", page, "tb7-48391", key);
    assertThat(yes.exit()).as(yes.err()).isZero();
    assertThat(yes.out()).startsWith("yes: ").contains("TB7-48xxx");
    Object[] parted = {"verify", page, NUMBER};
    Object[] told =
        java.util.stream.Stream.concat(Arrays.stream(parted), Arrays.stream(groups)).toArray();
    assertThat(CommandResult.of(told).out()).startsWith("yes: ");
    CommandResult no = CommandResult.of("verify", page, "TB7-48392", key);
    assertThat(no.exit()).isEqualTo(1);
    assertThat(no.err()).startsWith("no: ").contains("TB7-48xxx");
    String other =
        assize.redaction.OwnerSecret.random("a", java.time.LocalDate.EPOCH)
            .key("truck-tb7-48391", "chassis")
            .proofCode();
    assertThat(CommandResult.of("verify", page, NUMBER, other).err()).startsWith("no: ");
    char last = key.charAt(key.length() - 1);
    String mistyped = key.substring(0, key.length() - 1) + (last == 'A' ? 'B' : 'A');
    CommandResult slip = CommandResult.of("verify", page, NUMBER, mistyped);
    assertThat(slip.exit()).isEqualTo(1);
    assertThat(slip.err()).contains("group 13 (").contains("is mistyped");
    assertThat(CommandResult.of("verify", record, NUMBER, key).err())
        .contains("this is no copy for others");
    assertThat(CommandResult.of("verify", page, NUMBER).exit()).isEqualTo(2);
    assertThat(
            CommandResult.of("verify", page, "--json", NUMBER, key)
                .json()
                .get("verified")
                .booleanValue())
        .isTrue();
    assertThat(CommandResult.of("prove", record, "--json").json().get("proof_code").stringValue())
        .isEqualTo(key);
  }

  @Test
  void noHashIsFoundByTryingAllEndings() throws IOException {
    share();
    String shown =
        Seals.of(new java.io.StringReader(page())).toOptional().orElseThrow().stream()
            .map(Seals.NumberHash::hash)
            .collect(Collectors.joining());
    assertThat(shown).hasSize(64);
    String everything = searchable(page());
    for (int end = 0; end < 1000; end++) {
      String number = String.format(java.util.Locale.ROOT, "TB748%03d", end);
      // neither a plain digest nor one under what the page itself shows
      for (String salt : List.of("", "truck-tb7-48xxx", "chassis", "truck-tb7-48391")) {
        assertThat(shown).isNotEqualTo(sha256(number + salt)).isNotEqualTo(sha256(salt + number));
      }
    }
    assertThat(everything).doesNotContain(sha256("TB748391"));
    assertThat(page()).doesNotContain(judged().judgment().vehicle().files().get(0).sha256());
  }

  private static String sha256(String text) {
    try {
      return java.util.HexFormat.of()
          .formatHex(
              java.security.MessageDigest.getInstance("SHA-256")
                  .digest(text.getBytes(java.nio.charset.StandardCharsets.UTF_8)));
    } catch (java.security.NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void provesNothingWithoutASecret() {
    CommandResult ran = CommandResult.of("prove", record);
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.err()).contains("truck.secret is not there");
    assertThat(TextMasker.isTooShort("AB")).isTrue();
    assertThat(TextMasker.isTooShort("7")).isFalse();
  }
}
