package assize.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every link of a page leads somewhere. */
class LinksTest {
  private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");
  private static final Pattern FENCED = Pattern.compile("(?ms)^ *```.*?^ *```");
  private static final Pattern CODE = Pattern.compile("`[^`]*`");
  private static final Pattern HEADING = Pattern.compile("(?m)^#{1,6} +(.*)$");

  static Stream<Path> pages() throws IOException {
    List<Path> docs;
    try (Stream<Path> below = Files.walk(Path.of("docs"))) {
      docs = below.filter(path -> path.toString().endsWith(".md")).sorted().toList();
    }
    Stream<Path> others = Stream.of("README.md", "DEVELOPERS.md", "rules/README.md").map(Path::of);
    return Stream.concat(others, docs.stream());
  }

  @ParameterizedTest
  @MethodSource("pages")
  void everyRelativeLinkLeadsToAFileAndAHeading(Path page) throws IOException {
    String text =
        CODE.matcher(FENCED.matcher(Files.readString(page)).replaceAll("")).replaceAll("");
    Matcher links = LINK.matcher(text);
    while (links.find()) {
      String link = links.group(1);
      if (link.matches("[a-z]+:.*")) {
        continue;
      }
      int hash = link.indexOf('#');
      String file = hash < 0 ? link : link.substring(0, hash);
      Path target = file.isEmpty() ? page : page.resolveSibling(file);
      assertThat(target).as("%s links to %s", page, link).exists();
      if (hash >= 0) {
        assertThat(anchors(target)).as("headings of %s", target).contains(link.substring(hash + 1));
      }
    }
  }

  /** Anchors as they are commonly made of headings: small letters, dashes for spaces. */
  private static Set<String> anchors(Path page) throws IOException {
    return HEADING
        .matcher(FENCED.matcher(Files.readString(page)).replaceAll(""))
        .results()
        .map(heading -> heading.group(1).trim().toLowerCase(Locale.ROOT))
        .map(heading -> heading.replaceAll("[^\\p{L}\\p{N} _-]", "").replace(' ', '-'))
        .collect(Collectors.toSet());
  }
}
