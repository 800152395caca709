package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import assize.compare.EditionFixture;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HandbookCommandTest {
  private static final Path RULES = EditionFixture.FOLDER.resolve("newer.yaml");

  @TempDir private Path folder = Path.of("");

  @Test
  void writesTheHandbookAndSaysWhere() throws IOException {
    Path out = folder.resolve("new").resolve("book.html");
    CommandResult ran = CommandResult.of("handbook", RULES, "--out", out);
    assertThat(ran).isEqualTo(new CommandResult(0, "The yard standard\n  " + out + "\n", ""));
    assertThat(Files.readString(out)).contains("<title>The yard standard, edition 2, May 2026");
  }

  @Test
  void whatIsNoRuleSetIsToldAndNothingIsWritten() {
    Path out = folder.resolve("out.html");
    CommandResult ran =
        CommandResult.of("handbook", EditionFixture.FOLDER.resolve("truck.yaml"), "--out", out);
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.err()).contains("this is a record");
    assertThat(out).doesNotExist();
  }

  @Test
  void anOutputThatCantBeWrittenIsExitThree() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "x");
    assertThat(CommandResult.of("handbook", RULES, "--out", file.resolve("book.html")).exit())
        .isEqualTo(3);
  }
}
