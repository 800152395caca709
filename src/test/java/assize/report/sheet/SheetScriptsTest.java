package assize.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import assize.aspect.Aspect;
import assize.record.Observation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The sheet's script learns from the page which aspects and texts there are, and names none. */
class SheetScriptsTest {
  private static final Path FOLDER = Path.of("src/main/resources/assize/report/sheet");

  /** What looks like an aspect and is none, with the reason. */
  private static final Map<String, String> NO_ASPECTS =
      Map.of(".size", "how many a Map holds, and how large a File is");

  private static List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .filter(it -> it.getFileName().toString().matches("sheet.*\\.(?:js|ftlh)"))
          .sorted()
          .toList();
    }
  }

  /**
   * A word as a quoted text, but not as a class for styles, as a property, or as a name in a group.
   */
  private static Pattern named() {
    String words =
        Stream.concat(
                Arrays.stream(Aspect.values()).map(Aspect::word),
                Observation.of("").texts().keySet().stream())
            .collect(Collectors.joining("|", "(?:", ")"));
    return Pattern.compile(
        "(?<!class=)(['\"`])"
            + words
            + "\\1|\\."
            + words
            + "\\b|[{,]\\s*"
            + words
            + "\\s*[:,}](?!:)");
  }

  private static List<String> namedIn(Path file) throws IOException {
    String code = Files.readString(file).replaceAll("(?s)/\\*.*?\\*/", "");
    return named()
        .matcher(code)
        .results()
        .map(it -> it.group().strip())
        .filter(it -> !NO_ASPECTS.containsKey(it))
        .map(it -> file.getFileName() + ": " + it)
        .toList();
  }

  @Test
  void noFileOfTheSheetNamesAnAspectOrAText() throws IOException {
    List<String> named = new ArrayList<>();
    for (Path file : files()) {
      named.addAll(namedIn(file));
    }
    assertThat(files()).hasSizeGreaterThan(6);
    assertThat(named).isEmpty();
  }

  @Test
  void aNameIsSeenHoweverItIsWritten() {
    Matcher found =
        named().matcher("case 'color': x.note + {gloss: 1}; ({finish, a}) => \"works\"");
    assertThat(found.results().map(it -> it.group().strip()))
        .containsExactly("'color'", ".note", "{gloss:", "{finish,", "\"works\"");
  }
}
