package assize.docs;

import static org.assertj.core.api.Assertions.assertThat;

import assize.redaction.ProofKey;
import assize.redaction.TextMasker;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The worked example of the page on copies for others is right. */
class SharingPageTest {
  private static String page() throws IOException {
    return Files.readString(Path.of("docs/sharing.md"));
  }

  private static String found(String pattern) throws IOException {
    Matcher matcher = Pattern.compile(pattern).matcher(page());
    assertThat(matcher.find()).as(pattern).isTrue();
    return matcher.group(1);
  }

  @Test
  void theProofCodeGivesTheHash() throws IOException {
    String words = found("proof code  (\\S+)");
    ProofKey key = ProofKey.read(words).toOptional().orElseThrow();
    assertThat(key.hash("L45-4388")).isEqualTo(found("hash        (\\S+)"));
    assertThat(page()).contains("L45-4388 " + words);
    assertThat(TextMasker.of(List.of("L45-4388"), List.of()).text("L45-4388"))
        .isEqualTo("L45-4xxx");
  }

  @Test
  void theSlipIsToldAsThePageSays() throws IOException {
    String wrong = found("group 3 \\((\\S+)\\) is mistyped");
    String words = found("proof code  (\\S+)");
    String right = words.split("-")[2];
    String reason =
        ProofKey.read(words.replace(right, wrong)).match(key -> "read", bad -> bad.reason());
    assertThat(page()).contains("error: the proof code: " + reason);
  }

  /** The secret of the page's example; the page shows its mark alone. */
  private static final String SECRET =
      """
      record: l45-4388
      made: 2026-07-14
      secret: P8VBB-SADQA-D8YH3-5ADJ7-2BPT4-BC6B6-1BN29-N8B97-R9R8K-YKZA5-WT6S1-02YJ9-3XS0J
      """;

  @Tag("slow")
  @Test
  void theCommandsSayWhatThePageSays(@TempDir Path folder) throws Exception {
    Program program = new Program(folder);
    assertThat(program.run("assize demo .").exit()).isZero();
    Files.writeString(folder.resolve("l45-4388.secret"), SECRET);
    String shared = program.run("assize judge l45-4388.yaml --redact").text();
    assertThat(page()).contains(line(shared, "note: l45-4388.secret"));
    String owner = program.run("assize prove l45-4388.yaml").text();
    assertThat(page()).contains("```\n" + first(owner, 4) + "```\n");
    String words = found("proof code  (\\S+)");
    String copy = "assize verify reports/l45-4xxx-redacted.html ";
    String told = program.run(copy + "L45-4388 " + words).text();
    assertThat(told).startsWith("yes: ");
    assertThat(page()).contains("```\n" + told + "```\n");
    assertThat(program.run(copy + "L45-43-88 " + words).text()).startsWith("no: ");
    String renewed = program.run("assize prove l45-4388.yaml --new-secret").text();
    assertThat(drawn(page())).contains("```\n" + drawn(renewed) + "```\n");
    assertThat(folder.resolve(found("Keep (\\S+\\.secret)"))).hasContent(SECRET);
  }

  private static String line(String text, String start) {
    return text.lines().filter(it -> it.startsWith(start)).findFirst().orElseThrow();
  }

  private static String first(String text, int lines) {
    return text.lines().limit(lines).map(it -> it + "\n").collect(Collectors.joining());
  }

  /** Returns a text without what a new secret draws by lot, and its day. */
  private static String drawn(String text) {
    return text.replaceAll("made [0-9-]{10}", "made DAY")
        .replaceAll("mark (?!EC1HW)[0-9A-Z]{5}", "mark LOT");
  }
}
