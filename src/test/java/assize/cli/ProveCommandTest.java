package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import assize.redaction.OwnerSecret;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** By which secret a masked number is proved. */
class ProveCommandTest {
  private Path folder = Path.of("");
  private NumberedRecord truck = new NumberedRecord(folder);
  private Path record = Path.of("");
  private Path secret = Path.of("");

  @BeforeEach
  void lay(@TempDir Path folder) throws IOException {
    this.folder = folder;
    this.truck = NumberedRecord.in(folder);
    this.record = truck.file();
    this.secret = folder.resolve("truck.secret");
  }

  @Test
  void saysWhichSecretIsUsedAndSinceWhenForEachCopy() throws IOException {
    assertThat(truck.redact().err()).contains("truck.secret is new");
    OwnerSecret made = read(secret);
    CommandResult again = truck.redact();
    assertThat(again.err())
        .contains(
            "note: "
                + secret
                + " (made "
                + made.made().orElseThrow()
                + ", mark "
                + made.mark()
                + ") masks the numbers: whoever has had this file can find them out")
        .contains("assize prove " + record + " --new-secret")
        .doesNotContain("was made for the record");
    assertThat(CommandResult.of("prove", record).out()).contains(", mark " + made.mark() + ")");
  }

  private static OwnerSecret read(Path file) throws IOException {
    return OwnerSecret.read(Files.readString(file)).toOptional().orElseThrow();
  }

  /** A friend's folder, with the friend's secret, is used for copies of one's own. */
  @Test
  void makesANewSecretAndStillProvesByTheOneBefore() throws IOException {
    truck.redact();
    String before = Files.readString(secret);
    List<String> keys = truck.keys();
    Path old = folder.resolve("old.html");
    Files.copy(truck.page(), old);

    CommandResult renewed = CommandResult.of("prove", record, "--new-secret");
    assertThat(renewed.exit()).as(renewed.err()).isZero();
    Path kept = SecretFile.earlier(record, OwnerSecret.read(before).toOptional().orElseThrow());
    assertThat(Files.readString(kept)).isEqualTo(before);
    assertThat(read(secret)).isNotEqualTo(read(kept));
    assertThat(renewed.out())
        .contains("truck.secret (made ", "mark " + read(secret).mark(), "is new")
        .contains("Keep " + kept, "assize judge " + record + " --redact");

    truck.redact();
    List<String> both = truck.keys();
    assertThat(both).hasSize(4).endsWith(keys.toArray(String[]::new));
    assertThat(CommandResult.of("verify", old, "L45-4388", both.get(2)).out()).startsWith("yes: ");
    assertThat(CommandResult.of("verify", truck.page(), "L45-4388", both.get(0)).out())
        .startsWith("yes: ");
    assertThat(CommandResult.of("verify", truck.page(), "L45-4388", both.get(2)).err())
        .startsWith("no: ");
    assertThat(CommandResult.of("prove", record).out()).contains("secret      " + kept);

    Files.delete(secret);
    assertThat(truck.keys()).isEqualTo(keys);
    Files.writeString(kept, "secret:\n");
    CommandResult damaged = CommandResult.of("prove", record);
    assertThat(damaged.exit()).isEqualTo(1);
    assertThat(damaged.err()).contains(kept + ": this secret is damaged");
  }

  @Test
  void losesNoSecretWhereANewOneCanNotBeMade() throws IOException {
    assertThat(renewed().out()).contains("is new: keep it").doesNotContain("Keep ");
    assertThat(truck.redact().err()).doesNotContain("is new");
    Files.writeString(SecretFile.earlier(record, read(secret)), "A person's own.\n");
    Map<String, String> before = CommandBench.content(folder);
    CommandResult taken = CommandResult.of("prove", record, "--new-secret");
    assertThat(taken.exit()).isEqualTo(3);
    assertThat(taken.err()).contains("a file stands there already; move it away");
    assertThat(CommandResult.of("verify", truck.page(), "L45-4388", "AAAAA", "--new-secret").exit())
        .isEqualTo(2);
    assertThat(CommandBench.content(folder)).isEqualTo(before);
  }

