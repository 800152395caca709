package assize.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Follows the tutorial to the letter, in an empty folder.
 *
 * <p>What a block is for stands behind its first fence: {@code yaml new FILE} is a file, {@code
 * yaml add FILE} goes to its end, {@code yaml fill FILE} puts values behind the names of items,
 * {@code diff FILE} changes lines, {@code console} is a command and what it says.
 */
@Tag("slow")
class TutorialTest {
  private static final Path PAGE = Path.of("docs/tutorial.md");
  private static final Pattern BLOCK = Pattern.compile("(?ms)^```(\\w+)([^\\n]*)\\n(.*?)^```$");

  /** How long a page is may change with its looks. */
  private static final Pattern LENGTH = Pattern.compile("\\([0-9.]+ (?:bytes|KB|MB)\\)");

  @TempDir private Path folder;
  private int commands;

  @Test
  void everyStepDoesWhatThePageShows() throws Exception {
    Matcher block = BLOCK.matcher(Files.readString(PAGE));
    List<String> kinds = new ArrayList<>();
    while (block.find()) {
      String[] words = block.group(2).strip().split(" ", -1);
      String kind = block.group(1) + (words.length > 1 ? " " + words[0] : "");
      Path file = folder.resolve(words[words.length - 1]);
      String text = block.group(3);
      kinds.add(kind);
      switch (kind) {
        case "yaml new" -> Files.writeString(file, text);
        case "yaml add" -> Files.writeString(file, Files.readString(file) + text);
        case "yaml fill" -> fill(file, text);
        case "diff" -> change(file, text);
        case "console" -> console(text);
        default -> throw new AssertionError("what is to be done with a block: " + kind);
      }
    }
    assertThat(kinds).contains("yaml new", "yaml add", "yaml fill", "diff", "console");
    assertThat(commands).isGreaterThan(8);
    assertThat(folder.resolve("reports/our-tricycle.html")).isNotEmptyFile();
    assertThat(folder.resolve("reports/our-tricycle-redacted.html"))
        .content()
        .doesNotContain("Plated anew in 1988");
  }

  private void console(String text) throws Exception {
    assertThat(text).startsWith("$ assize ");
    String line = text.lines().findFirst().orElseThrow().substring(2);
    List<String> shown = text.lines().skip(1).map(TutorialTest::withoutLength).toList();
    Program.ProgramResult said = new Program(folder).run(line);
    commands++;
    String all = withoutLength(said.text().strip());
    if (shown.equals(List.of("..."))) {
      assertThat(all).as(line).isNotEmpty();
    } else {
      assertThat(all).as(line).isEqualTo(String.join("\n", shown).strip());
    }
    boolean wrong = shown.stream().anyMatch(it -> it.startsWith("error["));
    assertThat(said.exit()).as(line + "\n" + said.text()).isEqualTo(wrong ? 1 : 0);
  }

  private static String withoutLength(String text) {
    return LENGTH.matcher(text).replaceAll("(length)");
  }

  /** Puts lines in the place of others, which stand once in the file. */
  private static void change(Path file, String diff) throws IOException {
    StringBuilder before = new StringBuilder();
    StringBuilder after = new StringBuilder();
    for (String line : diff.lines().toList()) {
      if (!line.startsWith("+")) {
        before.append(line.substring(1)).append('\n');
      }
      if (!line.startsWith("-")) {
        after.append(line.substring(1)).append('\n');
      }
    }
    String text = Files.readString(file);
    assertThat(text.split(Pattern.quote(before.toString()), -1)).as(diff).hasSize(2);
    Files.writeString(file, text.replace(before, after));
  }

  /** Puts values behind the colons of an item, and what it has no name for below its last one. */
  private static void fill(Path file, String values) throws IOException {
    List<String> lines = new ArrayList<>(Files.readAllLines(file));
    int at = 0;
    for (String line : values.lines().toList()) {
      if (!line.startsWith("    ")) {
        at = lines.indexOf(line);
        assertThat(at).as(line).isNotNegative();
        continue;
      }
      String blank = line.substring(0, line.indexOf(':') + 1);
      int end = at + 1;
      while (end < lines.size() && lines.get(end).startsWith("    ")) {
        end++;
      }
      int here = lines.subList(at, end).indexOf(blank);
      if (here >= 0) {
        lines.set(at + here, line);
      } else {
        lines.add(end, line);
      }
    }
    Files.writeString(file, String.join("\n", lines) + "\n");
  }
}
