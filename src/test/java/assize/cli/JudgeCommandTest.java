package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

class JudgeCommandTest {
  private CommandBench bench = new CommandBench(Path.of(""));
  private Path out = Path.of("");

  @BeforeEach
  void lay(@TempDir Path folder) {
    bench = CommandBench.in(folder);
    out = bench.at("out");
  }

  @Test
  void writesAReportForEachAndNothingBesides() {
    CommandResult ran =
        CommandResult.of("judge", bench.at("one.yaml"), bench.at("two.yaml"), "--out", out);
    assertThat(ran.exit()).as(ran.err()).isZero();
    assertThat(ran.err()).isEmpty();
    // by hand: 4 for the button; the key is 0 to 6 while the drawing and the guide disagree
    assertThat(ran.out()).contains("The first: ").contains("(4 to 10) of 10");
    assertThat(ran.out()).contains(out.resolve("one.html").toString());
    assertThat(CommandBench.content(out)).containsOnlyKeys("", "one.html", "two.html");
  }

  @Test
  void keepsTheNamesOfTheMachinesForm() {
    CommandResult ran =
        CommandResult.of("judge", bench.at("one.yaml"), "--json", "-", "--out", out);
    assertThat(ran.exit()).isZero();
    JsonNode said = ran.json();
    assertThat(said.propertyNames())
        .contains("rule_set", "edition", "record", "built", "score", "award")
        .contains("by_build_day", "areas", "items");
    assertThat(said.get("rule_set").stringValue()).isEqualTo("small");
    assertThat(said.get("edition").stringValue()).isEqualTo("1");
    assertThat(said.get("record").stringValue()).isEqualTo("one");
    assertThat(said.get("built").propertyNames()).contains("first", "last", "basis");
    assertThat(said.get("built").get("basis").stringValue()).isEqualTo("number");
    assertThat(said.get("score").propertyNames()).contains("low", "likely", "high", "of");
    assertThat(said.get("score").get("low").intValue()).isEqualTo(4);
    assertThat(said.get("score").get("high").intValue()).isEqualTo(10);
    assertThat(said.get("score").get("of").intValue()).isEqualTo(10);
    assertThat(said.get("award").propertyNames()).contains("certain", "likely", "possible");
    assertThat(said.get("award").get("certain").isNull()).isTrue();
    assertThat(said.get("award").get("possible").stringValue()).isEqualTo("gold");
    assertThat(said.get("by_build_day").get(0).propertyNames())
        .contains("first", "last", "low", "likely", "high");
    assertThat(said.get("areas").get(0).propertyNames())
        .contains("id", "low", "likely", "high", "possible");
    JsonNode key = said.get("items").get(1);
    assertThat(key.propertyNames())
        .contains("id", "area", "verdict", "agreement", "low", "likely", "high", "possible")
        .contains("aspects");
    JsonNode aspect = key.get("aspects").get(0);
    assertThat(aspect.propertyNames())
        .contains("aspect", "verdict", "agreement", "conflict", "positions");
    assertThat(aspect.get("verdict").stringValue()).isEqualTo("undecided");
    assertThat(aspect.get("agreement").stringValue()).isEqualTo("disputed");
    assertThat(aspect.get("positions").get(0).propertyNames())
        .contains("expects", "sources", "belief", "plausibility", "credit");
    assertThat(out).doesNotExist();
  }

  @Test
  void writesTheMachinesFormBesideTheReports() throws IOException {
    Path json = bench.at("deep/er/judged.json");
    assertThat(CommandResult.of("judge", bench.at("one.yaml"), "--json", json, "--out", out).exit())
        .isZero();
    assertThat(out.resolve("one.html")).isNotEmptyFile();
    String printed = CommandResult.of("judge", bench.at("one.yaml"), "--json", "-").out();
    assertThat(json).hasContent(printed);
    assertThat(CommandResult.json(Files.readString(json)).get("record").stringValue())
        .isEqualTo("one");
  }

  @Test
  void givesSeveralAsOneObjectALine() {
    CommandResult ran =
        CommandResult.of("judge", bench.at("two.yaml"), bench.at("one.yaml"), "--json", "-");
    assertThat(ran.jsonLines().stream().map(it -> it.get("record").stringValue()))
        .containsExactly("two", "one");
  }

