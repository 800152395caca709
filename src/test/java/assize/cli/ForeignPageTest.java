package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A page takes the place of a page that this program wrote, and of nothing else. */
class ForeignPageTest {
  private CommandBench bench = new CommandBench(Path.of(""));

  @BeforeEach
  void lay(@TempDir Path folder) throws IOException {
    bench = CommandBench.in(folder);
    Files.createDirectory(bench.at("few"));
    for (String name : new String[] {"rules.yaml", "one.yaml", "two.yaml"}) {
      Files.copy(bench.at(name), bench.at("few/" + name));
    }
    Files.copy(bench.at("rules.yaml"), bench.at("older.yaml"));
  }

  private CommandResult run(String command) {
    return CommandResult.of((Object[]) command.replace("@", bench.folder().toString()).split(" "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "judge @/one.yaml --out @/out|out/one.html",
        "judge @/two.yaml @/one.yaml --out @/out --photos folder|out/one.html",
        "judge --redact @/one.yaml --out @/out|out/one-redacted.html",
        "dossier @/one.yaml --out @/out|out/one-door-key.html",
        "dossier --redact @/one.yaml --out @/out|out/one-door-key-redacted.html",
        "results @/few --out @/out|out/results.html",
        "results @/few --out @/out|out/two.html",
        "results @/few --out @/out --redact|out/results-redacted.html",
        "sheet @/one.yaml --out @/out/sheet.html|out/sheet.html",
        "handbook @/rules.yaml --out @/out/book.html|out/book.html",
        "compare @/older.yaml @/rules.yaml --out @/out/new.html|out/new.html",
        "demo @/demo|demo/reports/q-1187.html"
      })
  void aPageOfSomebodyElseStays(String command, String name) throws IOException {
    assertThat(run(command).exit()).isZero();
    assertThat(bench.at(name)).exists();
    CommandResult again = run(command);
    assertThat(again.exit()).as("over its own pages: %s", again.err()).isZero();

    Files.writeString(
        bench.at(name), "<!DOCTYPE html>\n<html lang=\"en\"><p>My own words</html>\n");
    Map<String, String> before = bench.content();
    CommandResult ran = run(command);
    assertThat(ran.exit()).isEqualTo(3);
    assertThat(ran.out()).doesNotContain("wrote", name);
    assertThat(ran.err())
        .contains(
            "can't write "
                + bench.at(name)
                + ": what stands there is no page of Assize, and stays as it is; move it away, or"
                + " name another place\n");
    assertThat(bench.content()).isEqualTo(before);
  }

  /** Nothing is lost with an empty file; what only looks like a page in part is no page. */
  @Test
  void anEmptyFileIsReplacedAndHalfAPageIsNot() throws IOException {
    Path book = Files.createFile(bench.at("book.html"));
    assertThat(run("handbook @/rules.yaml --out @/book.html").exit()).isZero();
    String page = Files.readString(book);
    for (String other :
        new String[] {
          page.substring(1),
          page.substring(0, 200),
          page.replace(" data-vehicle=", " data-other="),
          "My words, then " + page
        }) {
      Files.writeString(book, other);
      assertThat(run("handbook @/rules.yaml --out @/book.html").exit()).isEqualTo(3);
      assertThat(book).hasContent(other);
    }
  }

  /** The pinned pages of the demonstration are of the program as it was before. */
  @ParameterizedTest
  @ValueSource(strings = {"reports/q-1187.html", "reports/l45-4388.html"})
  void aPageOfAnEarlierVersionIsReplaced(String earlier) throws IOException {
    Files.copy(Path.of(earlier), bench.at("book.html"));
    assertThat(run("handbook @/rules.yaml --out @/book.html").exit()).isZero();
  }

  /** The name of a vehicle may be as long as a text may be, and each letter is written as six. */
  @Test
  void aPageOfAVeryLongNameIsReplaced() throws IOException {
    String text = Files.readString(bench.at("rules.yaml"));
    String name = "'" + "\"".repeat(65_000) + "'";
    Files.writeString(bench.at("rules.yaml"), text.replaceFirst("(?m)^name: .*", "name: " + name));
    for (int i = 0; i < 2; i++) {
      CommandResult ran = run("handbook @/rules.yaml --out @/book.html");
      assertThat(ran.exit()).as(ran.err()).isZero();
    }
  }
}
