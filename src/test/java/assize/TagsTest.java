package assize;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Holds the tags of DEVELOPERS.md, by which the build selects tests. */
class TagsTest {
  private static final Path SOURCES = Path.of("src/test/java");

  @ParameterizedTest
  @CsvSource({"browser, Browser\\.", "pinned, Pinned\\.equal"})
  void aTestHasTheTagOfWhatItUses(String tag, String use) throws IOException {
    Pattern uses = Pattern.compile("\\b" + use);
    List<Path> users = new ArrayList<>();
    List<Path> untagged = new ArrayList<>();
    try (Stream<Path> all = Files.walk(SOURCES)) {
      for (Path file : all.filter(it -> it.toString().endsWith("Test.java")).toList()) {
        String source = Files.readString(file);
        if (uses.matcher(source).find()) {
          users.add(file);
          if (!source.contains("@Tag(\"" + tag + "\")")) {
            untagged.add(file);
          }
        }
      }
    }
    assertThat(users).isNotEmpty();
    assertThat(untagged).as("without the tag " + tag).isEmpty();
  }
}