  @Test
  void takesJsonAnywhereAndNeverARecordForTheFile() {
    Map<String, String> before = bench.content();
    String wanted = CommandResult.of("judge", bench.at("one.yaml"), "--json", "-").out();
    for (List<Object> words :
        List.<List<Object>>of(
            List.of("judge", bench.at("one.yaml"), "--json"),
            List.of("judge", "--json", bench.at("one.yaml")),
            List.of("judge", "--json=-", bench.at("one.yaml")),
            List.of("judge", "--json", "-", bench.at("one.yaml")),
            List.of("--json", "judge", bench.at("one.yaml")))) {
      CommandResult ran = CommandResult.of(words.toArray());
      assertThat(ran.exit()).as("%s", words).isZero();
      assertThat(ran.out()).as("%s", words).isEqualTo(wanted);
    }
    assertThat(
            CommandResult.of("judge", bench.at("one.yaml"), "--json=" + bench.at("two.yaml"))
                .exit())
        .isEqualTo(2);
    assertThat(bench.content()).isEqualTo(before);
  }

  @Test
  void writesNothingWhenOneOfTwoHasAnError() {
    Map<String, String> before = bench.content();
    CommandResult ran =
        CommandResult.of(
            "judge",
            bench.at("one.yaml"),
            bench.at("wrong.yaml"),
            "--out",
            out,
            "--json",
            bench.at("judged.json"));
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains("error[unknown-finish]").contains("did you mean \"chrome\"?");
    assertThat(bench.content()).isEqualTo(before);
  }

  @Test
  void saysAllThatIsWrongInOneRun() {
    CommandResult ran =
        CommandResult.of(
            "judge", bench.at("wrong.yaml"), bench.at("missing.yaml"), bench.at("binary.yaml"));
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.err()).contains("unknown-finish", "file-not-found", "not-utf8", "3 errors");
  }

  @Test
  void leavesAnOldReportWhenARunFails() throws IOException {
    Files.createDirectory(out);
    Files.writeString(out.resolve("one.html"), "the old one");
    Files.writeString(bench.at("judged.json"), "the old one");
    Map<String, String> before = bench.content();
    CommandResult ran =
        CommandResult.of(
            "judge",
            bench.at("one.yaml"),
            bench.at("wrong.yaml"),
            "--out=" + out,
            "--json=" + bench.at("judged.json"));
    assertThat(ran.exit()).isEqualTo(1);
    Files.createDirectory(out.resolve("two.html"));
    before.put("out/two.html", "");
    ran = CommandResult.of("judge", bench.at("one.yaml"), bench.at("two.yaml"), "--out", out);
    assertThat(ran.exit()).isEqualTo(3);
    assertThat(bench.content()).isEqualTo(before);
  }

  @Test
  void givesTheSameBytesTwice() {
    Path json = out.resolve("judged.json");
    Object[] words = {"judge", bench.at("one.yaml"), "--out", out, "--json", json};
    CommandResult first = CommandResult.of(words);
    Map<String, String> before = bench.content();
    assertThat(CommandResult.of(words)).isEqualTo(first);
    assertThat(bench.content()).isEqualTo(before);
    assertThat(CommandBench.content(out)).containsOnlyKeys("", "judged.json", "one.html");
  }

  @Test
  void judgesByAnotherRuleSet() throws IOException {
    String rules = Files.readString(bench.at("rules.yaml"));
    Path other = bench.at("other.yaml");
    Files.writeString(other, rules.replace("rule_set: small", "rule_set: other"));
    CommandResult ran =
        CommandResult.of("judge", bench.at("one.yaml"), "--rules", other, "--json", "-");
    assertThat(ran.json().get("rule_set").stringValue()).isEqualTo("other");
    Files.writeString(other, rules.replace("X1: {name", "X2: {name").replace("[X1]", "[X2]"));
    CommandResult unfit =
        CommandResult.of("judge", bench.at("one.yaml"), "--rules", other, "--out", out);
    assertThat(unfit.exit()).isEqualTo(1);
    assertThat(unfit.err()).contains("error[unknown-model]");
    assertThat(out).doesNotExist();
  }

  @Test
  void doesNotLetTwoRecordsWriteOneReport() throws IOException {
    Files.copy(bench.at("one.yaml"), bench.at("again.yaml"));
    CommandResult ran =
        CommandResult.of("judge", bench.at("one.yaml"), bench.at("again.yaml"), "--out", out);
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.err()).contains("another record is named \"one\" too");
    assertThat(out).doesNotExist();
    Path page = out.resolve("one.html");
    assertThat(CommandResult.of("judge", bench.at("one.yaml"), "--out", out, "--json", page).exit())
        .isEqualTo(1);
    assertThat(out).doesNotExist();
  }
}
