package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a masked number's hash proves to a buyer. */
class VerifyCommandTest {
  private Path folder = Path.of("");
  private NumberedRecord truck = new NumberedRecord(folder);

  @BeforeEach
  void lay(@TempDir Path folder) throws IOException {
    this.folder = folder;
    this.truck = NumberedRecord.in(folder);
  }

  private void change(String was, String is) throws IOException {
    String page = Files.readString(truck.page());
    assertThat(page).contains(was);
    Files.writeString(truck.page(), page.replace(was, is));
  }

  @Test
  void saysWhatIsProvedAndUnderWhichCondition() {
    truck.redact();
    CommandResult yes = CommandResult.of("verify", truck.page(), "l45-4388", truck.keys().get(0));
    assertThat(yes.exit()).as(yes.err()).isZero();
    assertThat(yes.out())
        .startsWith("yes: the letters and digits L454388 are ")
        .contains("masks as Chassis number L45-4xxx\n")
        .contains("only if you had this page before you asked")
        .contains("whoever has the secret can make such a page today")
        .contains("Nothing else in the page is proved");
    CommandResult json =
        CommandResult.of("verify", truck.page(), "--json", "L45-4388", truck.keys().get(0));
    assertThat(json.json().get("letters").stringValue()).isEqualTo("L454388");
    assertThat(json.json().get("as").stringValue()).isEqualTo("Chassis number L45-4xxx");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"L4-54-388", "L45-4-388", "L45 4388", "L454388", "L45-4388.", "L45-43★88"})
  void saysNoToANumberThatIsWrittenOtherwiseThanThePageShows(String number) {
    truck.redact();
    CommandResult no = CommandResult.of("verify", truck.page(), number, truck.keys().get(0));
    assertThat(no.exit()).isEqualTo(1);
    assertThat(no.out()).isEmpty();
    assertThat(no.err())
        .startsWith("no: the letters and digits L454388 give a hash of this page")
        .contains("the page shows Chassis number L45-4xxx beside it");
  }

  @ParameterizedTest
  @CsvSource({
    "L45-4\ud83d\ude42388, \ud83d\ude42",
    "L45-4\u200b388, <U+200B>",
    "L45-4\u001b[1m388, <U+001B>"
  })
  void refusesANumberWithWhatNoNumberHas(String number, String shown) {
    truck.redact();
    CommandResult refused = CommandResult.of("verify", truck.page(), number, truck.keys().get(0));
    assertThat(refused.exit()).isEqualTo(1);
    assertThat(refused.out()).isEmpty();
    assertThat(refused.err()).contains("the number has " + shown + " in it, which no number has");
    assertThat(CommandResult.of("verify", truck.page(), "-", truck.keys().get(0)).err())
        .contains("neither letters nor digits");
  }

  @Test
  void saysNoWhereThePageShowsAnotherNumberBesideTheHash() throws IOException {
    truck.redact();
    change("L45-4xxx", "K12-9xxx");
    CommandResult no = CommandResult.of("verify", truck.page(), "L45-4388", truck.keys().get(0));
    assertThat(no.exit()).isEqualTo(1);
    assertThat(no.err())
        .startsWith("no: ")
        .contains("the page shows Chassis number K12-9xxx beside it")
        .contains("somebody changed the page");
    assertThat(CommandResult.of("verify", truck.page(), "K12-9388", truck.keys().get(0)).err())
        .startsWith("no: ");
  }

  @Test
  void saysNoWhereOneHashStandsBesideTwoNumbers() throws IOException {
    truck.redact();
    String page = Files.readString(truck.page());
    Matcher seal = Pattern.compile("seal\"[^>]*>([0-9a-f]{64})<").matcher(page);
    List<String> both = seal.results().map(one -> one.group(1)).toList();
    assertThat(both).hasSize(2);
    Files.writeString(truck.page(), page.replace(both.get(1), both.get(0)));
    CommandResult no = CommandResult.of("verify", truck.page(), "L45-4388", truck.keys().get(0));
    assertThat(no.err()).startsWith("no: ").contains("one hash for two numbers");
  }

  @Test
  void refusesAPageWhosePartOnNumbersCanBeHidden() throws IOException {
    truck.redact();
    change("<section id=\"left-out\"", "<section hidden id=\"left-out\"");
    CommandResult refused =
        CommandResult.of("verify", truck.page(), "L45-4388", truck.keys().get(0));
    assertThat(refused.exit()).isEqualTo(1);
    assertThat(refused.err())
        .contains("truck-redacted.html: this is no copy for others as Assize writes it: line ")
        .contains("within something that can hide it");
  }

  /** A terminal is steered by none of these, and nothing is written backward. */
  @Test
  void showsWhatAPageSaysWithoutObeyingIt() throws IOException {
    truck.redact();
    String steering = "\u001b]0;a\u0007\u009b31m\u202e\u2066\u200f\r";
    change("Chassis number: <strong>", "A" + steering + ": <strong>");
    change("E4xxx", "E4" + steering);
    for (String number : List.of("L45-4388", "E4711")) {
      for (boolean json : List.of(false, true)) {
        List<Object> words = new ArrayList<>(List.of("verify", truck.page(), number));
        words.add(truck.keys().get(number.startsWith("L") ? 0 : 1));
        words.addAll(json ? List.of("--json") : List.of());
        CommandResult ran = CommandResult.of(words.toArray());
        assertThat(ran.exit()).isEqualTo(number.startsWith("L") ? 0 : 1);
        assertThat((ran.out() + ran.err()).replace("\n", "").codePoints())
            .noneMatch(c -> Character.getType(c) == Character.CONTROL)
            .noneMatch(c -> Character.getType(c) == Character.FORMAT);
        assertThat(ran.out() + ran.err()).containsIgnoringCase(json ? "\\u202e" : "<U+202E>");
      }
    }
    CommandResult no = CommandResult.of("verify", truck.page(), "L45-4389", truck.keys().get(0));
    assertThat(no.err()).startsWith("no: ").contains("<U+001B>").doesNotContain("\u001b");
  }

  /** It would fill this heap several times over if it were held. */
  @Tag("slow")
  @Test
  void readsAPageInLittleMemory() throws Exception {
    truck.redact();
    String page = Files.readString(truck.page());
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
    line.addAll(List.of("verify", large.toString(), "L45-4388", truck.keys().get(0)));
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
}
