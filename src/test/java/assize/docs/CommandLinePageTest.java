package assize.docs;

import static org.assertj.core.api.Assertions.assertThat;

import assize.cli.Main;
import assize.cli.Terminal;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page on the command line names what other programs get, no more and no less. */
class CommandLinePageTest {
  private static final Pattern NAME = Pattern.compile("\"([A-Za-z0-9_]+)\": ");
  private static final Pattern BLOCK = Pattern.compile("(?ms)^```json\\n(.*?)^```");

  @TempDir private Path folder;

  private static String out(String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(out, true, StandardCharsets.UTF_8);
    PrintStream err = new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
    Main.run(new Terminal(stream, err, false), args);
    return out.toString(StandardCharsets.UTF_8);
  }

  private static Set<String> names(String text) {
    Set<String> names = new TreeSet<>();
    Matcher matcher = NAME.matcher(text);
    while (matcher.find()) {
      names.add(matcher.group(1));
    }
    return names;
  }

  private static String yard(String name) {
    return "src/test/resources/assize/handbook/" + name + ".yaml";
  }

  /** Makes a copy for others of the demonstration, and proves its first number. */
  private static String shared(Path demo) throws IOException {
    String record = demo.resolve("q-1187.yaml").toString();
    String reports = demo.resolve("reports").toString();
    out("judge", "--redact", record, "--out", reports);
    String owner = out("prove", "--json", record);
    Matcher words = Pattern.compile("\"proof_code\": \"([^\"]+)\"").matcher(owner);
    String told = words.find() ? words.group(1) : "";
    return out("judge", "--redact", "--json", record)
        + owner
        + out("verify", "--json", reports + "/q-1xxx-redacted.html", "D 1187", told);
  }

  /** Merges a record by which something of everything comes about. */
  private String merged() throws IOException {
    Path record = folder.resolve("our.yaml");
    Path friend = folder.resolve("friend.yaml");
    Files.copy(Path.of("src/test/corpus/fine/rules.yaml"), folder.resolve("rules.yaml"));
    Files.writeString(
        record,
        """
        record: our-x1
        rules: rules.yaml
        vehicle: {name: Ours}
        observations:
          ? horn-button
          : finish: nickel
        """);
    Files.writeString(
        friend,
        """
        record: our-x1
        rules: rules.yaml
        vehicle: {name: Ours, model: X1}
        evidence: {lamp: {photo: lamp.png}, rule: {measurement: steel rule}}
        observations: {horn-button: {finish: chrome, note: Rubbed.}}
        """);
    return out("merge", "--json", record.toString(), friend.toString());
  }

  private static String started(Path demo) {
    String rules = demo.resolve("tarrowby-type-l").toString();
    return out("new", "--json", rules, demo.resolve("new.yaml").toString());
  }

  @Test
  void namesAllThatIsPrintedAndNothingElse() throws IOException {
    String bad = folder.resolve("nothing.yaml").toString();
    Files.writeString(Path.of(bad), "rule_set: small\nname: Small\n");
    String printed =
        out("demo", "--json", folder.resolve("demo").toString())
            + out("date", "--json", "1934-06~")
            + out("number", "--json", "rules/quillhurst-q.yaml", "D 1187")
            + out("color", "--json", "50,2.6772,-79.7751", "50,0,-82.7485")
            + out("check", "--json", bad)
            + merged()
            + started(folder.resolve("demo"))
            + out("check", "--coverage", "--json", "rules/quillhurst-q.yaml")
            + out("compare", "--json", yard("older"), yard("newer"), "--record", yard("truck"))
            + shared(folder.resolve("demo"));
    StringBuilder page = new StringBuilder();
    Matcher blocks = BLOCK.matcher(Files.readString(Path.of("docs/command-line.md")));
    while (blocks.find()) {
      page.append(blocks.group(1));
    }
    assertThat(names(page.toString())).isEqualTo(names(printed));
  }
}
