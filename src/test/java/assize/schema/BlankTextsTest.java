package assize.schema;

import static org.assertj.core.api.Assertions.assertThat;

import assize.cli.Main;
import assize.cli.Terminal;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.Result;
import assize.record.RecordReader;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A text that shows nothing is an error where something is called by it, and none where not. */
@Tag("slow")
class BlankTextsTest {
  private static final Path FOLDER = Path.of("src/test/resources/assize/schema");

  /** The smallest PNG there is: one pixel. */
  private static final byte[] PICTURE =
      java.util.Base64.getDecoder()
          .decode(
              "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNgAAAAAgABSK+kcQAAAABJRU5ErkJggg==");

  /** Empty, and what editors, web pages and phones put in for a space or for nothing. */
  private static final List<String> BLANKS =
      List.of(
          "",
          "  ",
          "\u00A0",
          "\u200B",
          "\u200D\u2060",
          "\u2028",
          "\u3000",
          "\u3164",
          "\u115F",
          "\u2800",
          "\u00AD",
          "\uFE0F",
          "\uDB40\uDC20");

  /** Remarks, which may be left blank, and what may stand around a number. */
  private static final Set<String> REMARKS =
      Set.of(
          "basis",
          "by",
          "cite",
          "explanation",
          "held_by",
          "light",
          "look",
          "maker",
          "note",
          "notes",
          "prefix",
          "purpose",
          "reason",
          "suffix",
          "where");

  /** What is stamped, or compared with that: an empty text says that nothing is. */
  private static final Set<String> STAMPED = Set.of("date_code", "months", "part_number", "years");

  /** Puts a text into one free field, counted from 0, or into all of some names. */
  private static final class Blanking implements TextFields.Change {
    private final String blank;
    private final int field;
    private final Set<String> remarks;
    private int seen;
    private String changed = "";

    Blanking(String blank, int field, Set<String> remarks) {
      this.blank = blank;
      this.field = field;
      this.remarks = remarks;
    }

    @Override
    public String of(String under, String text) {
      boolean isIt = seen++ == field;
      changed = isIt ? under : changed;
      return isIt || remarks.contains(under) ? blank : text;
    }
  }

  private static String text(String name) throws IOException {
    return Files.readString(FOLDER.resolve(name));
  }

  private static Result<RuleSet> rules(TextFields.Change change) throws IOException {
    return RuleSetReader.parse(
        List.of(
            new SourceFile("rules.yaml", TextFields.ofRules(text("rules.yaml"), change)),
            new SourceFile("items.yaml", TextFields.ofRules(text("items.yaml"), change))));
  }

  @Test
  void aNameThatShowsNothingIsAnError() throws IOException {
    Set<String> blank = new TreeSet<>();
    Set<String> refused = new TreeSet<>();
    RuleSet rules = rules((under, text) -> text).value().orElseThrow();
    for (String one : BLANKS) {
      boolean isThere = true;
      for (int field = 0; isThere; field++) {
        Blanking change = new Blanking(one, field, Set.of());
        Result<?> read = rules(change);
        isThere = !change.changed.isEmpty();
        (read.hasErrors() ? refused : blank).add(change.changed);
      }
      isThere = true;
      for (int field = 0; isThere; field++) {
        Blanking change = new Blanking(one, field, Set.of());
        String record = TextFields.ofRecord(text("record.yaml"), change);
        Result<?> read = RecordReader.parse(new SourceFile("record.yaml", record), rules);
        isThere = !change.changed.isEmpty();
        (read.hasErrors() ? refused : blank).add(change.changed);
      }
    }
    blank.remove("");
    assertThat(refused)
        .contains(
            "name",
            "title",
            "plants",
            "markets",
            "equipment",
            "materials",
            "choices",
            "purpose",
            "edition",
            "caption",
            "measurement",
            "reason",
            "conditions",
            "allowances");
    Set<String> both = new TreeSet<>(REMARKS);
    both.addAll(STAMPED);
    assertThat(blank).isEqualTo(both);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "\u3164", "\u200B"})
  void aRemarkThatShowsNothingKeepsNoPageFromBeingWritten(String blank, @TempDir Path folder)
      throws IOException {
    Set<String> remarks = new TreeSet<>(REMARKS);
    remarks.removeAll(
        Set.of("purpose", "reason")); // reserved numbers and an accepted warning need them
    Blanking change = new Blanking(blank, -1, remarks);
    Path rules = Files.createDirectories(folder.resolve("rules"));
    for (String file : List.of("rules.yaml", "items.yaml")) {
      Files.writeString(rules.resolve(file), TextFields.ofRules(text(file), change));
    }
    String record = TextFields.ofRecord(text("record.yaml"), change);
    Files.writeString(
        folder.resolve("record.yaml"), record.replaceAll("(?m)^rules: .*", "rules: rules"));
    for (String file :
        List.of("rules/pictures/guide.png", "photos/horn.png", "papers/invoice.pdf")) {
      Files.createDirectories(folder.resolve(file).getParent());
      Files.write(folder.resolve(file), PICTURE);
    }
    for (String words :
        List.of(
            "check @/record.yaml",
            "judge @/record.yaml --out @/out",
            "judge --redact @/record.yaml --out @/out",
            "results @ --out @/all",
            "sheet @/record.yaml --out @/sheet.html",
            "sheet @/record.yaml --out @/sheet.csv",
            "handbook @/rules --out @/handbook.html")) {
      run(words.replace("@", folder.toString()));
    }
  }

  private static void run(String words) {
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    PrintStream out = new PrintStream(said, true, StandardCharsets.UTF_8);
    int exit = Main.run(new Terminal(out, out, false), words.split(" "));
    assertThat(exit).as(words + "\n" + said.toString(StandardCharsets.UTF_8)).isZero();
  }

  /** What a person reads is the place, and what it has in it that nobody sees. */
  @Test
  void theErrorHasItsPlace() throws IOException {
    Blanking change = new Blanking("\u3164", 0, Set.of());
    Diagnostic said = rules(change).diagnostics().get(0);
    assertThat(said.code().id()).isEqualTo("blank-name");
    assertThat(said.at().text()).contains("\u3164");
    assertThat(said.message()).contains("U+3164");
  }
}
