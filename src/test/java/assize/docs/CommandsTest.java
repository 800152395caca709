package assize.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every command that a page shows can be run, and every page that shows YAML has its test. */
class CommandsTest {
  private static final Pattern FENCED =
      Pattern.compile("(?ms)^ *```(?:console|sh)?\\n(.*?)^ *```$");
  private static final Pattern ANY_BLOCK = Pattern.compile("(?m)^ *```yaml");
  private static final Pattern README_FILE = Pattern.compile("(?s) {3}```yaml\n(.*?)\n {3}```");

  /** Small commands in running text, with everything they need. */
  private static final Pattern SMALL = Pattern.compile("`(assize date [^`A-Z\\[]+)`");

  /** A proof code of another machine's secret: {@link SharingPageTest} reads them. */
  private static final String BY_SECRET = "assize verify l45-4xxx-redacted.html L45-4388 ";

  /** Pages that begin in a folder of their own: TutorialTest, MergingPageTest. */
  private static final Set<String> OWN_FOLDER = Set.of("tutorial.md", "merging.md");

  @TempDir private Path folder;

  private static List<Path> pages() throws IOException {
    try (Stream<Path> below = Files.walk(Path.of("docs"))) {
      Stream<Path> docs = below.filter(path -> path.toString().endsWith(".md")).sorted();
      return Stream.concat(Stream.of(Path.of("README.md")), docs).toList();
    }
  }

  private static List<String> commands(Path page) throws IOException {
    String text = Files.readString(page);
    List<String> commands = new ArrayList<>();
    Matcher fenced = FENCED.matcher(text);
    while (fenced.find()) {
      fenced
          .group(1)
          .lines()
          .map(line -> line.strip().replaceFirst("^\\$ ", "").replaceFirst(" > .*", ""))
          .filter(line -> line.startsWith("assize "))
          .forEach(commands::add);
    }
    Matcher small = SMALL.matcher(text);
    while (small.find()) {
      commands.add(small.group(1));
    }
    return commands;
  }

  /** Runs them page by page, beside the demonstration and the two files of the README. */
  @Tag("slow")
  @Test
  void everyCommandRuns() throws Exception {
    Program program = new Program(folder);
    assertThat(program.run("assize demo .").exit()).isZero();
    // what can be verified was redacted before
    assertThat(program.run("assize judge l45-4388.yaml --redact").exit()).isZero();
    Matcher files = README_FILE.matcher(Files.readString(Path.of("README.md")));
    List<String> names = List.of("our-standard.yaml", "our-truck.yaml");
    Set<String> run = new TreeSet<>();
    for (Path page : pages()) {
      if (OWN_FOLDER.contains(page.getFileName().toString())) {
        continue;
      }
      files.reset();
      for (String name : names) {
        assertThat(files.find()).isTrue();
        Files.writeString(folder.resolve(name), files.group(1).stripIndent() + "\n");
      }
      // what a keeper of the standard has from the year before
      Path before = Files.createDirectories(folder.resolve("last-year"));
      Files.writeString(
          before.resolve(names.get(0)),
          Files.readString(folder.resolve(names.get(0)))
              .replace("edition: \"1\"", "edition: \"0\"")
              .replace("finish: nickel}", "finish: chrome}"));
      for (String command : commands(page)) {
        if (command.startsWith(BY_SECRET)) {
          continue;
        }
        if (command.startsWith("assize new ")) {
          Files.delete(folder.resolve("our-truck.yaml"));
        }
        Program.ProgramResult said = program.run(command);
        assertThat(said.exit()).as(page + ": " + command + "\n" + said.text()).isZero();
        run.add(command.split(" ", -1)[1]);
      }
    }
    assertThat(run).contains("date", "judge", "new", "prove");
  }

  @Test
  void everyPageWithYamlHasATest() throws IOException {
    List<String> pages = new ArrayList<>();
    for (Path page : pages()) {
      if (ANY_BLOCK.matcher(Files.readString(page)).find()) {
        pages.add(page.getFileName().toString());
      }
    }
    // ReadmeTest, MergingPageTest, DocsExamplesTest (three pages), TutorialTest
    assertThat(pages)
        .containsExactly(
            "README.md",
            "merging.md",
            "records.md",
            "rule-sets.md",
            "tutorial.md",
            "weighing-sources.md");
  }
}
