package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every kind of bad input ends with exit 1 and its message, and writes nothing. */
class CorpusExitTest {
  static List<Path> cases() throws IOException {
    try (Stream<Path> folders = Files.list(Path.of("src/test/corpus"))) {
      return folders.filter(Files::isDirectory).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void saysItAndWritesNothing(Path folder, @TempDir Path out) throws IOException {
    boolean single = Files.exists(folder.resolve("rules.yaml"));
    Path rules = folder.resolve(single ? "rules.yaml" : "rules");
    Path record = folder.resolve("record.yaml");
    boolean wrong = Files.readString(folder.resolve("expected.txt")).contains("error[");
    CommandResult ran =
        Files.exists(record)
            ? CommandResult.of("judge", record, "--rules", rules, "--out", out.resolve("reports"))
            : CommandResult.of("check", rules);
    if (wrong) {
      assertThat(ran.exit()).isEqualTo(1);
      assertThat(ran.out()).isEmpty();
      assertThat(out).isEmptyDirectory();
    } else {
      assertThat(ran.exit()).isZero();
    }
    assertThat(ran.err()).doesNotContain("\tat ").doesNotContain("Exception");
  }
}