  @Test
  void aLinkThatLeadsNowhereIsNamedAndKept() throws IOException {
    Path stick = folder.resolve("stick/truck.secret");
    Files.createSymbolicLink(secret, Path.of("stick/truck.secret"));
    for (CommandResult ran :
        List.of(truck.redact(), CommandResult.of("prove", record), renewed())) {
      assertThat(ran.exit()).isEqualTo(1);
      assertThat(ran.err())
          .contains("truck.secret: this is a link to " + stick + ", and no file is there")
          .contains("put the secret back there, or delete the link to begin a new one");
    }
    assertThat(secret).isSymbolicLink();
    assertThat(folder.resolve("out")).doesNotExist();

    Files.createDirectory(folder.resolve("stick"));
    Files.writeString(stick, OwnerSecret.random("truck", LocalDate.EPOCH).file("truck.yaml"));
    assertThat(truck.redact().err())
        .contains("truck.secret (a link to " + stick + ", made 1970-01-01");
    String before = Files.readString(stick);
    assertThat(renewed().exit()).isZero();
    assertThat(secret).isRegularFile();
    assertThat(Files.readString(stick)).isEqualTo(before);
    assertThat(SecretFile.earlier(record, read(stick))).isSymbolicLink();
    Files.delete(secret);
    Files.createSymbolicLink(secret, secret);
    assertThat(truck.redact().err())
        .contains("this is a link to " + secret + ", and no file is there");
  }

  private CommandResult renewed() {
    return CommandResult.of("prove", record, "--new-secret");
  }

  @Test
  void whatIsNoSecretIsNamedAndKept() throws IOException {
    Files.createDirectory(secret);
    for (CommandResult ran :
        List.of(truck.redact(), CommandResult.of("prove", record), renewed())) {
      assertThat(ran.exit()).isEqualTo(1);
      assertThat(ran.err()).contains("truck.secret: a folder stands where the secret belongs");
    }
    Files.delete(secret);
    Files.createFile(secret);
    for (CommandResult ran :
        List.of(truck.redact(), CommandResult.of("prove", record), renewed())) {
      assertThat(ran.exit()).isEqualTo(1);
      assertThat(ran.err()).contains("truck.secret: this secret is damaged: it is empty; put it");
    }
    assertThat(secret).isEmptyFile();
    assertThat(folder.resolve("out")).doesNotExist();
  }

  @Test
  void provesNumbersOfEarlierCopiesWhenTheRecordIsNamedOtherwise() throws IOException {
    truck.redact();
    List<String> before = truck.keys();
    Files.writeString(record, NumberedRecord.TEXT.replace("record: truck", "record: lorry"));
    assertThat(truck.keys()).isEqualTo(before);
    assertThat(CommandResult.of("verify", truck.page(), "L45-4388", before.get(0)).out())
        .startsWith("yes: ");
    String said = "was made for the record \"truck\", and this one is \"lorry\"";
    assertThat(truck.redact().err())
        .contains(said)
        .contains("if this is another vehicle, make a new");
    assertThat(CommandResult.of("prove", record).err()).contains(said);
    Path renamed = folder.resolve("out/lorry-redacted.html");
    assertThat(CommandResult.of("verify", renamed, "L45-4388", before.get(0)).out())
        .startsWith("yes: ");
  }

  /** The first version wrote neither the record's name nor the day. */
  @Test
  void asksForTheNameThatASecretOfTheFirstVersionLacks() throws IOException {
    truck.redact();
    String file = Files.readString(secret);
    String first = file.replaceAll("(?m)^(record|made): .*\n", "");
    assertThat(first).isNotEqualTo(file);
    List<String> before = truck.keys();
    Files.writeString(secret, first);
    assertThat(truck.keys()).as("by the record's own name").isEqualTo(before);
    assertThat(CommandResult.of("verify", truck.page(), "L45-4388", before.get(0)).out())
        .startsWith("yes: ");
    String said = "truck.secret does not say for which record it was made; add the line `record: ";
    assertThat(truck.redact().err())
        .contains(said + "truck`")
        .contains("it does not say when it was made");
    assertThat(Files.readString(secret)).isEqualTo(first);

    Files.writeString(record, NumberedRecord.TEXT.replace("record: truck", "record: lorry"));
    assertThat(truck.keys()).as("as it was in the first version").isNotEqualTo(before);
    assertThat(CommandResult.of("prove", record).err())
        .contains(said + "lorry` to it, or the name that");
    Files.writeString(secret, "record: truck\n" + first);
    assertThat(truck.keys()).isEqualTo(before);
  }
}
