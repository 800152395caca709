package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import assize.compare.EditionFixture;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

class CompareCommandTest {
  private static final Path NEWER = EditionFixture.FOLDER.resolve("newer.yaml");
  private static final Path OLDER = EditionFixture.FOLDER.resolve("older.yaml");
  private static final Path TRUCK = EditionFixture.FOLDER.resolve("truck.yaml");

  @TempDir private Path folder = Path.of("");

  @Test
  void writesWhatChanged() throws IOException {
    Path out = folder.resolve("changes.html");
    CommandResult ran = CommandResult.of("compare", OLDER, NEWER, "--record", TRUCK, "--out", out);
    assertThat(ran.exit()).as(ran.err()).isZero();
    assertThat(ran.out()).contains("15 changes can alter a verdict, points or an award.");
    assertThat(Files.readString(out))
        .contains("Perhaps renamed")
        .contains("<strong>69.853 of 100</strong>")
        .contains("Edition 1 has no place for “stake”.");
  }

  @Test
  void tellsOtherPrograms() {
    CommandResult ran = CommandResult.of("compare", OLDER, NEWER, "--record", TRUCK, "--json");
    assertThat(ran.exit()).isZero();
    JsonNode json = ran.json();
    assertThat(json.get("before").get("edition").stringValue()).isEqualTo("1");
    assertThat(json.get("changes").size()).isEqualTo(23);
    assertThat(json.get("rename_candidates").get(0).get("after").stringValue()).isEqualTo("stake");
    assertThat(json.get("vehicle").get("after").get("likely").doubleValue()).isEqualTo(69.853);
    JsonNode same = CommandResult.of("compare", NEWER, NEWER, "--json").json();
    assertThat(same.get("changes").size()).isZero();
    assertThat(same.has("vehicle")).isFalse();
  }

  /** The record names an item by the name that only the older edition has. */
  @Test
  void takesARecordThatWasWrittenForTheOlderEdition() throws IOException {
    Path old = folder.resolve("old.yaml");
    Files.writeString(
        old,
        Files.readString(TRUCK)
            .replace("newer.yaml", "older.yaml")
            .replace("stake:", "side-stake:"));
    JsonNode json = CommandResult.of("compare", OLDER, NEWER, "--record", old, "--json").json();
    assertThat(json.get("vehicle").get("left_out").get(0).stringValue())
        .isEqualTo("Edition 2 has no place for “side-stake”.");
  }

  @Test
  void whatIsWrongIsToldAllAtOnceAndNothingIsWritten() throws IOException {
    Path bad = folder.resolve("bad.yaml");
    Files.writeString(bad, Files.readString(NEWER).replace("kind_of: nickel", "kind_of: nickle"));
    Path worse = folder.resolve("worse.yaml");
    Files.writeString(worse, Files.readString(OLDER).replace("grade: A", "grade: E"));
    Path out = folder.resolve("out.html");
    CommandResult ran = CommandResult.of("compare", worse, bad, "--out", out);
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.err()).contains("bad.yaml").contains("worse.yaml").contains("did you mean");
    assertThat(out).doesNotExist();
    assertThat(CommandResult.of("compare", OLDER, TRUCK, "--out", out).err())
        .contains("this is a record");
    assertThat(CommandResult.of("compare", OLDER, NEWER, "--record", OLDER, "--out", out).exit())
        .isEqualTo(1);
    assertThat(out).doesNotExist();
  }

  @Test
  void bothEditionsHaveToBeNamed() {
    CommandResult ran = CommandResult.of("compare", NEWER, "--record", TRUCK);
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.err()).contains("NEW").endsWith("Try: assize compare --help\n");
  }

  @Test
  void thePageIsNamedLikeOne() {
    CommandResult ran =
        CommandResult.of("compare", OLDER, NEWER, "--out", folder.resolve("changes.yaml"));
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.err()).startsWith("--out: name a file that ends in .html, not ");
  }

  @Test
  void anOutputThatCantBeWrittenIsExitThree() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "x");
    assertThat(CommandResult.of("compare", OLDER, NEWER, "--out", file.resolve("new.html")).exit())
        .isEqualTo(3);
  }
}
