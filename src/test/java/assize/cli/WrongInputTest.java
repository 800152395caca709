package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** What a person types and gets wrong: an exit code and plain words, and nothing written. */
class WrongInputTest {
  private CommandBench bench = new CommandBench(Path.of(""));

  @BeforeEach
  void lay(@TempDir Path folder) {
    bench = CommandBench.in(folder);
  }

  /**
   * Runs one command line; {@code $} stands for the folder, {@code ''} for an empty word, {@code
   * NUL} for the letter that no file's name may have.
   */
  @ParameterizedTest
  @CsvFileSource(
      resources = "wrong.csv",
      useHeadersInDisplayName = true,
      delimiter = '|',
      ignoreLeadingAndTrailingWhitespace = true,
      quoteCharacter = '`')
  void isAnsweredInPlainWords(int exit, String line, String says) {
    Map<String, String> before = bench.content();
    Object[] words = Arrays.stream(line.split(" ")).map(this::word).toArray();
    CommandResult ran = CommandResult.of(words);
    assertThat(ran.exit()).as(ran.out() + ran.err()).isEqualTo(exit);
    assertThat(ran.err()).contains(says);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err().lines())
        .noneMatch(it -> it.contains("\tat ") || it.contains("Exception") || it.contains("java."))
        .hasSizeBetween(1, 40);
    assertThat(bench.content()).isEqualTo(before);
  }

  private String word(String word) {
    return word.replace("$", bench.folder().toString()).replace("''", "").replace("NUL", "\0");
  }
}
