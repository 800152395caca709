package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import assize.compare.Yard;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HandbookCommandTest {
  private static final Path RULES = Yard.FOLDER.resolve("newer.yaml");

  @TempDir private Path folder = Path.of("");

  @Test
  void writesTheHandbookAndSaysWhere() throws IOException {
    Path out = folder.resolve("new").resolve("book.html");
    Ran ran = Ran.of("handbook", RULES, "--out", out);
    assertThat(ran).isEqualTo(new Ran(0, "The yard standard\n  " + out + "\n", ""));
    assertThat(Files.readString(out)).contains("<title>The yard standard, edition 2, May 2026");
  }

  @Test
  void whatIsNoRuleSetIsToldAndNothingIsWritten() {
    Path out = folder.resolve("out.html");
    Ran ran = Ran.of("handbook", Yard.FOLDER.resolve("truck.yaml"), "--out", out);
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.err()).contains("this is a record");
    assertThat(out).doesNotExist();
  }

  @Test
  void anOutputThatCantBeWrittenIsExitThree() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "x");
    assertThat(Ran.of("handbook", RULES, "--out", file.resolve("book.html")).exit()).isEqualTo(3);
  }
}
