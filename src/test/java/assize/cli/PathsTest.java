package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Files that a stranger's record or rule set names: only those in its own folder are looked at.
 * Outside lies one with a text that must be seen nowhere.
 */
class PathsTest {
  private static final String SECRET = "WHAT ONLY THE OWNER KNOWS";

  private Path home = Path.of("");
  private Path sent = Path.of("");
  private Path secret = Path.of("");

  @BeforeEach
  void layOut(@TempDir Path folder) throws IOException {
    home = folder.toRealPath();
    secret = Files.writeString(home.resolve("secret.yaml"), "record: " + SECRET + "\n");
    sent = Files.createDirectory(home.resolve("sent"));
    Files.createDirectories(sent.resolve("photos"));
    rules(sent.resolve("rules.yaml"), "");
  }

  private static void rules(Path file, String claim) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(
        file,
        """
        rule_set: small
        name: Small
        edition: "1"
        models: {x: {name: X, production: 1932}}
        sources: {drawing: {kind: drawing, grade: A, title: Drawing}}
        areas:
          cab:
            name: Cab
            items:
              horn:
                title: Horn
                points: 1
                claims:
                  - {source: drawing, says: {present: yes}%s}
        """
            .formatted(claim));
  }

  private Path record(String rules, String evidence) throws IOException {
    return Files.writeString(
        sent.resolve("record.yaml"),
        """
        record: r
        rules: %s
        vehicle: {name: R, model: x}
        evidence:
          it: %s
        observations:
          horn: {present: yes, evidence: it}
        """
            .formatted(rules, evidence));
  }

  private static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    text.chars()
        .forEach(
            c ->
                quoted.append(
                    c < 0x20 || c > 0x7e || c == '"' || c == '\\'
                        ? "\\u%04x".formatted(c)
                        : Character.toString(c)));
    return quoted.append('"').toString();
  }

  static Stream<String> leadingAway() {
    return Stream.of(
        "../secret.yaml",
        "photos/../../secret.yaml",
        "./../secret.yaml",
        "/etc/hostname",
        "//server/share/a.jpg",
        "\\\\server\\share\\a.jpg",
        "..\\secret.yaml",
        "C:a.jpg",
        "C:\\a.jpg",
        "C:/a.jpg",
        "file:///etc/hostname",
        "https://example.org/a.jpg",
        "~/secret.yaml",
        "~root/a.jpg",
        "/dev/zero",
        "/proc/self/environ",
        "photos/a.jpg:hidden",
        "a.jpg::$DATA",
        "CON",
        "photos/nul.jpg",
        "aux.tar.gz",
        "com1.png",
        ".. /secret.yaml",
        ".../secret.yaml",
        "photos./a.jpg",
        "a.jpg.",
        "a.jpg /b",
        "\u2024\u2024/secret.yaml",
        "\uff0e\uff0e/secret.yaml",
        "..\uff0fsecret.yaml",
        "..\u2215secret.yaml",
        "photos\uff3ca.jpg",
        "C\uff1aa.jpg",
        "pho\u200btos/a.jpg",
        "a\u200egpj.exe",
        "x".repeat(300) + ".jpg",
        "photos/".repeat(700) + "a.jpg");
  }

  @ParameterizedTest
  @MethodSource("leadingAway")
  void aPathThatLeadsAwayIsRefusedWhereverItStands(String path) throws IOException {
    refused(record("rules.yaml", "{photo: " + quoted(path) + "}"), "record.yaml:5:15");
    refused(record("rules.yaml", "{document: " + quoted(path) + "}"), "record.yaml:5:18");
    refused(record(quoted(path), "{measurement: Rule}"), "record.yaml:2:8");
    rules(sent.resolve("rules.yaml"), ", photo: " + quoted(path));
    refused(record("rules.yaml", "{measurement: Rule}"), "rules.yaml:14:60");
  }

  /** What has no letter of its own is refused by the reader before anything is made of it. */
  @ParameterizedTest
  @ValueSource(strings = {"a\u0000.jpg", "a\u202egpj.exe", "a\u0007.jpg", "a\ud800.jpg"})
  void signsThatCannotBeSeenAreRefused(String path) throws IOException {
    CommandResult ran = judged(record("rules.yaml", "{photo: " + quoted(path) + "}"));
    assertThat(ran.err()).contains("error[control-character]").contains("record.yaml:5:15");
  }

  /** A name is what is written: nothing is decoded, and a folder is no file. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "%2e%2e/secret.yaml",
        "..%2fsecret.yaml",
        "&period;&period;/a",
        "$HOME/a",
        "photos"
      })
  void namesAreTakenAsTheyAreWritten(String path) throws IOException {
    CommandResult ran = judged(record("rules.yaml", "{photo: " + quoted(path) + "}"));
    assertThat(ran.err()).containsAnyOf("error[file-not-found]", "error[cannot-open-file]");
    assertThat(ran.err()).contains("record.yaml:5:15");
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aLinkOutOfTheFolderIsNotFollowed() throws IOException {
    Files.createSymbolicLink(sent.resolve("link.yaml"), secret);
    Files.createSymbolicLink(sent.resolve("link"), home);
    Files.createSymbolicLink(sent.resolve("zero.jpg"), Path.of("/dev/zero"));
    Files.createSymbolicLink(sent.resolve("round"), Path.of("round"));
    for (String path : new String[] {"link.yaml", "link/secret.yaml", "zero.jpg", "round/a.jpg"}) {
      CommandResult ran = judged(record("rules.yaml", "{photo: " + path + "}"));
      assertThat(ran.err()).contains("record.yaml:5:15");
      assertThat(ran.err()).containsAnyOf("error[path-outside]", "error[file-not-found]");
      refusedRules(path);
    }
  }

  private void refusedRules(String path) throws IOException {
    CommandResult ran = judged(record(path, "{measurement: Rule}"));
    assertThat(ran.err()).contains("record.yaml:2:8");
  }

  /** The head of a rule set is a file like its others. */
  @Test
  @DisabledOnOs(OS.WINDOWS)
  void theHeadOfARuleSetIsNoLinkOutOfItsFolder() throws IOException {
    Path standard = Files.createDirectory(sent.resolve("standard"));
    Files.createSymbolicLink(standard.resolve("rules.yaml"), secret);
    CommandResult ran = judged(record("standard", "{measurement: Rule}"));
    assertThat(ran.err()).contains("error[path-outside]").contains("standard/rules.yaml");
    CommandResult check = CommandResult.of("check", standard);
    assertThat(check.exit()).isEqualTo(1);
    assertThat(check.out() + check.err()).contains("error[path-outside]").doesNotContain(SECRET);
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aLinkWithinTheFolderIsAFile() throws IOException {
    rules(sent.resolve("standard").resolve("small.yaml"), "");
    Files.createSymbolicLink(sent.resolve("mine.yaml"), Path.of("standard", "small.yaml"));
    CommandResult ran =
        CommandResult.of("judge", record("mine.yaml", "{measurement: Rule}"), "--out", out());
    assertThat(ran.exit()).as(ran.err()).isZero();
  }

  /** A pipe would be waited for without end. */
  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aPipeIsNoFile() throws IOException, InterruptedException {
    Path pipe = sent.resolve("pipe.jpg");
    assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor()).isZero();
    refusedAs(
        "error[cannot-open-file]", record("rules.yaml", "{photo: pipe.jpg}"), "record.yaml:5:15");
    CommandResult ran = judged(record("pipe.jpg", "{measurement: Rule}"));
    assertThat(ran.err()).contains("error[cannot-open-file]");
  }

  /** Links in a folder that is gone through are passed over. */
  @Test
  @DisabledOnOs(OS.WINDOWS)
  void resultsFollowNoLink() throws IOException {
    record("rules.yaml", "{measurement: Rule}");
    Path other = Files.createDirectory(home.resolve("other"));
    rules(other.resolve("rules.yaml"), "");
    Files.copy(sent.resolve("record.yaml"), other.resolve("elsewhere.yaml"));
    Files.createSymbolicLink(sent.resolve("link.yaml"), other.resolve("elsewhere.yaml"));
    Files.createSymbolicLink(sent.resolve("link"), other);
    Files.createSymbolicLink(sent.resolve("round"), sent);
    CommandResult ran = CommandResult.of("results", sent, "--out", out());
    assertThat(ran.exit()).as(ran.err()).isZero();
    try (Stream<Path> written = Files.walk(out())) {
      assertThat(written.filter(it -> it.endsWith("r.html"))).hasSize(1);
    }
  }

  /** The same letters with their accents apart are another name for some disks. */
  @Test
  void aNameThatLooksTheSameIsPointedOut() throws IOException {
    String apart = Normalizer.normalize("caf\u00e9.jpg", Normalizer.Form.NFD);
    Files.writeString(sent.resolve(apart), "x");
    boolean same = Files.exists(sent.resolve("caf\u00e9.jpg"));
    CommandResult ran = judged(record("rules.yaml", "{document: caf\u00e9.jpg}"));
    assertThat(same || ran.err().contains("whose name looks the same")).isTrue();
  }

  @ParameterizedTest
  @ValueSource(strings = {"CON", "nul", "Com1", "LPT9", "../r", "a/b", "a.b", "r:x", "r\u2024"})
  void aRecordsNameIsTheNameOfAFileAnywhere(String id) throws IOException {
    Path record = record("rules.yaml", "{measurement: Rule}");
    Files.writeString(
        record, Files.readString(record).replace("record: r\n", "record: " + quoted(id) + "\n"));
    CommandResult ran = judged(record);
    assertThat(ran.err()).contains("error[bad-name]").contains("record.yaml:1:9");
  }

  private Path out() {
    return home.resolve("out");
  }

  private void refused(Path record, String at) throws IOException {
    refusedAs("error[path-outside]", record, at);
  }

  private void refusedAs(String code, Path record, String at) throws IOException {
    CommandResult ran = judged(record);
    assertThat(ran.err()).contains(code).contains(at);
  }

  /** Judges what has to be refused: nothing is written, and nothing from outside is said. */
  private CommandResult judged(Path record) throws IOException {
    Map<String, String> before = names();
    CommandResult ran = CommandResult.of("judge", record, "--out", out());
    assertThat(ran.exit()).as(ran.err()).isEqualTo(1);
    assertThat(ran.out() + ran.err()).doesNotContain(SECRET).doesNotContain("Exception");
    assertThat(names()).isEqualTo(before);
    return ran;
  }

  private Map<String, String> names() throws IOException {
    Map<String, String> all = new TreeMap<>();
    try (Stream<Path> files = Files.walk(home)) {
      for (Path one : files.toList()) {
        all.put(one.toString(), Files.isRegularFile(one) ? "" + Files.size(one) : "");
      }
    }
    return all;
  }
}
