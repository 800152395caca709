package assize.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every test that the page on threats leans on is there, and every threat has one. */
class ThreatsPageTest {
  private static final Pattern NAMED = Pattern.compile("`([A-Z][A-Za-z]+(?:Test|IT))`");
  private static final int COLUMNS = 4;

  private static List<String> rows() throws IOException {
    return Files.readAllLines(Path.of("docs/threats.md")).stream()
        .filter(line -> line.startsWith("| ") && !line.startsWith("| ---"))
        .skip(1)
        .toList();
  }

  @Test
  void everyThreatNamesATest() throws IOException {
    assertThat(rows()).hasSizeGreaterThan(15);
    assertThat(rows())
        .allSatisfy(
            row -> {
              String[] cells = row.split("\\|", -1);
              assertThat(cells).hasSize(COLUMNS + 2);
              assertThat(cells[COLUMNS]).containsPattern(NAMED);
            });
  }

  @Test
  void everyTestThatIsNamedIsThere() throws IOException {
    Set<String> there;
    try (Stream<Path> tests = Files.walk(Path.of("src/test/java"))) {
      there =
          tests
              .map(file -> file.getFileName().toString())
              .filter(name -> name.endsWith(".java"))
              .map(name -> name.substring(0, name.length() - ".java".length()))
              .collect(Collectors.toSet());
    }
    List<String> named =
        NAMED
            .matcher(Files.readString(Path.of("docs/threats.md")))
            .results()
            .map((MatchResult one) -> one.group(1))
            .distinct()
            .toList();
    assertThat(there).containsAll(named);
  }
}
